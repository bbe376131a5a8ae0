import type { Area } from '../../shared/cells'

/**
 * The block of filled cells around a cell, bounded by blank rows and columns or the edges of the grid. `filled` tells of
 * each cell of a grid of so many rows and columns. A lone blank cell gives itself.
 */
export function surroundingBlock(
  filled: (row: number, column: number) => boolean,
  rows: number,
  columns: number,
  cell: { row: number; column: number }
): Area {
  let top = cell.row
  let bottom = cell.row
  let left = cell.column
  let right = cell.column
  const rowFilled = (row: number) => {
    for (let c = Math.max(0, left - 1); c <= Math.min(columns - 1, right + 1); c++)
      if (filled(row, c)) return true
    return false
  }
  const columnFilled = (column: number) => {
    for (let r = Math.max(0, top - 1); r <= Math.min(rows - 1, bottom + 1); r++)
      if (filled(r, column)) return true
    return false
  }
  for (let grown = true; grown;) {
    grown = false
    for (; right + 1 < columns && columnFilled(right + 1); grown = true) right++
    for (; left > 0 && columnFilled(left - 1); grown = true) left--
    for (; bottom + 1 < rows && rowFilled(bottom + 1); grown = true) bottom++
    for (; top > 0 && rowFilled(top - 1); grown = true) top--
  }
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 }
}
