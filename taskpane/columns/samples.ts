import { parseAddress } from '../../shared/a1Notation'
import { isBlank, quoted } from '../../shared/cells'
import type { ColumnMatch, Inventory } from '../../src/inventory/inventory'
import type { SheetCells } from '../../src/inventory/survey/sheetCells'

/** Values that stand beside a column, so that a person knows it again. */
const shown = 3

/** The first values below the header of a column. */
export function samplesOf(match: ColumnMatch, { parts }: Inventory, sheets: readonly SheetCells[]): string[] {
  const column = parseAddress(`${match.letters}:${match.letters}`)?.area.column
  const sheet = sheets.find(({ name }) => name === match.sheet)
  const part = parts.find(({ sheet: name, matches }) => name === match.sheet && matches.includes(match))
  const place = part ?? parts.find(({ sheet: name }) => name === match.sheet)
  if (column === undefined || sheet === undefined || place === undefined) return []
  const from = place.top - sheet.top + 1
  return sheet.rows
    .slice(from, from + place.count - 1)
    .map((row) => row[column - sheet.left])
    .filter((cell) => !isBlank(cell))
    .slice(0, shown)
    .map((cell) => quoted(cell))
}
