import { sampleInventory } from '../../src/file/sampleInventory'
import type { Area, Cell } from '../../shared/cells'
import { startOffice, type OfficeInNode } from '../host/officeInNode'

export interface InventoryBook extends OfficeInNode {
  sheetId: string
  select(address: Partial<Area>): void
}

/** The real Office library on a workbook in memory whose sheet Trees holds these rows from A1 on. */
export async function startWith(
  rows: Cell[][] = sampleInventory,
  row = 0,
  column = 0
): Promise<InventoryBook> {
  const office = await startOffice()
  const sheetId = office.book.activeSheet()
  fill(office, sheetId, rows, row, column)
  const select = (area: Partial<Area>) => {
    office.book.selectAreas(sheetId, [{ row: 0, column: 0, rows: 1, columns: 1, ...area }])
  }
  return { ...office, sheetId, select }
}

/** Puts rows on a sheet, blanks as blanks. */
export function fill(office: OfficeInNode, sheetId: string, rows: Cell[][], row = 0, column = 0): void {
  const columns = Math.max(...rows.map((cells) => cells.length))
  const area = { row, column, rows: rows.length, columns }
  office.book.setValues(
    sheetId,
    area,
    rows.map((cells) => Array.from({ length: columns }, (_none, index) => cells[index] ?? ''))
  )
}
