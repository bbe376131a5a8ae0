import { arrangedTables } from '../arrange/arranged'
import type { ReadingChoices } from '../inventory'
import { answersOf } from './answers'
import type { SheetCells } from './sheetCells'
import { kindOfTable } from './tableKind'

/** What some rows of a sheet show of an inventory: nothing, the headers of a table, or headers with rows below them. */
export function showsInventory(
  sheet: SheetCells,
  choices: ReadingChoices = {}
): 'nothing' | 'headers' | 'rows' {
  const tables = arrangedTables(sheet, answersOf(choices)).tables.filter(
    (table) => kindOfTable(table) !== null
  )
  if (tables.length === 0) return 'nothing'
  return tables.some(({ rows }) => rows.length > 0) ? 'rows' : 'headers'
}
