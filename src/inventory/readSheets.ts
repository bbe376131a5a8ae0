import { findInventory } from './findInventory'
import type { Inventory, ReadingChoices } from './inventory'
import { readInventory } from './readInventory'
import type { SheetCells } from './survey/sheetCells'

/** Reads the inventory that the sheets of a workbook hold. */
export function readSheets(sheets: readonly SheetCells[], choices: ReadingChoices = {}): Inventory {
  const own = choices.sheet
  const asked = own === undefined ? sheets : sheets.filter(({ name }) => name === own)
  return readInventory(
    findInventory(asked.map(({ name, rows }) => ({ name, rows: rows.map((row) => [...row]) }))),
    choices
  )
}
