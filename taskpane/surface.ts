import type { CellBlock } from '../shared/cells'
import type { Problem } from '../shared/problems'
import type { DocumentKind, SheetDescription } from '../src/sheets/sheet'

/** Cells of a sheet, rows and columns from 0. */
export interface SelectedCells {
  sheet: string
  row: number
  column: number
  rows: number
  columns: number
}

/** What is selected in the spreadsheet, and what planning it would read. */
export interface Selected {
  /** The block that would be planned, with its sheet: Inventory!A1:P64. Empty where there is none. */
  address: string
  /** Rows of that block, the header row among them. */
  rows: number
  columns: number
  /** How the selection was cut or widened to that block, or an empty text. */
  remark: string
  /** Why the selection cannot be planned, and what to select. */
  problem: Problem | null
  /** The selected cells themselves, or null where they could not be told. */
  cells: SelectedCells | null
}

/** Work that can take a while says how far it is and stops when told. */
export interface Steps {
  signal: AbortSignal
  onProgress(done: number, total: number): void
}

/** What came of reading cells: the cells and what is worth knowing about them, or why they could not be read. */
export interface Reading {
  block: CellBlock | null
  problems: Problem[]
}

/** One of our own sheets that an earlier plan wrote. */
export interface OwnSheet {
  kind: DocumentKind
  sheetName: string
}

/** How to write: in the place of our earlier sheets or beside them, and only if the source cells are unchanged. */
export interface WriteOptions {
  replace: boolean
  source: CellBlock
}

/** What came of writing: the names of the sheets that now stand in the workbook, or why nothing was written. */
export interface Writing {
  written: string[]
  problems: Problem[]
}

/** All that the pane asks of the spreadsheet. A canceled call may reject; the pane knows that it canceled. */
export interface Surface {
  describeSelection(): Promise<Selected>
  /** Calls back after each change of the selection until the returned function is called. */
  watchSelection(callback: (selected: Selected) => void): Promise<() => Promise<void>>
  /** The cells that the selection means, or those of an address. */
  readBlock(address: string | null, steps: Steps): Promise<Reading>
  /** The Rules sheet of the workbook, or null where there is none. */
  readRules(): Promise<CellBlock | Problem | null>
  /** Writes a Rules sheet where there is none and gives its name. */
  writeRules(description: SheetDescription): Promise<string | Problem>
  /** The Rates sheet of the workbook, or null where there is none. */
  readRates(): Promise<CellBlock | Problem | null>
  /** Writes a Rates sheet where there is none and gives its name. */
  writeRates(description: SheetDescription): Promise<string | Problem>
  findOwnSheets(): Promise<OwnSheet[] | Problem>
  writeSheets(descriptions: SheetDescription[], options: WriteOptions, steps: Steps): Promise<Writing>
  /** A problem where the cell is not there any more. */
  goToCell(address: string): Promise<Problem | null>
  /** What went wrong when the spreadsheet refused, as a sentence and a remedy. */
  explain(error: unknown): Problem
}
