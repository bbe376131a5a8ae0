/**
 * What the Office host needs of a workbook: one small interface with two stores behind it, the grid in the browser and
 * memory in Node. Rows and columns count from 0. Whatever the add-in does not use is not here.
 */
import type { Cell } from '../../shared/cells'

export interface Area {
  row: number
  column: number
  rows: number
  columns: number
}

export interface SheetInfo {
  id: string
  name: string
  visible: boolean
}

/** The looks of a range that the add-in sets or reads. Where cells differ, a read gives null. */
export interface CellFormat {
  bold: boolean | null
  italic: boolean | null
  size: number | null
  fontName: string | null
  color: string | null
  fill: string | null
  horizontal: 'General' | 'Left' | 'Center' | 'Right' | null
  vertical: 'Top' | 'Center' | 'Bottom' | null
  wrap: boolean | null
  /** A thin bottom edge in this colour, or null. */
  bottomEdge: string | null
}

export interface TableInfo {
  id: string
  name: string
  sheetId: string
  area: Area
  style: string
  showFilter: boolean
  banded: boolean
}

export interface NameInfo {
  name: string
  /** A formula with "=", for instance ='Cut plan'!$A$1 */
  formula: string
  visible: boolean
}

export interface PageLayout {
  orientation: 'Portrait' | 'Landscape'
  paperSize: string
  fitToWidth: number | null
  fitToHeight: number | null
  titleRows: string | null
  footerLeft: string
  footerCenter: string
  footerRight: string
}

export interface Validation {
  area: Area
  /** The Excel API's DataValidationRule, kept as given. */
  rule: unknown
}

export interface Picture {
  id: string
  sheetId: string
  /** PNG, base64. */
  image: string
  left: number
  top: number
  width: number
  height: number
  alt: string
}

export interface Selection {
  sheetId: string
  areas: Area[]
}

export type BookEvent = 'selection' | 'changed' | 'sheets'

/** A fault that Excel could raise, thrown by a store and answered as an API error. */
export class BookFault extends Error {
  constructor(
    readonly code: string,
    message: string
  ) {
    super(message)
    this.name = 'BookFault'
  }
}

export interface Book {
  sheets(): SheetInfo[]
  addSheet(name: string): SheetInfo
  deleteSheet(id: string): void
  renameSheet(id: string, name: string): void
  activeSheet(): string
  activateSheet(id: string): void

  /** The area that holds values or formats; null on an empty sheet. */
  usedArea(sheetId: string, valuesOnly: boolean): Area | null
  values(sheetId: string, area: Area): Cell[][]
  /** Formulas with "=", values elsewhere. */
  formulas(sheetId: string, area: Area): Cell[][]
  texts(sheetId: string, area: Area): string[][]
  numberFormats(sheetId: string, area: Area): string[][]
  /** As typed: a text that begins with "=" is a formula, one that begins with "'" is text without it. */
  setValues(sheetId: string, area: Area, values: Cell[][]): void
  setNumberFormats(sheetId: string, area: Area, formats: string[][]): void
  clear(sheetId: string, area: Area): void

  format(sheetId: string, area: Area): CellFormat
  setFormat(sheetId: string, area: Area, format: Partial<CellFormat>): void
  /** In points, as the Excel API counts. */
  columnWidth(sheetId: string, column: number): number
  setColumnWidth(sheetId: string, column: number, columns: number, points: number): void
  rowHeight(sheetId: string, row: number): number
  setRowHeight(sheetId: string, row: number, rows: number, points: number): void
  rowHidden(sheetId: string, row: number): boolean
  mergedAreas(sheetId: string): Area[]
  isProtected(sheetId: string | null): boolean

  freeze(sheetId: string, rows: number, columns: number): void
  frozen(sheetId: string): { rows: number; columns: number }
  gridlines(sheetId: string): boolean
  setGridlines(sheetId: string, shown: boolean): void
  tabColor(sheetId: string): string
  setTabColor(sheetId: string, color: string): void

  tables(): TableInfo[]
  addTable(sheetId: string, area: Area, name: string): TableInfo
  changeTable(id: string, change: Partial<Pick<TableInfo, 'name' | 'style' | 'showFilter' | 'banded'>>): void
  deleteTable(id: string): void

  names(): NameInfo[]
  addName(name: NameInfo): void
  changeName(name: string, change: Partial<NameInfo>): void
  deleteName(name: string): void

  validations(sheetId: string): Validation[]
  setValidation(sheetId: string, area: Area, rule: unknown): void

  page(sheetId: string): PageLayout
  setPage(sheetId: string, change: Partial<PageLayout>): void

  pictures(sheetId: string): Picture[]
  addPicture(sheetId: string, image: string): Picture
  changePicture(id: string, change: Partial<Picture>): void
  deletePicture(id: string): void

  selection(): Selection
  select(sheetId: string, area: Area): void

  settings(): Record<string, unknown>
  setSetting(key: string, value: unknown): void

  /** Resolves when formulas have been calculated. */
  settled(): Promise<void>
  /** Calls back after each event until the returned function is called. */
  on(event: BookEvent, callback: (sheetId: string) => void): () => void
}
