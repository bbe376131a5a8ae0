import { absoluteArea, quotedPrefix, type Area } from '../../shared/cells'
import { footerParts } from '../sheets/footers'
import { withFreeNames } from '../sheets/namedCells'
import { firstCellOf, freeSheetName, inventoryName, ownName, usersSheets } from '../sheets/ownSheets'
import type { DocumentKind, SheetDescription } from '../sheets/sheet'
import { isScaled, marginsOf, pageScale } from '../sheets/pageBreaks'
import type { BookSheet, FileBook, FileName, FilePage, FilePicture, FileTable } from './file-library/fileBook'
import type { FileSettings } from './file-library/settingsPart'
import { packBook } from './file-library/packBook'
import { packInNode } from './file-library/packInNode'
import { sheetCells } from './sheetCells'
import { chartsOf } from './sheetCharts'
import { formulaLooksOf } from './sheetConditionalLooks'
import { imagesOf } from './sheetImages'
import { validationsOf } from './sheetValidations'

/** A width in characters with the padding that a file counts and people do not (ECMA-376 part 1, 18.3.1.13). */
export function fileWidth(characters: number): number {
  return Math.trunc(((characters * 7 + 5) / 7) * 256) / 256
}

function tablesOf(description: SheetDescription, taken: Set<string>): FileTable[] {
  return description.tables.map(({ name, area }) => {
    let free = name
    for (let number = 2; taken.has(free); number++) free = `${name}_${String(number)}`
    taken.add(free)
    const headers = description.rows[area.row]?.slice(area.column, area.column + area.columns) ?? []
    return {
      name: free,
      area,
      columns: headers.map(String),
      style: 'TableStyleLight1',
      banded: false,
      filter: true
    }
  })
}

/** In inches; header and footer stand where Excel puts them by itself. */
function fileMargins(page: SheetDescription['page']): FilePage['margins'] {
  const { beside, above, below } = marginsOf(page)
  return {
    left: beside / 72,
    right: beside / 72,
    top: above / 72,
    bottom: below / 72,
    header: 0.3,
    footer: 0.3
  }
}

/** The columns described are printed, however far a text runs over. */
function pageOf({ page, rows, widths, hidden }: SheetDescription): FilePage {
  const { orientation, paper, titleRow, columns = widths.length, centered } = page
  return {
    orientation,
    paperSize: paper,
    // Each document counts its own pages, also where the workbook is printed as one.
    firstPageNumber: 1,
    margins: fileMargins(page),
    ...(centered === undefined ? {} : { centered }),
    // LibreOffice prints a hidden sheet that has a print area, and none without one beside sheets that have.
    ...(hidden === true
      ? {}
      : { printArea: absoluteArea({ row: 0, column: 0, rows: page.rows ?? rows.length, columns }) }),
    ...(titleRow === null ? {} : { titleRows: `${String(titleRow + 1)}:${String(titleRow + 1)}` }),
    ...(isScaled(page) ? { scale: pageScale(page, widths) } : { fit: { width: 1, height: 0 } })
  }
}

async function sheetOf(
  description: SheetDescription,
  name: string
): Promise<Omit<BookSheet, 'tables' | 'mark'>> {
  const { page, hidden, freezeRows, freezeColumns, widths, heights, names = [], pictures = [] } = description
  const footer = footerParts(page.footer)
  const rowSizes = new Map<number, { height: number }>()
  for (const { row, rows, points } of heights)
    for (let index = row; index < row + rows; index++) rowSizes.set(index, { height: points })
  const { rows, looks, cells } = sheetCells(description)
  const named = (area: Area) => quotedPrefix(name) + absoluteArea(area)
  return {
    name,
    rows,
    looks,
    cells,
    columns: widths.map((width) => ({ width: fileWidth(width) })),
    rowSizes,
    pictures: await imagesOf(pictures),
    charts: chartsOf(description, name),
    validations: validationsOf(description),
    formulaLooks: formulaLooksOf(description),
    freeze: { rows: freezeRows, columns: freezeColumns },
    gridlines: false,
    ...(hidden === true ? { hidden } : {}),
    page: pageOf(description),
    breaks: page.breaks,
    footer: `&L${footer.left}&R${footer.right}`,
    names: names.map(({ name, area }) => ({ name, range: named(area) }))
  }
}

/** What a workbook holds beside what was described. */
export interface Beside {
  /** Sheets of the inventory, behind the documents and before the sheets that a person owns. */
  inventory?: readonly BookSheet[]
  /** Pictures on the sheet of a kind as they were found, beside those that are drawn. */
  pictures?: ReadonlyMap<DocumentKind, readonly FilePicture[]>
  /** What the add-in keeps in it. */
  settings?: FileSettings
  /** What the file is called and whose it is, as programs show it. */
  properties?: FileBook['properties']
}

/** The name that leads from a sheet of ours to the inventory. */
function leading(mark: FileName, [first]: readonly BookSheet[]): FileName[] {
  return first === undefined ? [] : [{ name: inventoryName(mark.name), range: firstCellOf(first.name) }]
}

/** An .xlsx workbook with a sheet for each description, the same in content as the spreadsheet add-in writes. */
export async function writeWorkbook(
  descriptions: readonly SheetDescription[],
  { inventory = [], pictures: found = new Map(), settings = new Map(), properties }: Beside = {}
): Promise<Uint8Array> {
  const tableNames = new Set<string>()
  const counts = new Map<DocumentKind, number>()
  const sheets: BookSheet[] = []
  const marks = descriptions.map(({ kind }, index) => ownName(kind, index + 1).toLowerCase())
  for (const description of withFreeNames(descriptions, new Set(marks))) {
    const name = freeSheetName(
      description.name,
      [...inventory, ...sheets].map((sheet) => sheet.name)
    )
    const number = (counts.get(description.kind) ?? 0) + 1
    counts.set(description.kind, number)
    const sheet = await sheetOf(description, name)
    const mark = { name: ownName(description.kind, number), range: firstCellOf(name) }
    const leads = description.kind === 'rules' || description.kind === 'rates' ? [] : leading(mark, inventory)
    sheets.push({
      ...sheet,
      pictures: [...(sheet.pictures ?? []), ...(found.get(description.kind) ?? [])],
      tables: tablesOf(description, tableNames),
      mark,
      names: [...(sheet.names ?? []), ...leads]
    })
  }
  const owned = descriptions.findIndex(({ kind }) => usersSheets.has(kind))
  sheets.splice(owned < 0 ? sheets.length : owned, 0, ...inventory)
  return packBook({ sheets, properties, ...(settings.size > 0 ? { settings } : {}) }, packInNode)
}
