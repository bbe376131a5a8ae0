import { type Area, isBlank, sharedPart } from '../../shared/cells'
import { looksLikeHeaders } from '../inventory/headers'
import { problem, type Problem } from '../../shared/problems'
import { readOwnName } from '../sheets/ownSheets'
import { addressOf, takeApart } from './sheetAddresses'
import { surroundingBlock } from './surroundingBlock'

/** Up to so many cells a sheet is looked through to find the block around one cell; beyond, its filled part is taken. */
const searchedCells = 100_000

/** The block that a selection stands for. */
export interface FoundBlock {
  sheet: string
  area: Area
  address: string
  /** What was done to the selection to get there, as a sentence, or an empty text. */
  remark: string
}

function areaOf(range: Excel.Range): Area {
  return {
    row: range.rowIndex,
    column: range.columnIndex,
    rows: range.rowCount,
    columns: range.columnCount
  }
}

const measures = 'rowIndex,columnIndex,rowCount,columnCount'

type Values = (string | number | boolean)[][]

/**
 * The block around one cell, within a sheet's filled part. Where a blank row parts the cell from the headers above it,
 * the block begins at those headers and goes to the end of what is filled.
 */
function blockAround(values: Values, cell: { row: number; column: number }): Area | null {
  const rows = values.length
  const columns = values[0]?.length ?? 0
  const filled = (row: number, column: number) => !isBlank(values[row]?.[column])
  const within = { row: 0, column: 0, rows, columns }
  const found = sharedPart(surroundingBlock(filled, rows, columns, cell), within)
  if (found === null || found.rows * found.columns <= 1) return null
  if (looksLikeHeaders(values[found.row] ?? [])) return found
  for (let row = found.row - 1; row >= 0; row--)
    if (looksLikeHeaders(values[row] ?? [])) return { row, column: 0, rows: rows - row, columns }
  return found
}

async function around(context: Excel.RequestContext, used: Excel.Range, cell: Area): Promise<Area | null> {
  const whole = areaOf(used)
  if (whole.rows * whole.columns > searchedCells) return whole
  used.load('values')
  await context.sync()
  const start = { row: cell.row - whole.row, column: cell.column - whole.column }
  const beside = { row: -1, column: -1, rows: whole.rows + 2, columns: whole.columns + 2 }
  if (sharedPart({ ...start, rows: 1, columns: 1 }, beside) === null) return null
  const block = blockAround(used.values as Values, start)
  return block && { ...block, row: block.row + whole.row, column: block.column + whole.column }
}

function widenedRemark(address: string, block: Area, used: Area): string {
  const taken = `One cell was selected, so the block of cells around it, ${address}, is taken.`
  const more = block.rows < used.rows || block.columns < used.columns
  return more ? `${taken} There is more on this sheet; select it all if it belongs to the inventory.` : taken
}

/** The selected cells themselves, and the block they stand for or why there is none. */
export interface FoundSelection {
  cells: (Area & { sheet: string }) | null
  block: FoundBlock | Problem
}

/**
 * The block of cells that the selection means: whole columns and rows are cut to the part that is filled, and one cell
 * alone is widened to the block of cells around it.
 */
export async function findSelectedBlock(context: Excel.RequestContext): Promise<FoundSelection> {
  const ranges = context.workbook.getSelectedRanges()
  ranges.load('areaCount')
  const range = ranges.areas.getItemAt(0)
  range.load(measures)
  const sheet = range.worksheet
  sheet.load('name')
  const used = sheet.getUsedRangeOrNullObject(true)
  used.load(measures)
  const names = context.workbook.names
  names.load('items/name,items/formula')
  await context.sync()

  if (ranges.areaCount > 1)
    return { cells: null, block: problem('several-areas', '', { count: ranges.areaCount }) }
  const selected = areaOf(range)
  const cells = { sheet: sheet.name, ...selected }
  const own = names.items.some(
    (item) => readOwnName(item.name, String(item.formula))?.sheetName === sheet.name
  )
  if (own) return { cells, block: problem('own-sheet', '', { cell: sheet.name }) }
  if (used.isNullObject) return { cells, block: problem('empty-selection', '') }
  return { cells, block: await blockFor(context, sheet.name, selected, used) }
}

async function blockFor(
  context: Excel.RequestContext,
  sheet: string,
  selected: Area,
  used: Excel.Range
): Promise<FoundBlock | Problem> {
  const whole = areaOf(used)
  const single = selected.rows * selected.columns === 1
  const area = single ? await around(context, used, selected) : sharedPart(selected, whole)
  if (area === null) return problem('empty-selection', addressOf(selected, sheet))
  const address = addressOf(area, sheet)
  const cut = selected.rows * selected.columns > area.rows * area.columns
  const remark = single
    ? widenedRemark(address, area, whole)
    : cut
      ? `Only the filled part of the selection, ${address}, is taken.`
      : ''
  return { sheet, area, address, remark }
}

/** The block at an address that was read before, without looking at the selection. */
export async function findBlockAt(
  context: Excel.RequestContext,
  address: string
): Promise<FoundBlock | Problem> {
  const place = takeApart(address)
  if (place === null) return problem('address-gone', address)
  const sheet = context.workbook.worksheets.getItemOrNullObject(place.sheet)
  await context.sync()
  if (sheet.isNullObject) return problem('address-gone', address)
  const range = sheet.getRange(place.cells)
  range.load(measures)
  await context.sync()
  return { sheet: place.sheet, area: areaOf(range), address, remark: '' }
}
