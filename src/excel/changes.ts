import { areaRead, type Area, type ReadCells } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import { inExcel } from './failures'
import { readCells } from './readCells'
import { listen } from './registrations'

/** The same cells as they stand now; null where the sheet is gone or called otherwise. */
export async function readAgain({ sheet, rows, top, left }: ReadCells): Promise<ReadCells | Problem | null> {
  return inExcel(
    async (context) => {
      const there = context.workbook.worksheets.getItemOrNullObject(sheet)
      there.load('name')
      await context.sync()
      if (there.isNullObject || there.name !== sheet) return null
      const area = areaRead({ rows, top, left })
      return { sheet, rows: area === null ? [] : await readCells(context, there, area), top, left }
    },
    { wait: true }
  )
}

/** Cells that somebody changed; null where it may be any of the sheet. */
export interface SheetChange {
  sheet: string
  area: Area | null
}

/** Tells of each change of cells until the function given back is called. */
export async function watchChanges(callback: (change: SheetChange) => void): Promise<() => Promise<void>> {
  const tell = async ({
    worksheetId,
    address,
    changeType
  }: Excel.WorksheetChangedEventArgs): Promise<void> => {
    const change = await inExcel(
      async (context): Promise<SheetChange | null> => {
        const sheet = context.workbook.worksheets.getItemOrNullObject(worksheetId)
        sheet.load('name')
        await context.sync()
        if (sheet.isNullObject) return null
        // Rows that come or go move everything behind them.
        if (String(changeType) !== 'RangeEdited' || /[,;]/.test(address))
          return { sheet: sheet.name, area: null }
        const range = sheet.getRange(address)
        range.load('rowIndex,columnIndex,rowCount,columnCount')
        await context.sync()
        const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range
        return { sheet: sheet.name, area: { row, column, rows, columns } }
      },
      { wait: true }
    )
    if (change !== null && !('code' in change)) callback(change)
  }
  return listen((context) => context.workbook.worksheets.onChanged.add(tell))
}
