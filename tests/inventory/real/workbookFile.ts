/**
 * Workbooks as other programs write them (ECMA-376 part 1, SpreadsheetML), described as text and built here by hand, so
 * that the file library which reads them has not written them.
 *
 * One line per row, cells between bars. A cell is empty, a number, or a text; `'12` is the text 12, `=A1*2 => 7.5` a formula
 * with the result its program last saw, `@2027-03-02` a day, `0.05 as 0%` a number under a number format, and `\n` in a
 * text a line break.
 */
export interface Sheet {
  name: string
  rows: string
  /** `A2:A5` */
  merges?: readonly string[]
  /** Row numbers, from 1. */
  hiddenRows?: readonly number[]
  /** Column letters. */
  hiddenColumns?: readonly string[]
  /** A table over this range, its last row a row of totals if said. */
  table?: { range: string; totals?: boolean }
  hidden?: boolean
}

export interface Workbook {
  kind: 'xlsx'
  sheets: readonly Sheet[]
  /** Texts in the cells themselves, as several exporters write them, or in the shared list, as spreadsheets do. */
  texts: 'inline' | 'shared'
}

export function workbook(sheets: readonly Sheet[], texts: Workbook['texts'] = 'shared'): Workbook {
  return { kind: 'xlsx', sheets, texts }
}

/** 0 gives A, 26 gives AA. */
export const letters = (column: number): string =>
  (column >= 26 ? letters(Math.floor(column / 26) - 1) : '') + String.fromCharCode(65 + (column % 26))

/** A gives 0, AA gives 26. */
export const columnIndex = (name: string): number =>
  [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1

/** The cells' sources of a sheet, row by row. */
export function sheetSources({ rows }: Sheet): string[][] {
  return rows
    .replace(/^\n|\n$/g, '')
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()))
}
