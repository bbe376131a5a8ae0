import type { Area, Cell } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import { inExcel } from './failures'
import { readCells } from './readCells'

/** Cells as they were read, from the place of the first of them. */
interface Cells {
  readonly sheet: string
  readonly rows: readonly (readonly Cell[])[]
  readonly top: number
  readonly left: number
}

/** The same cells as they stand now; null where the sheet is gone or called otherwise. */
export async function readAgain({ sheet, rows, top, left }: Cells): Promise<Cells | Problem | null> {
  return inExcel(
    async (context) => {
      const there = context.workbook.worksheets.getItemOrNullObject(sheet)
      there.load('name')
      await context.sync()
      if (there.isNullObject || there.name !== sheet) return null
      const columns = rows[0]?.length ?? 0
      if (columns === 0) return { sheet, rows: [], top, left }
      const area = { row: top, column: left, rows: rows.length, columns }
      return { sheet, rows: await readCells(context, there, area), top, left }
    },
    { wait: true }
  )
}

/** Cells that somebody changed; no area where it may be any of the sheet. */
interface Change {
  sheet: string
  area: Area | null
}

/** Tells of each change of cells until the function given back is called. */
export async function watchChanges(callback: (change: Change) => void): Promise<() => Promise<void>> {
  const tell = async ({
    worksheetId,
    address,
    changeType
  }: Excel.WorksheetChangedEventArgs): Promise<void> => {
    const change = await inExcel(
      async (context): Promise<Change | null> => {
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
  const registration = await Excel.run(async (context) => {
    const added = context.workbook.worksheets.onChanged.add(tell)
    await context.sync()
    return added
  })
  return async () => {
    await Excel.run(registration.context as Excel.RequestContext, async (context) => {
      registration.remove()
      await context.sync()
    })
  }
}
