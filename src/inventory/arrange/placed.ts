import { isBlank, type Area, type Cell } from '../../../shared/cells'
import { placeIn, type SheetCells } from '../survey/sheetCells'

/** A cell with the row and column of the sheet in which it stands. */
export interface Placed {
  readonly cell: Cell
  readonly row: number
  readonly column: number
}

export function placedAt(sheet: SheetCells, row: number, column: number): Placed {
  return { cell: sheet.rows[row]?.[column] ?? null, row, column }
}

/** The part of the sheet that holds anything. */
function filledArea(sheet: SheetCells): Area {
  let [first, last, left, right] = [Infinity, 0, Infinity, 0]
  sheet.rows.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      if (isBlank(cell)) return
      first = Math.min(first, row)
      last = row
      left = Math.min(left, column)
      right = Math.max(right, column)
    })
  })
  const corner = placeIn(sheet, first, left)
  return { ...corner, rows: last - first + 1, columns: right - left + 1 }
}

/** The same sheet with its cells in other rows, the names of the columns first. Each cell knows its place; nothing is hidden in it. */
export function rearranged(sheet: SheetCells, rows: readonly (readonly Placed[])[]): SheetCells {
  const names = rows[0] ?? []
  return {
    name: sheet.name,
    top: 0,
    left: 0,
    rows: rows.map((cells) => cells.map(({ cell }) => cell)),
    area: sheet.area ?? filledArea(sheet),
    placeOf(row, column) {
      const found = rows[row]?.[column] ?? rows[row]?.[0] ?? names[column] ?? { row: 0, column: 0 }
      return placeIn(sheet, found.row, found.column)
    }
  }
}
