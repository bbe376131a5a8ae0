import type { RowsOf } from './part'
import type { SheetTable } from './sheetTables'

/** A table of the inventory. */
export interface SurveyTable extends SheetTable {
  readonly of: RowsOf
}
