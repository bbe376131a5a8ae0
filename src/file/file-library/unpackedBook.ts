/** What `unpackBook` gives: a workbook that can be shown, and packed again. Rows and columns count from 0. */
import type { ConditionalRule } from 'hucre'
import type { Area, Cell } from '../../../shared/cells'
import type {
  FileCell,
  FileColumn,
  FileName,
  FilePage,
  FileRow,
  FileTable,
  FileValidation,
  KeptParts,
  KeptProperties
} from './fileBook'
import type { FileColor, FileStyle } from './fileStyle'
import type { FoundChart } from './foundCharts'
import type { FileSettings } from './settingsPart'

/** A conditional format of any kind. */
export interface FoundRule {
  priority: number
  range: string
  /** Null where it goes by something else than one formula, or ends the search for others. */
  formula: string | null
  style: FileStyle | null
  /** For `KeptParts`, where nothing here can show it. */
  asItCame: ConditionalRule
}

export type FoundCell = Omit<FileCell, 'value' | 'formulaResult' | 'richText'>

export interface UnpackedSheet {
  name: string
  hidden: boolean
  rows: Cell[][]
  /** What cells hold besides a value, by "row,column". */
  cells: ReadonlyMap<string, FoundCell>
  columns: readonly FileColumn[]
  rowSizes: ReadonlyMap<number, FileRow>
  merged: Area[]
  tables: (Omit<FileTable, 'columns' | 'style'> & { style: string | null })[]
  validations: FileValidation[]
  rules: FoundRule[]
  charts: FoundChart[]
  freeze: { rows: number; columns: number }
  gridlines: boolean
  tabColor: FileColor | null
  page: FilePage
  footer: string
  /** Rows that begin a page, or null where the file says none. */
  breaks: number[] | null
  protected: boolean
  kept: KeptParts
}

export interface UnpackedBook {
  sheets: UnpackedSheet[]
  names: FileName[]
  activeSheet: number
  properties: KeptProperties | undefined
  /** What the add-in keeps in the workbook. */
  settings: FileSettings
  /** Parts that are gone when the book is packed again, in words for a person. */
  lost: string[]
}
