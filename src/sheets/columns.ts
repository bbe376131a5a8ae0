import type { TableColumn } from './draft'
import type { Content, Format } from './sheet'

/** A column of a table in one piece: its header, its width in characters, its look, and the cell of a row. */
export interface Column<Row> {
  readonly header: string
  readonly width: number
  readonly format?: Format
  readonly of: (row: Row) => Content
}

/** The widths of columns side by side, as a sheet is laid out. */
export function widthsOf(columns: readonly { readonly width: number }[]): number[] {
  return columns.map(({ width }) => width)
}

/** Headers and looks, as a draft sets them. */
export function headersOf(columns: readonly Omit<Column<never>, 'width'>[]): TableColumn[] {
  return columns.map(({ header, format }) => (format === undefined ? { header } : { header, format }))
}

/** The cells of a row, in the order of the columns. An array made at its full length takes no more memory than it needs. */
export function cellsOf<Row>(columns: readonly Pick<Column<Row>, 'of'>[], row: Row): Content[] {
  return columns.map(({ of }) => of(row))
}
