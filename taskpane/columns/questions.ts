import type { Field } from '../../shared/columns'
import type { ColumnMatch, Inventory } from '../../src/inventory/inventory'

/** A column to ask about: what it likely gives, best first, and what limbs need that it may give. */
export interface ColumnQuestion {
  readonly match: ColumnMatch
  readonly guesses: readonly Field[]
  /** Measurements that limbs need and no column gives. */
  readonly needed: readonly Field[]
  /** Nothing is taken for the answer until a person chooses. */
  readonly open: boolean
}

/** Columns that are asked about where no header is known at all. */
const mostUnknown = 12

/** Columns that were read by a guess: each header once, whatever number it bears and on however many sheets. */
function likelyOnes({ matches }: Inventory): ColumnQuestion[] {
  const asked = new Set<string>()
  return matches.flatMap((match): ColumnQuestion[] => {
    const { field, confidence, header, runnerUp } = match
    const key = `${field ?? ''} ${header.toLowerCase().replace(/[\d\s]+/g, '')}`
    if (field === null || confidence !== 'likely' || asked.has(key)) return []
    asked.add(key)
    return [{ match, guesses: runnerUp === null ? [field] : [field, runnerUp], needed: [], open: false }]
  })
}

/** Columns without a use that may give what limbs need. */
function neededOnes({ asked }: Inventory): ColumnQuestion[] {
  const needed = new Map<ColumnMatch, Field[]>()
  for (const { field, columns } of asked)
    for (const match of columns) needed.set(match, [...(needed.get(match) ?? []), field])
  return [...needed].map(([match, fields]) => {
    const { runnerUp } = match
    const guesses = runnerUp === null || fields.includes(runnerUp) ? fields : [...fields, runnerUp]
    return { match, guesses, needed: fields, open: true }
  })
}

/** Where nothing could be read, for want of the trees' ids or of any known header: the columns without a use. */
function unknownOnes({ matches, problems }: Inventory): ColumnQuestion[] {
  const stop = problems.find(({ level }) => level === 'stop')?.code
  if (stop !== 'missing-column' && stop !== 'no-headers') return []
  const needed: readonly Field[] = stop === 'missing-column' ? ['tree'] : []
  return matches
    .filter(({ field, header, confidence }) => field === null && header !== '' && confidence !== 'chosen')
    .slice(0, mostUnknown)
    .map((match) => ({ match, guesses: needed, needed, open: true }))
}

/** The columns that a person is asked about: those that limbs wait for first. */
export function columnQuestions(inventory: Inventory): ColumnQuestion[] {
  const unknown = unknownOnes(inventory)
  const others = neededOnes(inventory).filter(
    ({ match }) => !unknown.some((question) => question.match === match)
  )
  return [...unknown, ...others, ...likelyOnes(inventory)]
}
