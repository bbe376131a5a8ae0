/** An opened .xlsx as the contents of the grid. What the grid has no place for is kept and goes back into the file. */
import type { IWorksheetData } from '@univerjs/core'
import type { UnpackedBook, UnpackedSheet } from '../../file/file-library/unpackedBook'
import { readOwnName } from '../../sheets/ownSheets'
import type { NameInfo, TableInfo } from '../book'
import { noExtras, type Extras, type SheetExtras } from '../grid/extras'
import { toRange } from '../grid/ranges'
import { readCells, Styles } from './cellsFromFile'
import { readChart } from './chartsInFile'
import { readConditionalFormats, withoutShown } from './conditionalRules'
import type { BookContents } from './contents'
import { fromFileFormula } from './formulaNames'
import { readPage } from './pageSetup'
import { readValidation } from './validationRules'

/** Rows and columns that stay free below and beside what the file holds. */
const spareRows = 60
const spareColumns = 6

/** A width in characters of the standard font is seven pixels a character, padding included. */
const pixelsOf = (width: number) => Math.round(width * 7)

function columnsOf(sheet: UnpackedSheet, styles: Styles): IWorksheetData['columnData'] {
  const found: IWorksheetData['columnData'] = {}
  sheet.columns.forEach(({ width, hidden, style }, index) => {
    const s = styles.id(style)
    if (width !== undefined || hidden || s !== undefined)
      found[index] = {
        ...(width === undefined ? {} : { w: pixelsOf(width) }),
        ...(hidden ? { hd: 1 } : {}),
        ...(s === undefined ? {} : { s })
      }
  })
  return found
}

function rowsOf(sheet: UnpackedSheet): IWorksheetData['rowData'] {
  const found: IWorksheetData['rowData'] = {}
  for (const [row, { height, hidden }] of sheet.rowSizes)
    if (height !== undefined || hidden)
      found[row] = {
        ...(height === undefined ? {} : { h: Math.round((height * 96) / 72), ia: 0 }),
        ...(hidden ? { hd: 1 } : {})
      }
  return found
}

function gridSheet(sheet: UnpackedSheet, id: string, styles: Styles): Partial<IWorksheetData> {
  const { rows, columns } = sheet.freeze
  const widest = sheet.rows.reduce((most, row) => Math.max(most, row.length), sheet.columns.length)
  return {
    id,
    name: sheet.name,
    hidden: sheet.hidden ? 1 : 0,
    rowCount: Math.max(100, sheet.rows.length + spareRows),
    columnCount: Math.max(26, widest + spareColumns),
    cellData: readCells(sheet, styles) as IWorksheetData['cellData'],
    columnData: columnsOf(sheet, styles),
    rowData: rowsOf(sheet),
    mergeData: sheet.merged.map(toRange),
    freeze: { startRow: rows || -1, startColumn: columns || -1, ySplit: rows, xSplit: columns },
    showGridlines: sheet.gridlines ? 1 : 0,
    tabColor: sheet.tabColor?.rgb ? `#${sheet.tabColor.rgb.slice(-6)}` : ''
  }
}

function extrasOf(sheet: UnpackedSheet, sheetId: string): SheetExtras {
  const { validations, page, footer, breaks, charts } = sheet
  const unknown = validations.filter((rule) => readValidation(rule).length === 0)
  const conditionalRules = withoutShown(sheet.rules)
  return {
    page: { ...readPage(page, footer), ...(breaks ? { breaks } : {}) },
    pictures: [],
    charts: charts.map((chart, index) => readChart(chart, `${sheetId}-chart${index + 1}`, sheetId)),
    validations: validations.flatMap(readValidation),
    protected: sheet.protected,
    kept: {
      ...sheet.kept,
      ...(conditionalRules.length > 0 ? { conditionalRules } : {}),
      ...(unknown.length > 0 ? { dataValidations: unknown } : {})
    }
  }
}

function tablesOf(sheet: UnpackedSheet, sheetId: string, extras: Extras): TableInfo[] {
  return sheet.tables.map(({ name, area, style, filter, banded }, index) => {
    const id = `${sheetId}-table${index + 1}`
    const looks = { style: style ?? 'TableStyleMedium2', showFilter: filter, banded }
    extras.tables.set(id, looks)
    return { id, name, sheetId, area, ...looks }
  })
}

export function fromFile(book: UnpackedBook, name: string): BookContents {
  const styles = new Styles()
  const extras = noExtras()
  const idOf = (index: number) => `sheet${index + 1}`
  const sheets = book.sheets.map((sheet, index) => gridSheet(sheet, idOf(index), styles))
  const tables = book.sheets.flatMap((sheet, index) => tablesOf(sheet, idOf(index), extras))
  book.sheets.forEach((sheet, index) => extras.sheets.set(idOf(index), extrasOf(sheet, idOf(index))))
  const conditionalFormats = new Map(
    book.sheets.map((sheet, index) => [idOf(index), readConditionalFormats(sheet.rules)])
  )
  const names: NameInfo[] = book.names
    .filter(({ scope }) => scope === undefined)
    .map(({ name, range }) => ({
      name,
      formula: fromFileFormula(range),
      // The file library does not tell which names are hidden; those by which our documents are known are.
      visible: readOwnName(name, range) === null
    }))
  extras.settings = new Map(book.settings)
  extras.kept = {
    properties: book.properties,
    scopedNames: book.names.filter(({ scope }) => scope !== undefined)
  }
  const activeSheet = idOf(book.activeSheet < sheets.length ? book.activeSheet : 0)
  const { table } = styles
  const spills = new Map()
  return { name, sheets, styles: table, spills, conditionalFormats, tables, names, extras, activeSheet }
}
