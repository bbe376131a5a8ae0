import { isBlank, quoted, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { readYear } from '../../../shared/dates'
import { conflictsIn, type Conflict, type IdentifiedRow, type PartReaders } from './identity'
import { plain } from './plain'
import type { Part } from './part'

/** What tells trees of one id apart, in words that are added to the id. */
export interface Teller {
  /** What it is by: "site", "sheet", the header of a column. */
  readonly by: string
  /** It is the time of the survey: the rows are of one tree, seen again. */
  readonly isTime: boolean
  tell(part: Part, row: number): string
}

/** Values that contradict, of so many fields, are two trees and not a slip, whatever tells them apart (house judgment). */
const contradictions = 2

const timeWords =
  /\b(?:date|year|survey(?:ed)?|inspect(?:ed|ion)|visit|datum|jahr|fecha|ano|año|annee|année)\b/i

/** Whether a header speaks of the time of a survey. */
export function speaksOfTime(header: string): boolean {
  return timeWords.test(header.replaceAll('_', ' '))
}

function cellText(part: Part, row: number, column: number): string {
  const cell: Cell | undefined = part.block.rows[row]?.[column]
  return isBlank(cell) ? '' : quoted(cell)
}

/** By a column under this header, or with this field, in whatever place it stands in each part. */
function byColumn(by: string, isIt: (match: Part['matches'][number]) => boolean): Teller {
  const places = new Map<Part, number>()
  return {
    by,
    isTime: speaksOfTime(by),
    tell(part, row) {
      let column = places.get(part)
      if (column === undefined) places.set(part, (column = part.matches.find(isIt)?.column ?? -1))
      return column < 0 ? '' : cellText(part, row, column)
    }
  }
}

/** The line of text above the row, where the table is divided by such lines. */
export function sectionAt({ sections }: Part, row: number): string {
  let found = ''
  for (const section of sections ?? []) if (section.row < row) found = section.text
  return found
}

const bySheet: Teller = { by: 'sheet', isTime: false, tell: ({ block }) => block.sheet }
const bySection: Teller = { by: 'section', isTime: false, tell: (part, row) => quoted(sectionAt(part, row)) }

/** Columns of places, the smaller first: numbers begin again in each street, or in each zone. */
const places = ['site', 'zone'] as const satisfies readonly Field[]

/** Everything that may tell trees apart: their place first, then lines between the rows, sheets, and columns without a use. */
export function tellersOf(rows: readonly IdentifiedRow[]): Teller[] {
  const parts = [...new Set(rows.map(({ part }) => part))]
  const headers = new Set(
    parts.flatMap(({ matches }) =>
      matches.flatMap(({ field, header }) => (field === null && header !== '' ? [header] : []))
    )
  )
  return [
    ...places.map((place) => byColumn(columnOf(place).name.toLowerCase(), ({ field }) => field === place)),
    bySection,
    bySheet,
    ...[...headers].map((header) =>
      byColumn(quoted(header), (match) => match.field === null && match.header === header)
    )
  ]
}

/** Whether the rows of an id fall into groups of which none contradicts itself. */
function settles(teller: Teller, rows: readonly IdentifiedRow[], readers: PartReaders): boolean {
  const groups = new Map<string, IdentifiedRow[]>()
  let last = ''
  for (const each of rows) {
    const own = teller.tell(each.part, each.row)
    last = own === '' ? last : own
    groups.set(plain(last), [...(groups.get(plain(last)) ?? []), each])
  }
  if (groups.size < 2) return false
  return [...groups.values()].every((group) => {
    const left = conflictsIn(group, readers).values().next()
    return left.done === true
  })
}

/** Whether what tells is a place, a section or a time, which several rows share, and no remark of each row. */
function isShared(teller: Teller, all: readonly IdentifiedRow[]): boolean {
  const counts = new Map<string, number>()
  for (const { part, row } of all) {
    const own = plain(teller.tell(part, row))
    if (own !== '') counts.set(own, (counts.get(own) ?? 0) + 1)
  }
  return counts.size > 1 && [...counts.values()].every((count) => count > 1)
}

/** By a tree's own values, where nothing else tells it. */
function byValues({ against }: Conflict): Teller | null {
  if (against.size < contradictions) return null
  const field = against.has('species') ? 'species' : 'height'
  const { name } = columnOf(field)
  const found = byColumn(name.toLowerCase(), (match) => match.field === field)
  if (field === 'species') return found
  return {
    ...found,
    tell(part, row) {
      const own = found.tell(part, row)
      return own === '' ? '' : `${name.toLowerCase()} ${own}`
    }
  }
}

/** What tells the trees of one id apart; null where its rows are taken for one tree. */
export function tellerFor(
  conflict: Conflict,
  rows: readonly IdentifiedRow[],
  all: readonly IdentifiedRow[],
  tellers: readonly Teller[],
  readers: PartReaders
): Teller | null {
  const found = tellers.find((teller) => settles(teller, rows, readers) && isShared(teller, all))
  return found ?? byValues(conflict)
}

/** When a row was surveyed, as a number to compare: the year, or the day as text in order. */
export function timeOf(text: string): number {
  const day = /^(\d{4})-(\d\d)-(\d\d)/.exec(text)
  if (day !== null) return Number(`${day[1] ?? ''}${day[2] ?? ''}${day[3] ?? ''}`)
  const year = readYear(text)
  return year === null ? NaN : year * 10_000
}
