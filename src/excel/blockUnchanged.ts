import type { CellBlock } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import { inExcel } from './failures'
import { readCells } from './readCells'

/** True where the sheet still holds the same cells as when the block was read. */
export async function holdsSame(context: Excel.RequestContext, block: CellBlock): Promise<boolean> {
  const columns = block.rows[0]?.length ?? 0
  if (columns === 0) return true
  const sheet = context.workbook.worksheets.getItemOrNullObject(block.sheet)
  await context.sync()
  if (sheet.isNullObject) return false
  const area = { row: block.top, column: block.left, rows: block.rows.length, columns }
  const now = await readCells(context, sheet, area)
  return block.rows.every((row, r) => row.every((cell, c) => cell === now[r]?.[c]))
}

/** Reads the block again and compares: true, false, or the problem that kept it from being read. */
export async function blockUnchanged(block: CellBlock): Promise<boolean | Problem> {
  return inExcel((context) => holdsSame(context, block), { wait: true })
}
