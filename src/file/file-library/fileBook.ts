/**
 * A workbook as a file holds it: what `packBook` takes and `unpackBook` gives. Rows and columns count from 0. Only this
 * folder knows the file library; everything else speaks these words.
 */
import type { WorkbookProperties, WriteSheet } from 'hucre'
import type { Area, Cell } from '../../../shared/cells'
import type { FileChart } from './chartXml'
import type { FileColor, FileStyle } from './fileStyle'
import type { FileSettings } from './settingsPart'

/** Parts of an opened sheet that nobody here reads, in the library's own words: they go back into the file as they came. */
export type KeptParts = Partial<WriteSheet>

/** The same of an opened workbook: its author, its dates and the like. */
export type KeptProperties = WorkbookProperties

export interface FileName {
  name: string
  /** A reference or a formula, without "=". */
  range: string
  /** The sheet that the name is known on, where it is not known in the whole workbook. */
  scope?: string
}

/** What a cell has besides, or instead of, a plain value. */
export interface FileCell {
  value: Cell
  style?: FileStyle | undefined
  /** Without "="; empty in a cell that takes the shared formula of its `formulaSharedIndex`. */
  formula?: string
  formulaResult?: Cell
  formulaType?: 'shared' | 'array'
  formulaSharedIndex?: number
  /** The cells that an array formula fills. */
  formulaRef?: string
  /** The formula spills over as many cells as it needs. */
  formulaDynamic?: boolean
  richText?: { text: string }[]
  hyperlink?: { target: string }
  comment?: { text: string }
}

/** How a value by row looks, and whether that can be seen on a blank cell. */
export interface FileLook {
  readonly style: FileStyle | undefined
  readonly shows: boolean
}

/** Cells by "row,column". */
export type FileCells = Map<string, Partial<FileCell>>

export interface FileColumn {
  /** Characters of the standard font. */
  width?: number
  hidden?: boolean
  style?: FileStyle | undefined
}

export interface FileRow {
  /** Points. */
  height?: number
  hidden?: boolean
}

export interface FileTable {
  name: string
  /** Headers included. */
  area: Area
  columns: string[]
  style: string
  filter: boolean
  banded: boolean
}

/** What cells take (ECMA-376 part 1, 18.3.1.32). */
export interface FileValidation {
  type: 'list' | 'whole' | 'decimal' | 'date' | 'time' | 'textLength' | 'custom'
  operator?:
    | 'between'
    | 'notBetween'
    | 'equal'
    | 'notEqual'
    | 'greaterThan'
    | 'lessThan'
    | 'greaterThanOrEqual'
    | 'lessThanOrEqual'
  formula1?: string | undefined
  formula2?: string | undefined
  values?: string[]
  allowBlank?: boolean
  showInputMessage?: boolean
  showErrorMessage?: boolean
  inputTitle?: string
  inputMessage?: string
  errorTitle?: string
  errorMessage?: string
  errorStyle?: 'stop' | 'warning' | 'information'
  /** Areas with spaces between them. */
  range: string
}

/** A look that cells take on while a formula holds. */
export interface FileFormulaLook {
  /** 1 is the first. */
  priority: number
  /** Without "=", as it reads for the first cell. */
  formula: string
  /** Areas with spaces between them. */
  range: string
  style: FileStyle
}

export interface FilePicture {
  bytes: Uint8Array
  kind: 'png' | 'jpeg'
  /** The cells under it. It keeps its size where a program sets their columns wider. */
  area: Area
  /** Pixels, 96 to the inch, between it and the corner of its first cell. */
  inset?: { x: number; y: number } | undefined
  /** Pixels, 96 to the inch. */
  width: number
  height: number
  alt: string
}

export interface FileMargins {
  left?: number
  right?: number
  top?: number
  bottom?: number
  header?: number
  footer?: number
}

export interface FilePage {
  orientation?: 'portrait' | 'landscape'
  paperSize?: 'letter' | 'legal' | 'a3' | 'a4' | 'a5' | 'b4' | 'b5' | 'executive' | 'tabloid'
  /** Percent, where it is not fitted to pages. */
  scale?: number
  /** Pages beside and below one another; 0 for as many as it takes. */
  fit?: { width: number; height: number }
  /** Inches. */
  margins?: FileMargins
  centered?: boolean
  /** The number of the first page; that of the page before and one more unless given. */
  firstPageNumber?: number
  /** What is printed, for instance A1:D40. */
  printArea?: string
  /** Rows repeated on each page, for instance 1:2. */
  titleRows?: string
}

export interface BookSheet {
  name: string
  hidden?: boolean
  /** Plain values; this is by far the fastest way into a file. */
  rows?: Cell[][]
  /** How the values of each row look; rows that look alike share one list. Left out, they take the look of their column. */
  looks?: readonly (readonly FileLook[])[]
  /** The cells that need more words than a value. */
  cells?: FileCells
  columns?: FileColumn[]
  rowSizes?: Map<number, FileRow>
  merged?: Area[]
  tables?: FileTable[]
  validations?: FileValidation[]
  formulaLooks?: FileFormulaLook[]
  pictures?: FilePicture[]
  charts?: FileChart[]
  freeze: { rows: number; columns: number }
  gridlines: boolean
  tabColor?: FileColor | undefined
  page: FilePage
  footer: string
  /** Rows that begin a page. */
  breaks?: number[] | undefined
  /** The name on the sheet's first cell by which the sheet is known again. */
  mark?: FileName
  /** Other names of the workbook for cells of this sheet. */
  names?: FileName[]
  kept?: KeptParts
}

export interface FileBook {
  sheets: BookSheet[]
  /** Names besides those of the sheets. */
  names?: FileName[]
  activeSheet?: number
  properties?: KeptProperties | undefined
  /** What the add-in keeps in the workbook. */
  settings?: FileSettings
}
