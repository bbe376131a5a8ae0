/** The grid's sheets have only the rows and columns they need; writing beyond them first makes room. */
import { SetWorksheetColumnCountMutation, SetWorksheetRowCountMutation } from '@univerjs/preset-sheets-core'
import type { Area } from '../../../shared/cells'
import { BookFault } from '../book'
import { sheetColumns, sheetRows } from '../../../shared/a1Notation'
import type { GridContext } from './context'

export function growSheet(context: GridContext, sheetId: string, area: Area): void {
  const sheet = context.peek(sheetId)
  const rows = area.row + area.rows
  const columns = area.column + area.columns
  if (area.row < 0 || area.column < 0 || rows > sheetRows || columns > sheetColumns)
    throw new BookFault('InvalidArgument', 'The cells lie outside the sheet.')
  if (rows > sheet.getRowCount())
    context.mutate(SetWorksheetRowCountMutation.id, sheetId, { rowCount: rows + 50 })
  if (columns > sheet.getColumnCount())
    context.mutate(SetWorksheetColumnCountMutation.id, sheetId, { columnCount: columns + 5 })
}
