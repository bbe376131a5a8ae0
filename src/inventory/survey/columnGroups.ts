import { fold } from '../headers/headerText'

/** Columns that repeat for limb 1, limb 2 …: those of the tree, and one list of columns a limb, in the same order. */
export interface ColumnGroups {
  readonly common: readonly number[]
  readonly groups: readonly { readonly title: string; readonly columns: readonly number[] }[]
}

interface Numbered {
  readonly base: string
  readonly number: string
}

/** A header parted into what it says and the number or letter that counts: "Limb 2 dia" is "limb # dia" and 2. */
function parted(header: string): Numbered | null {
  const text = fold(header)
    .replace(/(\p{L})(\d)/gu, '$1 $2')
    .replace(/[_.\-–#/]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  const found = /(?:^|\s)(\d{1,2})(?=\s|$)/.exec(text)
  if (found?.[1] === undefined) return null
  return {
    base: `${text.slice(0, found.index)} # ${text.slice(found.index + found[0].length)}`.trim(),
    number: found[1]
  }
}

/** Groups by their number, where two or more columns repeat under two or more numbers. */
function byNumber(headers: readonly string[]): ColumnGroups | null {
  const numbers = new Map<string, Map<string, number>>()
  headers.forEach((header, at) => {
    const found = header === '' ? null : parted(header)
    if (found === null) return
    const bases = numbers.get(found.number) ?? new Map<string, number>()
    if (!bases.has(found.base)) bases.set(found.base, at)
    numbers.set(found.number, bases)
  })
  const first = [...numbers.values()][0]
  if (first === undefined || numbers.size < 2) return null
  const shared = [...first.keys()].filter(
    (base) => [...numbers.values()].filter((bases) => bases.has(base)).length >= 2
  )
  if (shared.length < 2) return null
  const groups = [...numbers].flatMap(([number, bases]) => {
    const columns = shared.map((base) => bases.get(base) ?? -1)
    return columns.some((column) => column >= 0) ? [{ title: number, columns }] : []
  })
  const taken = new Set(groups.flatMap(({ columns }) => columns))
  return { common: headers.flatMap((header, at) => (header === '' || taken.has(at) ? [] : [at])), groups }
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
    groups
  }
}

/** The groups in which columns repeat, or null where none do. */
export function columnGroups(headers: readonly string[]): ColumnGroups | null {
  return byNumber(headers) ?? byOrder(headers)
}
