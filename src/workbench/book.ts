/**
 * What the Office host needs of a workbook: one small interface with two stores behind it, the grid in the browser and
 * memory in Node. Rows and columns count from 0. Whatever the add-in does not use is not here.
 */
import type { Area, Cell } from '../../shared/cells'

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
  /** A thin bottom edge in this color, or null. */
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
  /** Percent, where it is not fitted to pages. */
  scale?: number | null
  fitToWidth: number | null
  fitToHeight: number | null
  titleRows: string | null
  footerLeft: string
  footerCenter: string
  footerRight: string
  /** Below: not every store has a use for them; the host keeps what the store gives back. */
  centerHorizontally?: boolean
  /** The number of the first page; a blank text where it follows the page before. */
  firstPageNumber?: number | ''
  /** In A1 notation without the sheet, or null for the whole sheet. */
  printArea?: string | null
  /** In points. */
  margins?: PageMargins
  /** Rows that begin a page, besides those that begin one because the page before is full. */
  breaks?: number[]
}

export interface PageMargins {
  left: number
  right: number
  top: number
  bottom: number
  header: number
  footer: number
}

export interface Validation {
  area: Area
  /** The Excel API's DataValidationRule, kept as given. */
  rule: unknown
  texts?: ValidationTexts
}

/** What a validated cell says to the user; each as the Excel API gives it. */
export interface ValidationTexts {
  errorAlert?: unknown
  prompt?: unknown
}

/** What a conditional format adds to the look of a cell; a part that is not named stays as it is. */
export type AddedLook = Partial<Pick<CellFormat, 'bold' | 'italic' | 'color' | 'fill'>>

/** A look that cells take on while a formula holds. */
export interface ConditionalFormat {
  id: string
  areas: Area[]
  /** In A1 notation with "=", as it reads for the first cell; empty until it is set. */
  formula: string
  look: AddedLook
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
  /** While true, a new width brings a height in proportion, and the other way round. */
  proportionLocked?: boolean
  /** What becomes of it when the cells under it are moved or resized; a store may leave it to the host. */
  placement?: 'TwoCell' | 'OneCell' | 'Absolute'
}

/** A chart of cells of its sheet, as the Excel API names its parts. The stores keep it; none draws it. */
export interface Chart {
  id: string
  sheetId: string
  name: string
  /** The cells that it covers. */
  area: Area
  title: string
  /** In points. */
  titleSize: number
  titleBold: boolean
  textSize: number
  legend: boolean
  legendPosition: string
  valueTitle: string
  valueFormat: string
  /** Null where the spreadsheet chooses. */
  valueMinimum: number | null
  /** Words for it that an opened file held; the Excel API has no member for them. */
  alt?: string
  series: ChartSeries[]
}

export interface ChartSeries {
  name: string
  type: 'ColumnClustered' | 'LineMarkers'
  values: Area | null
  labels: Area | null
  /** Of the columns. */
  fill: string | null
  gapWidth: number
  line: string | null
  lineStyle: 'Continuous' | 'Dash' | 'None'
  lineWeight: number
  marker: string
  markerSize: number
  markerFill: string | null
  markerEdge: string | null
}

export interface Selection {
  sheetId: string
  areas: Area[]
}

/** One batch of the client, as the host received it; those that only tidy up after a run are not told. */
export interface BookRequest {
  /** From 1, counted by the host. */
  number: number
  /** Length of the request's text. */
  characters: number
  /** The client asked to wait while the user is typing in a cell. */
  waitsForCellEdit: boolean
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
  /**
   * As typed: a text that begins with "=" is a formula, one that begins with "'" is text without it, and "" empties the
   * cell. The host never passes null here: the Excel API takes it as "leave this cell alone", and the host does so.
   */
  setValues(sheetId: string, area: Area, values: Cell[][]): void
  setNumberFormats(sheetId: string, area: Area, formats: string[][]): void
  clear(sheetId: string, area: Area): void
  /** Copies cells with their formulas and looks to a place of the same size; relative references move along. */
  copyCells(from: string, area: Area, to: string, place: Area): void

  format(sheetId: string, area: Area): CellFormat
  setFormat(sheetId: string, area: Area, format: Partial<CellFormat>): void
  /** In points, as the Excel API counts. */
  columnWidth(sheetId: string, column: number): number
  setColumnWidth(sheetId: string, column: number, columns: number, points: number): void
  rowHeight(sheetId: string, row: number): number
  setRowHeight(sheetId: string, row: number, rows: number, points: number): void
  rowHidden(sheetId: string, row: number): boolean
  columnHidden(sheetId: string, column: number): boolean
  mergedAreas(sheetId: string): Area[]
  /** Names of sheets that hold no cells, such as a chart on a sheet of its own. */
  otherSheets?(): string[]
  /** Whether days are counted from 1904 in this workbook. */
  countsFrom1904?(): boolean
  isProtected(sheetId: string | null): boolean

  freeze(sheetId: string, rows: number, columns: number): void
  frozen(sheetId: string): { rows: number; columns: number }
  gridlines(sheetId: string): boolean
  setGridlines(sheetId: string, shown: boolean): void
  tabColor(sheetId: string): string
  setTabColor(sheetId: string, color: string): void
  hideSheet(sheetId: string, hidden?: boolean): void

  tables(): TableInfo[]
  addTable(sheetId: string, area: Area, name: string): TableInfo
  changeTable(id: string, change: Partial<Pick<TableInfo, 'name' | 'style' | 'showFilter' | 'banded'>>): void
  deleteTable(id: string): void

  names(): NameInfo[]
  addName(name: NameInfo): void
  changeName(name: string, change: Partial<NameInfo>): void
  deleteName(name: string): void

  validations(sheetId: string): Validation[]
  /** A null rule takes the validation away. */
  setValidation(sheetId: string, area: Area, rule: unknown, texts?: ValidationTexts): void

  /** The first one wins where two set the same part of a look. */
  conditionalFormats(sheetId: string): ConditionalFormat[]
  /** Puts one without a formula before the others. */
  addConditionalFormat(sheetId: string, area: Area): ConditionalFormat
  changeConditionalFormat(
    sheetId: string,
    id: string,
    change: Partial<Pick<ConditionalFormat, 'formula' | 'look'>>
  ): void
  deleteConditionalFormat(sheetId: string, id: string): void

  page(sheetId: string): PageLayout
  setPage(sheetId: string, change: Partial<PageLayout>): void

  pictures(sheetId: string): Picture[]
  addPicture(sheetId: string, image: string): Picture
  changePicture(id: string, change: Partial<Picture>): void
  deletePicture(id: string): void

  charts(sheetId: string): Chart[]
  addChart(sheetId: string, chart: Omit<Chart, 'id' | 'sheetId'>): Chart
  changeChart(id: string, change: Partial<Chart>): void
  deleteChart(id: string): void

  selection(): Selection
  select(sheetId: string, area: Area): void

  settings(): Record<string, unknown>
  /** undefined takes the setting away. */
  setSetting(key: string, value: unknown): void

  /** Told of each request before its first action; a store that raises faults throws a BookFault here. */
  beginRequest?(request: BookRequest): void
  /** Whether this store was told to refuse a member of the API, named by its type: Chart.name. */
  refuses?(member: string): boolean
  /** Told how many cells each block of an answer holds; may throw a BookFault as well. */
  answering?(cells: number): void
  /** Resolves when formulas have been calculated. */
  settled(): Promise<void>
  /**
   * Calls back after each event until the returned function is called. A store that knows which cells changed says so;
   * otherwise the host names the used area.
   */
  on(event: BookEvent, callback: (sheetId: string, changed?: Area) => void): () => void
}
