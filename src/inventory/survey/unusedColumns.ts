import { quoted } from '../../../shared/cells'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { listed } from '../../../shared/words/lists'
import type { ColumnMatch } from '../inventory'
import type { SheetTable } from './sheetTables'

/** Headers named in the line about columns that are not used. */
const named = 8

/** The columns that give nothing: those that repeat a field one by one, all others in one line. */
export function unusedColumns(
  { header }: SheetTable,
  matches: readonly ColumnMatch[],
  address: (match: ColumnMatch) => string
): Problem[] {
  const problems: Problem[] = []
  const unknown: ColumnMatch[] = []
  const fields = new Set(matches.map(({ field }) => field))
  for (const match of matches) {
    if (match.field !== null || match.header === '') continue
    const words = fieldFromWords(readHeader(match.header).words)
    if (words !== null && fields.has(words) && header.groups === null)
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

function nameOf(field: Field): string {
  return columnOf(field).name
}
