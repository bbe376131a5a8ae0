import { fold } from '../headers/fold'
import { countings, type Counting } from './counters'

/** Columns that repeat for limb 1, limb 2 …: those of the tree, and one list of columns a limb, in the same order. */
export interface ColumnGroups {
  readonly common: readonly number[]
  readonly groups: readonly { readonly title: string; readonly columns: readonly number[] }[]
  /** How their headers count; null where the same names come again. */
  readonly counting: Counting | null
}

/** Counts that a first limb and a second one have; a letter or a number by itself may stand for anything. */
const firstTwo = [
  ['0', '1'],
  ['1', '2'],
  ['A', 'B']
] as const

function plain(text: string): string {
  return fold(text)
    .replace(/[_.\-–#/]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
}

function firstWord(text: string): string {
  return /^\S*/.exec(text)?.[0] ?? ''
}

/** Groups by their count, where two or more columns repeat under two or more counts, of which the first two are there. */
function counted(headers: readonly string[], counting: Counting): ColumnGroups | null {
  const counts = new Map<string, Map<string, number>>()
  headers.forEach((header, at) => {
    const found = header === '' ? null : counting(header)
    if (found === null) return
    const each = counts.get(found.count) ?? new Map<string, number>()
    const base = plain(found.rest)
    if (!each.has(base)) each.set(base, at)
    counts.set(found.count, each)
  })
  if (!firstTwo.some((pair) => pair.every((count) => counts.has(count)))) return null
  const all = [...counts.values()]
  const bases = [...new Set(all.flatMap((each) => [...each.keys()]))]
  const shared = bases.filter((base) => all.filter((each) => each.has(base)).length >= 2)
  if (shared.length < 2) return null
  // A measure that one limb alone has ("Limb 1 stem") begins like those that all of them have.
  const begins = new Set(shared.map(firstWord))
  const own = bases.filter((base) => shared.includes(base) || begins.has(firstWord(base)))
  const groups = [...counts].flatMap(([count, each]) => {
    const columns = own.map((base) => each.get(base) ?? -1)
    return columns.some((column) => column >= 0) ? [{ title: count, columns }] : []
  })
  const taken = new Set(groups.flatMap(({ columns }) => columns))
  return {
    common: headers.flatMap((header, at) => (header === '' || taken.has(at) ? [] : [at])),
    groups,
    counting
  }
}

/** Groups by repetition, where two or more names come again and again in the same order. */
function byOrder(headers: readonly string[]): ColumnGroups | null {
  const names = headers.map((header) => fold(header).replace(/\s+/g, ' ').trim())
  const at = new Map<string, number[]>()
  names.forEach((name, column) => {
    if (name !== '') at.set(name, [...(at.get(name) ?? []), column])
  })
  const repeated = [...at.values()].filter((columns) => columns.length >= 2)
  const times = repeated[0]?.length ?? 0
  if (repeated.length < 2 || repeated.some((columns) => columns.length !== times)) return null
  const groups = Array.from({ length: times }, (_none, turn) => ({
    title: String(turn + 1),
    columns: repeated.map((columns) => columns[turn] ?? -1).sort((a, b) => a - b)
  }))
  const apart = groups.every(
    ({ columns }, turn) => turn === 0 || Math.min(...columns) > Math.max(...(groups[turn - 1]?.columns ?? []))
  )
  if (!apart) return null
  const taken = new Set(groups.flatMap(({ columns }) => columns))
  return {
    common: headers.flatMap((header, column) => (header === '' || taken.has(column) ? [] : [column])),
    groups,
    counting: null
  }
}

function size(groups: ColumnGroups): number {
  return groups.groups.reduce((sum, { columns }) => sum + columns.filter((column) => column >= 0).length, 0)
}

/** The ways in which columns may repeat, the one that takes in most columns first. */
export function columnGroups(headers: readonly string[]): ColumnGroups[] {
  const found = [...countings.map((counting) => counted(headers, counting)), byOrder(headers)]
  return found.filter((each) => each !== null).sort((a, b) => size(b) - size(a))
}
