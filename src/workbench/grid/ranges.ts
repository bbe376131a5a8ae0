/** Areas as the grid has them, with their last row and column. */
import type { IRange } from '@univerjs/core'
import type { Area } from '../../../shared/cells'

export function toRange(area: Area): IRange {
  return {
    startRow: area.row,
    endRow: area.row + area.rows - 1,
    startColumn: area.column,
    endColumn: area.column + area.columns - 1
  }
}

export function toArea(range: Readonly<IRange>): Area {
  return {
    row: range.startRow,
    column: range.startColumn,
    rows: range.endRow - range.startRow + 1,
    columns: range.endColumn - range.startColumn + 1
  }
}
