/** Shows a function's sentence where the pointer rests on its cell, in place of the grid's own words for the error. */
import { CellAlertManagerService, CellAlertType, HoverManagerService } from '@univerjs/preset-sheets-core'
import type { GridContext } from './context'

/** The grid shows its own words after a tenth of a second; ours replace them just after. */
const afterTheirs = 130
/** The key under which the grid shows and takes away its words. */
const alertKey = 'SHEET_FORMULA_ALERT'

export function showOnHover(
  context: GridContext,
  messageAt: (sheetId: string, row: number, column: number) => { code: string; message: string } | null
): void {
  const alerts = context.injector.get(CellAlertManagerService)
  let timer: ReturnType<typeof setTimeout> | undefined
  context.injector.get(HoverManagerService).currentCell$.subscribe((cell) => {
    clearTimeout(timer)
    if (!cell) return
    const { row, col, subUnitId } = cell.location
    timer = setTimeout(() => {
      const found = messageAt(subUnitId, row, col)
      if (found === null) return
      alerts.showAlert({
        type: CellAlertType.ERROR,
        title: found.code,
        message: found.message,
        location: cell.location,
        width: 280,
        height: 90,
        key: alertKey
      })
    }, afterTheirs)
  })
}
