/** An opened .xlsx as the contents of the grid. What the grid has no place for is kept and goes back into the file. */
import type { IWorksheetData } from '@univerjs/core'
import type { Sheet, Workbook } from 'hucre'
import { readOwnName } from '../../sheets/ownSheets'
import type { NameInfo, TableInfo } from '../book'
import { noExtras, type Extras, type SheetExtras } from '../grid/extras'
import { parseAddress } from '../host/a1Notation'
import { isKept, readCharts } from './chartsInFile'
import type { BookContents } from './contents'
import { isLost, readConditionalFormats, withoutShown } from './conditionalRules'
import { readCells, Styles } from './cellsFromFile'
import { fromFileFormula } from './formulaNames'
import { readPage } from './pageSetup'
import { readValidation } from './validationRules'

/** Rows and columns that stay free below and beside what the file holds. */
const spareRows = 60
const spareColumns = 6

/** A width in characters of the standard font is seven pixels a character, padding included. */
const pixelsOf = (width: number) => Math.round(width * 7)

function columnsOf(sheet: Sheet, styles: Styles): IWorksheetData['columnData'] {
  const found: IWorksheetData['columnData'] = {}
  sheet.columns?.forEach(({ width, hidden, style }, index) => {
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

function rowsOf(sheet: Sheet): IWorksheetData['rowData'] {
  const found: IWorksheetData['rowData'] = {}
  for (const [row, { height, hidden }] of sheet.rowDefs ?? [])
    if (height !== undefined || hidden)
      found[row] = {
        ...(height === undefined ? {} : { h: Math.round((height * 96) / 72), ia: 0 }),
        ...(hidden ? { hd: 1 } : {})
      }
  return found
}

function gridSheet(sheet: Sheet, id: string, styles: Styles): Partial<IWorksheetData> {
  const { freezePane, view } = sheet
  const rows = freezePane?.rows ?? 0
  const columns = freezePane?.columns ?? 0
  const widest = sheet.rows.reduce((most, row) => Math.max(most, row.length), sheet.columns?.length ?? 0)
  return {
    id,
    name: sheet.name,
    hidden: sheet.hidden || sheet.veryHidden ? 1 : 0,
    rowCount: Math.max(100, sheet.rows.length + spareRows),
    columnCount: Math.max(26, widest + spareColumns),
    cellData: readCells(sheet, styles) as IWorksheetData['cellData'],
    columnData: columnsOf(sheet, styles),
    rowData: rowsOf(sheet),
    mergeData: (sheet.merges ?? []).map(({ startRow, endRow, startCol, endCol }) => ({
      startRow,
      endRow,
      startColumn: startCol,
      endColumn: endCol
    })),
    freeze: { startRow: rows || -1, startColumn: columns || -1, ySplit: rows, xSplit: columns },
    showGridlines: view?.showGridLines === false ? 0 : 1,
    tabColor: view?.tabColor?.rgb ? `#${view.tabColor.rgb.slice(-6)}` : ''
  }
}

function extrasOf(sheet: Sheet, sheetId: string): SheetExtras {
  const rules = sheet.dataValidations ?? []
  const { images, protection, rowBreaks, colBreaks, sparklines, textBoxes } = sheet
  const conditionalRules = withoutShown(sheet.conditionalRules)
  const { backgroundImage, outlineProperties, pageSetup, headerFooter, a11y } = sheet
  const kept = { conditionalRules, images, protection, rowBreaks, colBreaks, sparklines, textBoxes }
  const more = { backgroundImage, outlineProperties, pageSetup, headerFooter, a11y }
  const unknown = rules.filter((rule) => readValidation(rule).length === 0)
  const { charts, kept: copied } = readCharts(sheet, sheetId)
  const tabled = (sheet.tables ?? []).length > 0
  const all = {
    ...kept,
    ...more,
    ...(copied.length > 0 ? { charts: copied } : {}),
    ...(unknown.length > 0 ? { dataValidations: unknown } : {}),
    ...(tabled ? {} : { autoFilter: sheet.autoFilter })
  }
  return {
    page: {
      ...readPage(pageSetup, headerFooter),
      ...(sheet.rowBreaks ? { breaks: sheet.rowBreaks.map((row) => row + 1) } : {})
    },
    pictures: [],
    charts,
    validations: rules.flatMap(readValidation),
    protected: protection !== undefined,
    kept: Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined))
  }
}

function tablesOf(sheet: Sheet, sheetId: string, extras: Extras): TableInfo[] {
  return (sheet.tables ?? []).flatMap((table, index) => {
    const area = parseAddress(table.range ?? '')?.area
    if (!area) return []
    const id = `${sheetId}-table${index + 1}`
    const looks = {
      style: table.style ?? 'TableStyleMedium2',
      showFilter: table.showAutoFilter !== false,
      banded: table.showRowStripes !== false
    }
    extras.tables.set(id, looks)
    return [{ id, name: table.displayName ?? table.name, sheetId, area, ...looks }]
  })
}

/** Parts of a file that are lost when the workbench saves it, in words for the user. */
export function notKept(workbook: Workbook): string[] {
  const has = (part: keyof Sheet) =>
    workbook.sheets.some((sheet) => Array.isArray(sheet[part]) && (sheet[part] as unknown[]).length > 0)
  return [
    workbook.sheets.some(({ conditionalRules = [] }) => conditionalRules.some(isLost))
      ? 'conditional formats by rank or average'
      : '',
    workbook.sheets.some(({ charts = [] }) => !charts.every(isKept)) ? 'charts of a rarer kind' : '',
    has('pivotTables') ? 'pivot tables' : '',
    has('slicers') || has('timelines') ? 'slicers' : '',
    has('threadedComments') ? 'threaded comments' : ''
  ].filter((part) => part !== '')
}

export function fromFile(workbook: Workbook, name: string): BookContents {
  const styles = new Styles()
  const extras = noExtras()
  const ids = workbook.sheets.map((_, index) => `sheet${index + 1}`)
  const sheets = workbook.sheets.map((sheet, index) => gridSheet(sheet, ids[index] ?? '', styles))
  const tables = workbook.sheets.flatMap((sheet, index) => tablesOf(sheet, ids[index] ?? '', extras))
  workbook.sheets.forEach((sheet, index) =>
    extras.sheets.set(ids[index] ?? '', extrasOf(sheet, ids[index] ?? ''))
  )
  const conditionalFormats = new Map(
    workbook.sheets.map((sheet, index) => [ids[index] ?? '', readConditionalFormats(sheet.conditionalRules)])
  )
  const names: NameInfo[] = (workbook.namedRanges ?? [])
    .filter(({ name, scope }) => !name.startsWith('_xlnm.') && scope === undefined)
    .map(({ name, range }) => ({
      name,
      formula: fromFileFormula(range),
      visible: readOwnName(name, range) === null
    }))
  extras.kept = {
    properties: workbook.properties,
    scopedNames: (workbook.namedRanges ?? []).filter(
      ({ name, scope }) => !name.startsWith('_xlnm.') && scope !== undefined
    )
  }
  const activeSheet = ids[workbook.activeSheet ?? 0] ?? ids[0] ?? ''
  const { table } = styles
  const spills = new Map()
  return { name, sheets, styles: table, spills, conditionalFormats, tables, names, extras, activeSheet }
}
