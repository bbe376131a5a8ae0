/** The used part of a range: where the sheet is used, narrowed to the cells that hold a value if only values count. */
import { type Area, type Cell, isBlank, sharedPart } from '../../../shared/cells'
import type { Book } from '../book'

export function usedWithin(book: Book, sheetId: string, within: Area, valuesOnly: boolean): Area | null {
  const used = book.usedArea(sheetId, valuesOnly)
  const area = used && sharedPart(used, within)
  if (!area || !valuesOnly || cellsOf(area) === cellsOf(used)) return area
  return narrowed(area, book.values(sheetId, area), book.formulas(sheetId, area))
}

/** A cell whose formula gives an empty text is used too. */
function narrowed(area: Area, values: Cell[][], formulas: Cell[][]): Area | null {
  const holds = (row: number, column: number) =>
    !isEmpty(values[row]?.[column]) || !isBlank(formulas[row]?.[column])
  const rows = values.flatMap((cells, row) => (cells.some((_, column) => holds(row, column)) ? [row] : []))
  const columns = (values[0] ?? []).flatMap((_, column) =>
    rows.some((row) => holds(row, column)) ? [column] : []
  )
  const [top, left] = [rows[0], columns[0]]
  if (top === undefined || left === undefined) return null
  return {
    row: area.row + top,
    column: area.column + left,
    rows: (rows.at(-1) ?? top) - top + 1,
    columns: (columns.at(-1) ?? left) - left + 1
  }
}

function cellsOf({ rows, columns }: Area): number {
  return rows * columns
}

function isEmpty(cell: Cell | undefined): boolean {
  return cell === null || cell === undefined || cell === ''
}
