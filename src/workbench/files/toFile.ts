/** The contents of the grid as an .xlsx: values with their formulas, looks, tables, rules, names and what was kept. */
import { quotedPrefix } from '../../../shared/cells'
import type { IWorksheetData } from '@univerjs/core'
import type {
  DataValidation,
  NamedRange,
  RowDef,
  SheetImage,
  TableDefinition,
  WriteOptions,
  WriteSheet
} from 'hucre'
import type { Picture } from '../book'
import { plainExtras } from '../grid/extras'
import { areaAddress } from '../host/a1Notation'
import { fileColor } from './cellStyle'
import { writeConditionalFormats } from './conditionalRules'
import { writeCharts } from './chartsInFile'
import type { BookContents } from './contents'
import { toFileFormula } from './formulaNames'
import { fileValue, styleReader, writeCells } from './cellsToFile'
import { writeFooter, writePage } from './pageSetup'
import { writeValidation } from './validationRules'

type StyleReader = ReturnType<typeof styleReader>

function rowDefs(sheet: Partial<IWorksheetData>): Map<number, RowDef> {
  const rows = new Map<number, RowDef>()
  for (const [row, data] of Object.entries(sheet.rowData ?? {})) {
    const def: RowDef = {}
    // The grid leaves out a height that is its default, though somebody chose it.
    if (data?.ia === 0) def.height = ((data.h ?? sheet.defaultRowHeight ?? 20) * 72) / 96
    if (data?.hd === 1) def.hidden = true
    if (Object.keys(def).length > 0) rows.set(Number(row), def)
  }
  return rows
}

function columnsOf(sheet: Partial<IWorksheetData>, styleOf: StyleReader): WriteSheet['columns'] {
  const data = sheet.columnData ?? {}
  const last = Math.max(-1, ...Object.keys(data).map(Number))
  return Array.from({ length: last + 1 }, (_, index) => {
    const column = data[index]
    const style = styleOf(column?.s)
    return {
      ...(style ? { style } : {}),
      ...(column?.w === undefined ? {} : { width: column.w / 7 }),
      ...(column?.hd === 1 ? { hidden: true } : {})
    }
  })
}

/**
 * The cells between which a picture stands. A file of this library has no places within a cell, so that a picture
 * moves to the nearest corners.
 */
function anchorOf(sheet: Partial<IWorksheetData>, picture: Picture): SheetImage['anchor'] {
  const nearest = (points: number, size: (index: number) => number) => {
    let index = 0
    let rest = (points * 96) / 72
    for (; rest >= size(index) / 2 && index < 20000; index++) rest -= size(index)
    return index
  }
  const row = (points: number) =>
    nearest(points, (index) => sheet.rowData?.[index]?.h ?? sheet.defaultRowHeight ?? 20)
  const col = (points: number) =>
    nearest(points, (index) => sheet.columnData?.[index]?.w ?? sheet.defaultColumnWidth ?? 64)
  const from = { row: row(picture.top), col: col(picture.left) }
  return {
    from,
    to: {
      row: Math.max(from.row + 1, row(picture.top + picture.height)),
      col: Math.max(from.col + 1, col(picture.left + picture.width))
    }
  }
}

function imageOf(sheet: Partial<IWorksheetData>, picture: Picture): SheetImage {
  return {
    data: Uint8Array.from(atob(picture.image), (letter) => letter.charCodeAt(0)),
    type: 'png',
    anchor: anchorOf(sheet, picture),
    width: Math.round((picture.width * 96) / 72),
    height: Math.round((picture.height * 96) / 72),
    altText: picture.alt
  }
}

/** A table's column names are the texts of its header cells; a file whose two disagree is repaired by Excel. */
function tablesOf(sheet: Partial<IWorksheetData>, contents: BookContents): TableDefinition[] {
  return contents.tables
    .filter((table) => table.sheetId === sheet.id)
    .map(({ name, area, style, showFilter, banded }) => ({
      name,
      range: areaAddress(area),
      columns: Array.from({ length: area.columns }, (_, index) => {
        const header = sheet.cellData?.[area.row]?.[area.column + index]
        return { name: String((header && fileValue(header)) ?? `Column${index + 1}`) }
      }),
      style,
      showAutoFilter: showFilter,
      showRowStripes: banded
    }))
}

function fileSheet(sheet: Partial<IWorksheetData>, contents: BookContents, styleOf: StyleReader): WriteSheet {
  const { page, pictures, charts, validations, kept } =
    contents.extras.sheets.get(sheet.id ?? '') ?? plainExtras()
  const allCharts = [...(kept.charts ?? []), ...writeCharts(charts, sheet)]
  const rules = validations.map(writeValidation).filter((rule): rule is DataValidation => rule !== null)
  const conditional = writeConditionalFormats(
    contents.conditionalFormats.get(sheet.id ?? '') ?? [],
    kept.conditionalRules
  )
  const freeze = { rows: sheet.freeze?.ySplit ?? 0, columns: sheet.freeze?.xSplit ?? 0 }
  const tabColor = fileColor(sheet.tabColor)
  const images = [...(kept.images ?? []), ...pictures.map((picture) => imageOf(sheet, picture))]
  const headerFooter = writeFooter(page, kept.headerFooter)
  return {
    ...kept,
    name: sheet.name ?? '',
    cells: writeCells(sheet.cellData ?? {}, contents.spills.get(sheet.id ?? '') ?? [], styleOf),
    columns: columnsOf(sheet, styleOf),
    rowDefs: rowDefs(sheet),
    merges: (sheet.mergeData ?? []).map(({ startRow, endRow, startColumn, endColumn }) => ({
      startRow,
      endRow,
      startCol: startColumn,
      endCol: endColumn
    })),
    tables: tablesOf(sheet, contents),
    dataValidations: [...(kept.dataValidations ?? []), ...rules],
    ...(conditional.length > 0 ? { conditionalRules: conditional } : {}),
    ...(freeze.rows + freeze.columns > 0 ? { freezePane: freeze } : {}),
    ...(images.length > 0 ? { images } : {}),
    ...(allCharts.length > 0 ? { charts: allCharts } : {}),
    ...(headerFooter ? { headerFooter } : {}),
    pageSetup: writePage(page, kept.pageSetup),
    // The file names the row above a break.
    ...(page.breaks ? { rowBreaks: page.breaks.map((row) => row - 1) } : {}),
    view: { showGridLines: sheet.showGridlines !== 0, ...(tabColor ? { tabColor } : {}) },
    ...(sheet.hidden === 1 ? { hidden: true } : {})
  }
}

/** Title rows and print area stand in the file as names of the sheet, its own name quoted. */
function printNames(contents: BookContents): NamedRange[] {
  return contents.sheets.flatMap((sheet) => {
    const { titleRows, printArea } = contents.extras.sheets.get(sheet.id ?? '')?.page ?? {}
    const named = (name: string, address: string | null | undefined): NamedRange[] => {
      if (!address) return []
      const corners = address.replaceAll('$', '').split(':')
      const [from = '', to = from] = corners.map((corner) => corner.replace(/[A-Z]+|\d+/g, '$$$&'))
      const range = `${quotedPrefix(sheet.name ?? '')}${from}:${to}`
      return [{ name, range, scope: sheet.name }]
    }
    return [...named('_xlnm.Print_Area', printArea), ...named('_xlnm.Print_Titles', titleRows)]
  })
}

export function toFile(contents: BookContents): WriteOptions {
  const names = contents.names.map(({ name, formula }) => ({ name, range: toFileFormula(formula) }))
  const styleOf = styleReader(contents.styles)
  const { properties, scopedNames = [] } = contents.extras.kept
  const there = new Set(contents.sheets.map((sheet) => sheet.name))
  const scoped = scopedNames.filter(({ scope }) => scope !== undefined && there.has(scope))
  const active = contents.sheets.findIndex((sheet) => sheet.id === contents.activeSheet)
  return {
    sheets: contents.sheets.map((sheet) => fileSheet(sheet, contents, styleOf)),
    namedRanges: [...names, ...scoped, ...printNames(contents)],
    ...(properties ? { properties } : {}),
    defaultFont: { name: 'Calibri', size: 11 },
    activeSheet: Math.max(0, active)
  }
}
