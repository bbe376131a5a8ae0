import { addressIn, type CellBlock } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import type { ColumnMatch } from '../inventory'

/** Whether rows say something of trees, of limbs, or of a limb and its tree at once. */
export type RowsOf = 'trees' | 'limbs' | 'both'

/**
 * One way of reading rows: a table with its columns, one of the groups in which columns repeat, or a form. Row 0 of the
 * block names the columns; rows that hold no data are empty in it.
 */
export interface Part {
  readonly block: CellBlock
  readonly matches: readonly ColumnMatch[]
  /** The rows of the block that hold data. */
  readonly rows: readonly number[]
  readonly of: RowsOf
  /** Names the limbs of a group that has no column for their ids. */
  readonly group: string | null
  /** Lines of text between the rows, each with the row of the block that it stands in. */
  readonly sections: readonly { readonly row: number; readonly text: string }[]
  /** A form: labels with their values, in one row. */
  readonly isForm: boolean
  /** Parts of one table share its number; their rows are the same rows of the sheet. */
  readonly table: number
}

/** The column of the block that gives a field, or -1. */
export function columnGiving({ matches }: Pick<Part, 'matches'>, field: Field): number {
  return matches.find((match) => match.field === field)?.column ?? -1
}

/** The cell that names the tree of a row, or the first of the row where no column does. */
export function idCell(part: Part, row: number): string {
  return addressIn(part.block, row, Math.max(0, columnGiving(part, 'tree')))
}
