import type { SheetChange } from '../src/excel/changes'
import type { PicturesRead, PicturesWanted } from '../src/excel/readPictures'
import type { CellBlock, ReadCells } from '../shared/cells'
import type { Problem } from '../shared/problems'
import type { ChosenDetails } from '../src/details/detailsFor'
import type { SheetCells } from '../src/inventory/survey/sheetCells'
import type { DocumentKind, SheetDescription } from '../src/sheets/sheet'

/** Cells of a sheet, rows and columns from 0. */
export interface SelectedCells {
  sheet: string
  row: number
  column: number
  rows: number
  columns: number
}

/** A part of a sheet that would be read. */
export interface PlaceToRead {
  /** With its sheet: Inventory!A1:P64. */
  address: string
  /** The header row among them. */
  rows: number
  columns: number
}

/** What is selected in the spreadsheet, and what planning it would read. */
export interface Selected {
  /** What would be read, sheet by sheet; empty where there is no inventory. */
  places: readonly PlaceToRead[]
  /** The only range that would be read, where the selection names one; null where it is all of the inventory. */
  range: string | null
  /** How the selection was cut to that range, or an empty text. */
  remark: string
  /** Why nothing can be planned, and what to do. */
  problem: Problem | null
  /** The selected cells themselves, or null where they could not be told. */
  cells: SelectedCells | null
}

/** Work that can take a while says how far it is and stops when told. */
export interface Steps {
  signal: AbortSignal
  onProgress(done: number, total: number): void
}

/** What to read: the inventory that the selection means, all of the workbook's, or one range. */
export type Wanted = 'selection' | 'workbook' | { readonly range: string }

/** Sheets that were read. */
export interface SheetsRead {
  readonly sheets: readonly SheetCells[]
  /** The only range that was read, or null where it was all of the inventory. */
  readonly range: string | null
}

/** What came of reading: the sheets and what is worth knowing about them, or why they could not be read. */
export interface Reading {
  read: SheetsRead | null
  problems: readonly Problem[]
}

/** One of our own sheets that an earlier plan wrote. */
export interface OwnSheet {
  kind: DocumentKind
  sheetName: string
}

/** How to write: in the place of our earlier sheets or beside them, and only if the sheets read are unchanged. */
export interface WriteOptions {
  replace: boolean
  /** The sheets of the inventory that the documents are of. */
  inventory: readonly string[]
  source: readonly SheetCells[]
}

/** What came of writing: the names of the sheets that now stand in the workbook, or why nothing was written. */
export interface Writing {
  written: string[]
  problems: Problem[]
  /** What the documents were written without, and why. */
  notes?: readonly Problem[]
  /** What changed since the plan was made, in words; nothing was written then. */
  changed?: string
}

/** All that the pane asks of the spreadsheet. A canceled call may reject; the pane knows that it canceled. */
export interface Surface {
  describeSelection(): Promise<Selected>
  /** Calls back after each change of the selection until the returned function is called. */
  watchSelection(callback: (selected: Selected) => void): Promise<() => Promise<void>>
  /** Calls back after each change of cells until the returned function is called. */
  watchChanges(callback: (change: SheetChange) => void): Promise<() => Promise<void>>
  /** The same cells as they stand now; null where the sheet is gone or called otherwise. */
  readAgain(cells: ReadCells): Promise<ReadCells | Problem | null>
  readInventory(wanted: Wanted, steps: Steps): Promise<Reading>
  /** What the workbook keeps of a person's answers, as it was kept; undefined where there are none. */
  readAnswers(): unknown
  /** What the workbook keeps of the plan that was written last. */
  readLastPlan(): unknown
  /** Keeps in the workbook what was planned last. */
  keepLastPlan(text: string): Promise<Problem | null>
  /** Keeps answers in the workbook, null for none; a problem where it does not take them. */
  keepAnswers(text: string | null): Promise<Problem | null>
  /** The Rules sheet of the workbook, or null where there is none. */
  readRules(): Promise<CellBlock | Problem | null>
  /** Writes a Rules sheet where there is none and gives its name. */
  writeRules(description: SheetDescription): Promise<string | Problem>
  /** The Rates sheet of the workbook, or null where there is none. */
  readRates(): Promise<CellBlock | Problem | null>
  /** Writes a Rates sheet where there is none and gives its name. */
  writeRates(description: SheetDescription): Promise<string | Problem>
  /** The Estimate that was written last for the inventory of these sheets, in which rates may have been changed, or null. */
  readEstimate(inventory: readonly string[]): Promise<CellBlock | Problem | null>
  /** The Job details sheet of the inventory of these sheets, if there is one, and what is wrong with the choice. */
  readDetails(inventory: readonly string[]): Promise<ChosenDetails | Problem>
  /** The logo and the photographs that documents show, as they stand on the sheets now. */
  readPictures(wanted: PicturesWanted): Promise<PicturesRead>
  /** Writes a Job details sheet for an inventory that has none and gives its name. */
  writeDetails(description: SheetDescription, inventory: readonly string[]): Promise<string | Problem>
  /** The documents that were written for the inventory of these sheets. */
  findOwnSheets(inventory: readonly string[]): Promise<OwnSheet[] | Problem>
  writeSheets(descriptions: SheetDescription[], options: WriteOptions, steps: Steps): Promise<Writing>
  /** A problem where the cell is not there any more. */
  goToCell(address: string): Promise<Problem | null>
  /** What went wrong when the spreadsheet refused, as a sentence and a remedy. */
  explain(error: unknown): Problem
}
