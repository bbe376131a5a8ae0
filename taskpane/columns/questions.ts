import type { Field } from '../../shared/columns'
import type { ColumnMatch, Inventory } from '../../src/inventory/inventory'

/** A column to ask about: what it likely gives, best first, and what limbs need that it may give. */
export interface ColumnQuestion {
  readonly match: ColumnMatch
  readonly guesses: readonly Field[]
  /** Measurements that limbs need and no column gives. */
  readonly needed: readonly Field[]
}

/** Columns that were read by a guess: each header once, whatever number it bears and on however many sheets. */
function likelyOnes({ matches }: Inventory): ColumnQuestion[] {
  const asked = new Set<string>()
  return matches.flatMap((match): ColumnQuestion[] => {
    const { field, confidence, header, runnerUp } = match
    const key = `${field ?? ''} ${header.toLowerCase().replace(/[\d\s]+/g, '')}`
    if (field === null || confidence !== 'likely' || asked.has(key)) return []
    asked.add(key)
    return [{ match, guesses: runnerUp === null ? [field] : [field, runnerUp], needed: [] }]
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
    return { match, guesses, needed: fields }
  })
}

/** The columns that a person is asked about: those that limbs wait for first. */
export function columnQuestions(inventory: Inventory): ColumnQuestion[] {
  return [...neededOnes(inventory), ...likelyOnes(inventory)]
}
