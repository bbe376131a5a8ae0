import type { Cell } from '../../../shared/cells'

/** A rectangle of merged cells, rows and columns from 0, ends included. */
export interface Merge {
  readonly top: number
  readonly left: number
  readonly bottom: number
  readonly right: number
}

/** A sheet as a file or a workbook gives it. Row and column 0 stand at `top` and `left` of the sheet. */
export interface SheetCells {
  readonly name: string
  readonly rows: readonly (readonly Cell[])[]
  readonly top: number
  readonly left: number
  readonly merges?: readonly Merge[]
  /** Rows, counted as in `rows`, that a person hid or filtered away. */
  readonly hiddenRows?: ReadonlySet<number>
  readonly hiddenColumns?: ReadonlySet<number>
  /** Columns whose cells are shown as percentages, so that 0.05 is 5 %. */
  readonly percentColumns?: ReadonlySet<number>
}
