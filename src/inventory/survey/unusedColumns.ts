import { isBlank, quoted } from '../../../shared/cells'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { listed } from '../../../shared/words/lists'
import type { ColumnMatch } from '../inventory'
import type { SheetTable } from './sheetTables'

/** Headers named in the line about columns that are not used. */
const named = 8

/** The columns that give nothing: those that repeat a field one by one, all others in one line. */
export function unusedColumns(
  table: SheetTable,
  matches: readonly ColumnMatch[],
  address: (match: ColumnMatch) => string
): Problem[] {
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
  for (const match of matches) {
    if (match.field !== null || match.header === '' || beside.includes(match)) continue
    const words = fieldFromWords(readHeader(match.header).words)
    if (words !== null && fields.has(words) && table.header.groups === null)
      problems.push(problem('column-twice', address(match), { column: nameOf(words) }))
    else unknown.push(match)
  }
  const [first] = unknown
  if (first === undefined) return problems
  if (unknown.length === 1)
    return [...problems, problem('column-unknown', address(first), { text: quoted(first.header) })]
  const shown = unknown.slice(0, named).map((match) => `“${quoted(match.header)}” (${match.letters})`)
  const more = unknown.length - shown.length
  const facts = {
    count: unknown.length,
    text: listed([...shown, ...(more > 0 ? [`${more} more`] : [])])
  }
  return [...problems, problem('columns-unknown', address(first), facts)]
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
  return `${letters}${String(sheet.top + (rows.at(-1) ?? header.names) + 1)}`
}

function nameOf(field: Field): string {
  return columnOf(field).name
}
