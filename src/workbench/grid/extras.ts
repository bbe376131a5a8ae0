/**
 * What the grid cannot show: page set-up, pictures, charts, protection, looks of tables, validation rules as they were given,
 * settings, and whatever an opened file held besides. It is kept beside the grid and saved into the .xlsx.
 */
import type { FileName, KeptParts, KeptProperties } from '../../file/file-library/fileBook'
import type { Chart, PageLayout, Picture, TableInfo, Validation } from '../book'
import { plainPage } from '../plainPage'

export interface SheetExtras {
  page: PageLayout
  pictures: Picture[]
  charts: Chart[]
  validations: Validation[]
  protected: boolean
  /** Parts of an opened file's sheet that go back into the file as they came. */
  kept: KeptParts
}

export type TableLooks = Pick<TableInfo, 'style' | 'showFilter' | 'banded'>

/**
 * A hidden name, which the grid would show in its name box. It follows its sheet by id, so that it stays right when the
 * sheet is renamed.
 */
export interface HiddenName {
  name: string
  /** The sheet that the formula begins with, or null for any other formula. */
  sheetId: string | null
  /** The reference on that sheet, for instance $A$1; or the whole formula with "=". */
  rest: string
}

export interface Extras {
  sheets: Map<string, SheetExtras>
  hiddenNames: HiddenName[]
  tables: Map<string, TableLooks>
  settings: Map<string, unknown>
  /** Parts of an opened file's workbook that go back into the file as they came. */
  kept: { properties?: KeptProperties | undefined; scopedNames?: FileName[] }
}

export function plainExtras(): SheetExtras {
  return { page: plainPage(), pictures: [], charts: [], validations: [], protected: false, kept: {} }
}

export function noExtras(): Extras {
  return { sheets: new Map(), hiddenNames: [], tables: new Map(), settings: new Map(), kept: {} }
}

/** The extras of one sheet, made on first need. */
export function extrasOf(extras: Extras, sheetId: string): SheetExtras {
  let found = extras.sheets.get(sheetId)
  if (found === undefined) {
    found = plainExtras()
    extras.sheets.set(sheetId, found)
  }
  return found
}
