import { isBlank, type Cell } from '../../../shared/cells'

/** A rectangle of merged cells, rows and columns from 0 as in `rows`, ends included. */
export interface Merge {
  readonly top: number
  readonly left: number
  readonly bottom: number
  readonly right: number
}

/**
 * A sheet as a file or a workbook gives it: formulas as their last results, dates as texts such as "2026-03-01", and
 * numbers that are shown as percentages as texts such as "5 %", so that a cell says what a person sees in it.
 */
export interface SheetCells {
  readonly name: string
  /** Rows may be of unequal length; row and column 0 stand at `top` and `left` of the sheet. */
  readonly rows: readonly (readonly Cell[])[]
  readonly top: number
  readonly left: number
  /** The whole sheet is hidden. */
  readonly hidden?: boolean
  readonly merges?: readonly Merge[]
  /** Rows and columns, counted as in `rows`, that a person hid or filtered away. */
  readonly hiddenRows?: ReadonlySet<number>
  readonly hiddenColumns?: ReadonlySet<number>
}

/** How many cells of a row have anything in them. */
export function countFilled(cells: readonly Cell[]): number {
  let filled = 0
  for (const cell of cells) if (!isBlank(cell)) filled++
  return filled
}
