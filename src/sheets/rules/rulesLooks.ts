import { columnLetters } from '../../../shared/cells'
import { palette } from '../../../shared/palette'
import type { ConditionalLook } from '../sheet'

/** Values that differ from their default, by one rule down the column. A blank takes the default. */
export function rulesLooks(
  row: number,
  rows: number,
  columns: { value: number; standard: number }
): ConditionalLook[] {
  const cell = (column: number) => `$${columnLetters(column)}${String(row + 1)}`
  const [value, standard] = [cell(columns.value), cell(columns.standard)]
  return [
    {
      area: { row, column: columns.value, rows, columns: 1 },
      formula: `=AND(${value}<>"",${value}<>${standard})`,
      format: { bold: true, fill: palette.noticeFill }
    }
  ]
}
