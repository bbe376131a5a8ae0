/**
 * A workbook on its way between a file and the grid: what the grid shows, in the grid's own data, and beside it what
 * the grid keeps elsewhere or cannot show.
 */
import type {
  ICellData,
  IObjectMatrixPrimitiveType,
  IStyleData,
  IWorksheetData,
  Nullable
} from '@univerjs/core'
import type { Area } from '../../../shared/cells'
import type { ConditionalFormat, NameInfo, TableInfo } from '../book'
import type { Extras } from '../grid/extras'

export type CellMatrix = IObjectMatrixPrimitiveType<Nullable<ICellData>>

export interface Spill {
  area: Area
  /** The cells around the first one, by row and column of the sheet. */
  cells: CellMatrix
}

export interface BookContents {
  name: string
  /** In the order of the tabs. */
  sheets: Partial<IWorksheetData>[]
  styles: Record<string, Nullable<IStyleData>>
  /** For each sheet's id, the areas that its formulas spill over. */
  spills: Map<string, Spill[]>
  /** For each sheet's id, those that the grid shows; the first one wins. */
  conditionalFormats: Map<string, ConditionalFormat[]>
  tables: TableInfo[]
  names: NameInfo[]
  extras: Extras
  activeSheet: string
}
