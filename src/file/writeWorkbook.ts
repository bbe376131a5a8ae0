import type { WriteSheet } from 'hucre/xlsx'
import type { NamedRange, TableDefinition } from 'hucre'
import { absoluteArea, areaOf, quotedPrefix } from '../../shared/cells'
import { withFreeNames } from '../sheets/namedCells'
import { firstCellOf, freeSheetName, ownName } from '../sheets/ownSheets'
import type { DocumentKind, SheetDescription } from '../sheets/sheet'
import { pageScale, printMargins } from '../sheets/pageBreaks'
import { validationsOf } from './sheetValidations'
import { conditionalRulesOf } from './sheetConditionalLooks'
import { writeWithCharts } from './fileCharts'
import { chartsOf } from './sheetCharts'
import { imagesOf } from './sheetImages'
import { sheetCells } from './sheetCells'

/** A width in characters with the padding that a file counts and people do not (ECMA-376 part 1, 18.3.1.13). */
export function fileWidth(characters: number): number {
  return Math.trunc(((characters * 7 + 5) / 7) * 256) / 256
}

function tablesOf(description: SheetDescription, taken: Set<string>): TableDefinition[] {
  return description.tables.map(({ name, area }) => {
    let free = name
    for (let number = 2; taken.has(free); number++) free = `${name}_${String(number)}`
    taken.add(free)
    const headers = description.rows[area.row]?.slice(area.column, area.column + area.columns) ?? []
    return {
      name: free,
      range: areaOf(area),
      columns: headers.map((header) => ({ name: String(header) })),
      style: 'TableStyleLight1',
      showRowStripes: false,
      showAutoFilter: true
    }
  })
}

/** In inches; header and footer stand where Excel puts them by itself. */
const margins = {
  left: printMargins.beside / 72,
  right: printMargins.beside / 72,
  top: printMargins.above / 72,
  bottom: printMargins.above / 72,
  header: 0.3,
  footer: 0.3
}

async function sheetOf(
  description: SheetDescription,
  name: string,
  tables: TableDefinition[]
): Promise<WriteSheet> {
  const { page, freezeRows, freezeColumns, widths, heights } = description
  const rowDefs = new Map<number, { height: number }>()
  for (const { row, rows, points } of heights)
    for (let index = row; index < row + rows; index++) rowDefs.set(index, { height: points })
  const { rows, columnStyles, cells } = sheetCells(description)
  return {
    name,
    rows,
    cells,
    columns: widths.map((width, column) => ({ width: fileWidth(width), style: columnStyles[column] })),
    rowDefs,
    tables,
    ...(description.pictures === undefined ? {} : { images: await imagesOf(description.pictures) }),
    ...(description.charts === undefined ? {} : { charts: chartsOf(description, name) }),
    ...(description.rules === undefined ? {} : { dataValidations: validationsOf(description) }),
    ...(description.conditionalLooks === undefined
      ? {}
      : { conditionalRules: conditionalRulesOf(description) }),
    ...(freezeRows + freezeColumns > 0 ? { freezePane: { rows: freezeRows, columns: freezeColumns } } : {}),
    view: { showGridLines: false },
    pageSetup: {
      orientation: page.orientation,
      paperSize: page.paper,
      margins,
      ...(page.breaks?.length
        ? { scale: pageScale(page, widths) }
        : { fitToPage: true, fitToWidth: 1, fitToHeight: 0 })
    },
    // The file names the row above a break.
    ...(page.breaks === undefined ? {} : { rowBreaks: page.breaks.map((row) => row - 1) }),
    headerFooter: { oddFooter: `&L${page.footer.replaceAll('&', '&&')}&RPage &P of &N` }
  }
}

/** The rows repeated on each page. Written as a name of its own because a sheet name with a space has to be quoted. */
function titleRows(description: SheetDescription, sheetName: string): NamedRange[] {
  const row = description.page.titleRow
  if (row === null) return []
  const range = `${quotedPrefix(sheetName)}$${String(row + 1)}:$${String(row + 1)}`
  return [{ name: '_xlnm.Print_Titles', range, scope: sheetName }]
}

/** What is printed: the columns described, however far a text runs over. A name of its own for the same reason. */
function printArea({ rows, widths, page }: SheetDescription, sheetName: string): NamedRange {
  const area = { row: 0, column: 0, rows: rows.length, columns: page.columns ?? widths.length }
  return { name: '_xlnm.Print_Area', range: quotedPrefix(sheetName) + absoluteArea(area), scope: sheetName }
}

/** The cells that formulas call by name. */
function namedCells({ names = [] }: SheetDescription, sheetName: string): NamedRange[] {
  return names.map(({ name, area }) => ({ name, range: quotedPrefix(sheetName) + absoluteArea(area) }))
}

/** An .xlsx workbook with a sheet for each description, the same in content as the spreadsheet add-in writes. */
export async function writeWorkbook(descriptions: readonly SheetDescription[]): Promise<Uint8Array> {
  const names: string[] = []
  const tableNames = new Set<string>()
  const counts = new Map<DocumentKind, number>()
  const sheets: WriteSheet[] = []
  const namedRanges: NamedRange[] = []
  for (const wanted of descriptions) {
    const taken = [...namedRanges.map((range) => range.name), ...tableNames]
    const description = withFreeNames(wanted, new Set(taken.map((each) => each.toLowerCase())))
    const name = freeSheetName(description.name, names)
    const number = (counts.get(description.kind) ?? 0) + 1
    counts.set(description.kind, number)
    names.push(name)
    sheets.push(await sheetOf(description, name, tablesOf(description, tableNames)))
    namedRanges.push({ name: ownName(description.kind, number), range: firstCellOf(name) })
    namedRanges.push(
      printArea(description, name),
      ...titleRows(description, name),
      ...namedCells(description, name)
    )
  }
  return writeWithCharts({ sheets, namedRanges, defaultFont: { name: 'Calibri', size: 11 } })
}
