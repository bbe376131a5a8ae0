import { areaRead } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { inExcel } from './failures'
import { readCells } from './readCells'

/** The first of the sheets that no longer holds the same cells as when it was read, or null. */
export async function changedSheet(
  context: Excel.RequestContext,
  sheets: readonly SheetCells[]
): Promise<SheetCells | null> {
  for (const sheet of sheets) {
    const area = areaRead(sheet)
    if (area === null) continue
    const there = context.workbook.worksheets.getItemOrNullObject(sheet.name)
    await context.sync()
    if (there.isNullObject) return sheet
    const now = await readCells(context, there, area)
    if (!sheet.rows.every((row, r) => row.every((cell, c) => cell === now[r]?.[c]))) return sheet
  }
  return null
}

/** Reads the sheets again and compares: true, false, or the problem that kept them from being read. */
export async function sheetsUnchanged(sheets: readonly SheetCells[]): Promise<boolean | Problem> {
  return inExcel(async (context) => (await changedSheet(context, sheets)) === null, { wait: true })
}
