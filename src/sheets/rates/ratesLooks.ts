import { columnLetters } from '../../../shared/cells'
import { palette } from '../../../shared/palette'
import type { ConditionalLook } from '../sheet'

/**
 * Which values are still invented and which are the person's own, each by one rule down the column. A value is compared
 * with the start value in its own row, so that sorting and inserted rows do no harm; headings have no start value. The
 * reading of the sheet goes by the same: a blank takes the start value, and "yes" makes a start value one's own.
 */
export function ratesLooks(
  row: number,
  rows: number,
  columns: { value: number; start: number; mine: number }
): ConditionalLook[] {
  const cell = (column: number) => `$${columnLetters(column)}${String(row + 1)}`
  const [value, start, mine] = [cell(columns.value), cell(columns.start), cell(columns.mine)]
  const area = { row, column: columns.value, rows, columns: 1 }
  const unchanged = `OR(${value}="",AND(${value}=${start},${mine}<>"yes"))`
  return [
    {
      area,
      formula: `=AND(${start}<>"",${unchanged})`,
      format: { italic: true, color: palette.umber, fill: palette.noticeFill }
    },
    { area, formula: `=AND(${start}<>"",NOT(${unchanged}))`, format: { bold: true } }
  ]
}
