/** The contents of the grid as an .xlsx: values with their formulas, looks, tables, rules, names and what was kept. */
import type { IWorksheetData } from '@univerjs/core'
import type { Area } from '../../../shared/cells'
import { fromBase64 } from '../../../shared/pictures/base64'
import type {
  BookSheet,
  FileBook,
  FileColumn,
  FilePicture,
  FileRow,
  FileTable
} from '../../file/file-library/fileBook'
import type { Picture } from '../book'
import { plainExtras } from '../grid/extras'
import { toArea } from '../grid/ranges'
import { fileColor } from './cellStyle'
import { fileValue, styleReader, writeCells } from './cellsToFile'
import { writeCharts } from './chartsInFile'
import { writeConditionalFormats } from './conditionalRules'
import type { BookContents } from './contents'
import { toFileFormula } from './formulaNames'
import { writeFooter, writePage } from './pageSetup'
import { writeValidation } from './validationRules'

type StyleReader = ReturnType<typeof styleReader>

function rowSizes(sheet: Partial<IWorksheetData>): Map<number, FileRow> {
  const rows = new Map<number, FileRow>()
  for (const [row, data] of Object.entries(sheet.rowData ?? {})) {
    const def: FileRow = {}
    // The grid leaves out a height that is its default, though somebody chose it.
    if (data?.ia === 0) def.height = ((data.h ?? sheet.defaultRowHeight ?? 20) * 72) / 96
    if (data?.hd === 1) def.hidden = true
    if (Object.keys(def).length > 0) rows.set(Number(row), def)
  }
  return rows
}

function columnsOf(sheet: Partial<IWorksheetData>, styleOf: StyleReader): FileColumn[] {
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

/** The cells that a picture fills. A file has no places within a cell, so that a picture moves to the nearest corners. */
function areaUnder(sheet: Partial<IWorksheetData>, picture: Picture): Area {
  const nearest = (points: number, size: (index: number) => number) => {
    let index = 0
    let rest = (points * 96) / 72
    for (; rest >= size(index) / 2 && index < 20000; index++) rest -= size(index)
    return index
  }
  const row = (points: number) =>
    nearest(points, (index) => sheet.rowData?.[index]?.h ?? sheet.defaultRowHeight ?? 20)
  const column = (points: number) =>
    nearest(points, (index) => sheet.columnData?.[index]?.w ?? sheet.defaultColumnWidth ?? 64)
  const from = { row: row(picture.top), column: column(picture.left) }
  return {
    ...from,
    rows: Math.max(1, row(picture.top + picture.height) - from.row),
    columns: Math.max(1, column(picture.left + picture.width) - from.column)
  }
}

function pictureOf(sheet: Partial<IWorksheetData>, picture: Picture): FilePicture {
  return {
    bytes: fromBase64(picture.image),
    kind: 'png',
    area: areaUnder(sheet, picture),
    width: Math.round((picture.width * 96) / 72),
    height: Math.round((picture.height * 96) / 72),
    alt: picture.alt
  }
}

/** A table's column names are the texts of its header cells; a file whose two disagree is repaired by Excel. */
function tablesOf(sheet: Partial<IWorksheetData>, contents: BookContents): FileTable[] {
  return contents.tables
    .filter((table) => table.sheetId === sheet.id)
    .map(({ name, area, style, showFilter, banded }) => ({
      name,
      area,
      columns: Array.from({ length: area.columns }, (_, index) => {
        const header = sheet.cellData?.[area.row]?.[area.column + index]
        return String((header && fileValue(header)) ?? `Column${index + 1}`)
      }),
      style,
      filter: showFilter,
      banded
    }))
}

function fileSheet(sheet: Partial<IWorksheetData>, contents: BookContents, styleOf: StyleReader): BookSheet {
  const id = sheet.id ?? ''
  const { page, pictures, charts, validations, kept } = contents.extras.sheets.get(id) ?? plainExtras()
  return {
    name: sheet.name ?? '',
    hidden: sheet.hidden === 1,
    cells: writeCells(sheet.cellData ?? {}, contents.spills.get(id) ?? [], styleOf),
    columns: columnsOf(sheet, styleOf),
    rowSizes: rowSizes(sheet),
    merged: (sheet.mergeData ?? []).map(toArea),
    tables: tablesOf(sheet, contents),
    validations: validations.map(writeValidation).filter((rule) => rule !== null),
    formulaLooks: writeConditionalFormats(contents.conditionalFormats.get(id) ?? []),
    pictures: pictures.map((picture) => pictureOf(sheet, picture)),
    charts: writeCharts(charts, sheet),
    freeze: { rows: sheet.freeze?.ySplit ?? 0, columns: sheet.freeze?.xSplit ?? 0 },
    gridlines: sheet.showGridlines !== 0,
    tabColor: fileColor(sheet.tabColor),
    page: writePage(page),
    breaks: page.breaks,
    footer: writeFooter(page),
    kept
  }
}

export function toFile(contents: BookContents): FileBook {
  const names = contents.names.map(({ name, formula }) => ({ name, range: toFileFormula(formula) }))
  const styleOf = styleReader(contents.styles)
  const { properties, scopedNames = [] } = contents.extras.kept
  const there = new Set(contents.sheets.map((sheet) => sheet.name))
  const scoped = scopedNames.filter(({ scope }) => scope !== undefined && there.has(scope))
  const active = contents.sheets.findIndex((sheet) => sheet.id === contents.activeSheet)
  return {
    sheets: contents.sheets.map((sheet) => fileSheet(sheet, contents, styleOf)),
    names: [...names, ...scoped],
    properties,
    settings: new Map(
      [...contents.extras.settings].flatMap(([key, value]) =>
        typeof value === 'string' ? [[key, value] as const] : []
      )
    ),
    activeSheet: Math.max(0, active)
  }
}
