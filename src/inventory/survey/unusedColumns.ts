import { isBlank, quoted } from '../../../shared/cells'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { firstOf } from '../../../shared/words/some'
import type { Unused } from '../headers/assign'
import type { ColumnMatch } from '../inventory'
import { coupleOf } from './coupleOf'
import type { MatchedTable } from './matchTables'
import { cellIn, numberOfRow } from './sheetCells'
import type { SheetTable } from './sheetTables'

/** Headers named in the line about columns that are not used. */
const named = 8

/**
 * The columns that give nothing: those that repeat a field one by one, all others in one line. Those that are asked about, by
 * the address of their header or as one of several that a question names, are not also called ones that nobody needs.
 */
export function unusedColumns(
  { table, matches }: MatchedTable,
  asked: ReadonlySet<string>,
  named: ReadonlySet<ColumnMatch>
): Problem[] {
  const address = ({ column }: ColumnMatch): string => cellIn(table.sheet, table.header.names, column)
  const problems: Problem[] = []
  const unknown: ColumnMatch[] = []
  const beside = blockBeside(table, matches)
  if (beside.length > 0) {
    const [from, to] = [beside[0], beside.at(-1)].map((match) => match?.letters ?? '')
    const columns = from === to ? `column ${from ?? ''}` : `columns ${from ?? ''} to ${to ?? ''}`
    const place = beside[0] === undefined ? '' : address(beside[0])
    problems.push(problem('block-beside', `${place}:${lastCell(table, to ?? '')}`, { columns }))
  }
  const fields = new Set(matches.map(({ field }) => field))
  const why = whyUnused(table, matches)
  problems.push(...doubled(matches, why, address))
  for (const match of matches) {
    if (match.field !== null || match.header === '' || beside.includes(match)) continue
    if (asked.has(address(match)) || named.has(match)) continue
    const reason = why.get(match.column) ?? null
    if (told.has(reason) || (reason === 'two things' && isAsked(match, fields))) continue
    const words = fieldFromWords(readHeader(match.header).words)
    if (words !== null && fields.has(words) && table.header.groups === null)
      problems.push(problem('column-twice', address(match), { column: nameOf(words) }))
    else unknown.push(match)
  }
  const [first] = unknown
  if (first === undefined) return problems
  if (unknown.length === 1)
    return [...problems, problem('column-unknown', address(first), { text: quoted(first.header) })]
  const facts = { count: unknown.length, text: shown(unknown) }
  return [...problems, problem('columns-unknown', address(first), facts)]
}

function shown(matches: readonly ColumnMatch[]): string {
  return firstOf(
    matches.map((match) => `“${quoted(match.header)}” (${match.letters})`),
    named
  )
}

/** Reasons that have a line of their own. */
const told: ReadonlySet<Unused | null> = new Set([
  'other system',
  'girth',
  'earlier year',
  'inches left over',
  'part of the species'
])

/** A column of two measurements is asked about where one of them is wanting. */
function isAsked(match: ColumnMatch, fields: ReadonlySet<Field | null>): boolean {
  return coupleOf(match).some((field) => !fields.has(field))
}

function withoutYear(header: string): string {
  return header.replace(/(?<!\d)(?:19|20)\d{2}(?!\d)/, '#')
}

/** Why columns are not used; an earlier year's is so only where the latest one is used. */
function whyUnused({ header }: SheetTable, matches: readonly ColumnMatch[]): Map<number, Unused | null> {
  const reasons = new Map(header.columns.map(({ column, meaning }) => [column, meaning.unused]))
  const used = new Set(matches.flatMap((match) => (match.field === null ? [] : [withoutYear(match.header)])))
  for (const match of matches)
    if (reasons.get(match.column) === 'earlier year' && !used.has(withoutYear(match.header)))
      reasons.set(match.column, null)
  return reasons
}

/** Columns that give again what others give: a line for each way of doing so. */
function doubled(
  matches: readonly ColumnMatch[],
  why: ReadonlyMap<number, Unused | null>,
  address: (match: ColumnMatch) => string
): Problem[] {
  const of = (reason: Unused): ColumnMatch[] =>
    matches.filter(({ field, column }) => field === null && why.get(column) === reason)
  const [systems, round, years, inches, names] = [
    of('other system'),
    of('girth'),
    of('earlier year'),
    of('inches left over'),
    of('part of the species')
  ]
  const same = new Set(years.map(({ header }) => withoutYear(header)))
  const latest = matches.filter(({ field, header }) => field !== null && same.has(withoutYear(header)))
  const [system, girth, year, inch, name] = [systems[0], round[0], years[0], inches[0], names[0]]
  const species = matches.filter(({ field }) => field === 'species')
  return [
    ...(system === undefined ? [] : [problem('measures-doubled', address(system), { text: shown(systems) })]),
    ...(inch === undefined ? [] : [problem('inches-apart', address(inch), { text: shown(inches) })]),
    ...(name === undefined
      ? []
      : [problem('species-joined', address(name), { text: shown([...species, ...names]) })]),
    ...(girth === undefined ? [] : [problem('girths-doubled', address(girth), { text: shown(round) })]),
    ...(year === undefined
      ? []
      : [problem('years-doubled', address(year), { used: shown(latest), text: shown(years) })])
  ]
}

/** Columns to the right of an empty one, none of which gives anything: a legend or a note, no part of the table. */
function blockBeside({ sheet, rows, header }: SheetTable, matches: readonly ColumnMatch[]): ColumnMatch[] {
  const last = Math.max(...matches.flatMap(({ field, column }) => (field === null ? [] : [column])))
  const right = matches.filter(({ column }) => column > last)
  const [first] = right
  const gap = last + 1
  if (first === undefined || first.column === gap) return []
  const empty = [header.names, ...rows].every((row) => isBlank(sheet.rows[row]?.[gap]))
  return empty ? right : []
}

function lastCell({ sheet, rows, header }: SheetTable, letters: string): string {
  return `${letters}${String(numberOfRow(sheet, rows.at(-1) ?? header.names))}`
}

function nameOf(field: Field): string {
  return columnOf(field).name
}
