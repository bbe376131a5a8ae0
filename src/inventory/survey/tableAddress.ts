import { areaOf, sheetPrefix } from '../../../shared/cells'
import type { SheetTable } from './sheetTables'

/** The address of a table, its headers included. */
export function tableAddress({ sheet, header, rows }: SheetTable): string {
  if (sheet.area !== undefined) return sheetPrefix(sheet.name) + areaOf(sheet.area)
  const columns = header.columns.map(({ column }) => column)
  const [left, right] = [Math.min(...columns), Math.max(...columns)]
  const last = rows.at(-1) ?? header.last
  const area = {
    row: sheet.top + header.names,
    column: sheet.left + left,
    rows: last - header.names + 1,
    columns: right - left + 1
  }
  return sheetPrefix(sheet.name) + areaOf(area)
}
