import { arrangedTables } from '../arrange/arranged'
import type { ReadingChoices } from '../inventory'
import { answersOf } from './answers'
import type { SheetCells } from './sheetCells'
import { kindOfTable } from './tableKind'
import { withoutMarks } from './textMarks'

/** What some rows of a sheet show of an inventory: nothing, the headers of a table, or headers with rows below them. */
export function showsInventory(
  sheet: SheetCells,
  choices: ReadingChoices = {}
): 'nothing' | 'headers' | 'rows' {
  const { sheets } = withoutMarks([sheet])
  const tables = sheets
    .flatMap((each) => arrangedTables(each, answersOf(choices)).tables)
    .filter((table) => kindOfTable(table) !== null)
  if (tables.length === 0) return 'nothing'
  return tables.some(({ rows }) => rows.length > 0) ? 'rows' : 'headers'
}
