import { cellAddress } from '../../shared/cells'
import type { CellRule } from './sheet'

/** What a cell takes that takes texts beside numbers, as a formula for the first cell of the area. */
export function numberOrText({ area }: CellRule, { from, to }: { from: number; to: number }): string {
  const cell = cellAddress(area.row, area.column)
  return `=OR(ISTEXT(${cell}),AND(${cell}>=${String(from)},${cell}<=${String(to)}))`
}
