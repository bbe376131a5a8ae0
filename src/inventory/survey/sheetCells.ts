import {
  cellAddress,
  columnLetters,
  isBlank,
  type Area,
  type Cell,
  type CellBlock
} from '../../../shared/cells'
import type { Field } from '../../../shared/columns'

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
  /** Where a cell stands in the workbook's sheet, where rows were put into another arrangement to be read. */
  readonly placeOf?: CellBlock['placeOf']
  /** What was rearranged, in the workbook's sheet. */
  readonly area?: Area
  /** What columns give that were parted from one that names both. */
  readonly given?: ReadonlyMap<number, Field>
  /** Rows of lines of text whose sizes stand in columns. */
  readonly readLines?: ReadonlySet<number>
  /** What the name of a column says in full, where something beside the name tells it. */
  readonly says?: (name: string, column: number) => string | null
}

/** Where a cell stands in the workbook's sheet, rows and columns from 0. */
export function placeIn(
  { top, left, placeOf }: Pick<SheetCells, 'top' | 'left' | 'placeOf'>,
  row: number,
  column: number
): { readonly row: number; readonly column: number } {
  return placeOf?.(row, column) ?? { row: top + row, column: left + column }
}

/** The address of a cell of the sheet. */
export function cellIn(sheet: SheetCells, row: number, column: number): string {
  const place = placeIn(sheet, row, column)
  return cellAddress(place.row, place.column, sheet.name)
}

/** A row as a person counts it. */
export function numberOfRow(sheet: SheetCells, row: number): number {
  return placeIn(sheet, row, 0).row + 1
}

/** The letters of the column in which the name of a column stands. */
export function lettersOf(sheet: SheetCells, names: number, column: number): string {
  return columnLetters(placeIn(sheet, names, column).column)
}

/** How many cells of a row have anything in them. */
export function countFilled(cells: readonly Cell[]): number {
  let filled = 0
  for (const cell of cells) if (!isBlank(cell)) filled++
  return filled
}

/** Letters by which a person can speak of a column alone: of rearranged rows, several stand in one column. */
export function ownLetters({ placeOf }: SheetCells, letters: string): string {
  return placeOf === undefined ? letters : ''
}

/** The columns of a row whose cells hold something. */
export function filledIn(cells: readonly Cell[]): number[] {
  return cells.flatMap((cell, column) => (isBlank(cell) ? [] : [column]))
}
