import type { CellBlock } from '../../shared/cells'
import type { Inventory, ReadingChoices } from './inventory'
import { readSheets, readSheetsInParts } from './readSheets'
import type { SheetCells } from './survey/sheetCells'

function asSheet({ sheet, rows, top, left }: CellBlock): SheetCells {
  return { name: sheet, rows, top, left }
}

/** Reads a block of cells as an inventory, as `readSheets` reads the sheets of a workbook. */
export function readInventory(block: CellBlock, choices: ReadingChoices = {}): Inventory {
  return readSheets([asSheet(block)], choices)
}

/** Reads a block in parts, as `readSheetsInParts` reads sheets. */
export function readInParts(
  block: CellBlock,
  rowsAPart: number,
  choices: ReadingChoices = {}
): Generator<Inventory, void> {
  return readSheetsInParts([asSheet(block)], rowsAPart, choices)
}
