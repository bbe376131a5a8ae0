/**
 * A sheet as a value: what it says and how it looks, with no spreadsheet in sight. `src/excel` applies it through
 * Office.js and `src/file` writes it to an .xlsx; both must come out the same.
 */
import type { Area } from '../../shared/cells'
import type { Drawing } from '../drawing/shapes'
import type { DocumentKind } from './documentBook'

export type { DocumentKind } from './documentBook'

/** One cell. A bare text is text even where it begins with "="; formulas and dates are marked as such. */
export type Content =
  | string
  | number
  | boolean
  | null
  | Formula
  /** An Excel date serial. */
  | { date: number }

/** A native formula in A1 notation, with "=", and the value the engine computed for it. */
export interface Formula {
  formula: string
  value: number | string
}

export function isFormula(content: Content | undefined): content is Formula {
  return typeof content === 'object' && content !== null && 'formula' in content
}

/** Named looks, so that both writers and the print agree. */
export interface Format {
  bold?: boolean
  italic?: boolean
  /** Points. */
  size?: number
  /** #rrggbb */
  color?: string
  fill?: string
  align?: 'left' | 'center' | 'right'
  vertical?: 'top' | 'middle' | 'bottom'
  wrap?: boolean
  numberFormat?: string
  /** A thin line in this color along the bottom edge of the area. */
  underline?: string
}

export interface SheetTable {
  /** Wanted name in the workbook: letters, digits and underscores. A number is added where it is taken. */
  name: string
  /** Headers included; every header is a text and no two are the same. */
  area: Area
}

/** Rows that are taller than one line. */
export interface RowHeight {
  row: number
  rows: number
  points: number
}

/** Cells that formulas call by a name. Where the workbook has the name already, a number is added to it. */
export interface NamedCells {
  /** Letters, digits and underscores, with an underscore among them, so that it reads like no cell. */
  name: string
  area: Area
}

/** What cells take; the spreadsheet refuses anything else as it is typed, and shows the sentence. */
export interface CellRule {
  area: Area
  takes:
    | { values: readonly string[] }
    /** With `texts`, a text is let through as well: it is read and judged later, as a length with its unit is. */
    | { from: number; to: number; whole: boolean; texts?: true }
  sentence: string
}

/** A drawing on the sheet. It fills its area, whose rows and columns are made to its measure, or stands at its right. */
export interface SheetPicture {
  area: Area
  /** Points free before it in its first column. */
  inset?: number
  /** Points. */
  width: number
  height: number
  /** Everything the picture says, in words. It is made when a writer asks, as the drawing is. */
  readonly alt: string
  draw: () => Drawing
}

/**
 * A look that cells take on while a formula holds, so that it follows what the user types. It adds to the look that the
 * cells have: an .xlsx as the file library writes it cannot say "not bold".
 */
export interface ConditionalLook {
  area: Area
  /** In A1 notation, with "=", as it reads for the first cell of the area; true gives the look. */
  formula: string
  format: { bold?: true; italic?: true } & Pick<Format, 'color' | 'fill'>
}

/** A row or a column of numbers in a chart. */
export interface ChartSeries {
  /** As in the legend. */
  name: string
  /** As many cells as the chart has labels. */
  values: Area
  /** Told apart by their form, never by color alone; lines and points carry marks of different shapes. */
  drawn: 'columns' | 'line' | 'dashed-line' | 'points'
  /** #rrggbb */
  color: string
}

/** A chart of cells of this sheet, drawn by the spreadsheet itself, so that it follows the cells. */
export interface SheetChart {
  /** The cells that it covers. */
  area: Area
  title: string
  /** Everything it says, in words. */
  alt: string
  /** The cells that label the points: one row or one column. */
  labels: Area
  series: ChartSeries[]
  /** What the values are, along their axis, and how they are written there. */
  valueTitle: string
  valueFormat: string
}

export interface PageSetup {
  orientation: 'portrait' | 'landscape'
  paper: 'a4' | 'letter'
  /** Rows repeated at the top of each page, from 0, or null. */
  titleRow: number | null
  footer: string
  /** Columns that are printed, from the left; all of them unless given. */
  columns?: number
  /** Rows that are printed, from the top; all of them unless given. */
  rows?: number
  /** Narrow where many rows have to go on few pages. */
  margins?: 'usual' | 'narrow'
  /** Also with breaks of its own: a program that sets the columns wider shrinks the page and does not print it in halves. */
  fitsWidth?: true
  /** In the middle of the paper, where the columns leave room beside them. */
  centered?: true
  /** Rows, from 0, that have to begin a page. */
  breaks?: number[]
}

export interface SheetDescription {
  kind: DocumentKind
  /** Wanted sheet name, for instance "Cut plan". */
  name: string
  /** Not shown, and so never printed, until a person asks for it. */
  hidden?: true
  /** Belongs to the description before it: their formulas call each other's names. */
  continues?: true
  /** A row may be shorter than the sheet is wide: the rest of it is blank. */
  rows: Content[][]
  /** In order; later ones win. */
  formats: { area: Area; format: Format }[]
  tables: SheetTable[]
  /** Width of each column in characters of the standard font. */
  widths: number[]
  /** Where a row holds wrapped text; the other rows keep the standard height. */
  heights: RowHeight[]
  /** Cells that the formulas of this sheet call by name. */
  names?: NamedCells[]
  rules?: CellRule[]
  freezeRows: number
  freezeColumns: number
  pictures?: SheetPicture[]
  charts?: SheetChart[]
  /** In order; where two set the same part of a look, the later one wins. */
  conditionalLooks?: ConditionalLook[]
  page: PageSetup
}
