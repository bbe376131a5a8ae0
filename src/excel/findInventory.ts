import { areaOf, sharedPart, sheetPrefix } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { viewBook, type BookView, type SheetArea } from './bookView'
import { judgeSelection, judgeSheets, type Judge, type JudgedSheet } from './judgeSheets'
import { addressOf, takeApart } from './sheetAddresses'

/** A part of a sheet to read. */
export interface FoundPlace extends SheetArea {
  readonly hidden: boolean
  /** Its first rows show that it holds an inventory; otherwise it is looked through. */
  readonly certain: boolean
}

/** Where the inventory stands that a press of the button means. */
export interface FoundInventory {
  /** What is to be read, sheet by sheet. */
  readonly places: readonly FoundPlace[]
  /** The first rows of sheets of which nothing is read. */
  readonly others: readonly SheetCells[]
  /** The only range to read, where the selection names one; null where all of the inventory is meant. */
  readonly range: string | null
  /** How the selection was cut, as a sentence, or an empty text. */
  readonly remark: string
}

/** The selected cells themselves, and the inventory they stand for or why there is none. */
export interface FoundSelection {
  readonly cells: SheetArea | null
  readonly found: FoundInventory | Problem
}

const placeOf = ({ name, hidden, used, found }: JudgedSheet): FoundPlace => ({
  ...used,
  ...{ sheet: name, hidden, certain: found === 'table' }
})

/**
 * The sheets to read: visible ones with tables of an inventory, and those too long to tell; hidden ones too where no visible
 * one is certain. Where nothing is found, the sheet that is looked at, so that the reading can say what is missing.
 */
function toRead(sheets: readonly JudgedSheet[], { selected }: BookView): readonly JudgedSheet[] {
  const likely = sheets.filter(({ found }) => found !== 'none')
  const visible = likely.filter(({ hidden }) => !hidden)
  if (visible.some(({ found }) => found === 'table')) return visible
  if (likely.length > 0) return likely
  const here = sheets.filter(({ name }) => name === selected?.sheet)
  return here.length > 0 ? here : sheets.filter((sheet) => !sheet.hidden)
}

/** What a known look at the sheets gives again while nothing has changed that an address shows. */
export class KnownSheets {
  private key = ''
  private judged: JudgedSheet[] = []

  async judge(context: Excel.RequestContext, view: BookView, judge: Judge): Promise<JudgedSheet[]> {
    const key = JSON.stringify(view.sheets)
    const known = this.key === key && this.judged.some(({ found }) => found === 'table')
    if (!known) [this.key, this.judged] = [key, await judgeSheets(context, view, judge)]
    return this.judged
  }
}

/** The selected range where it holds headers with rows below them, cut to what is filled. */
async function selectedRange(
  context: Excel.RequestContext,
  { sheets, selected }: BookView,
  judge: Judge
): Promise<FoundInventory | null> {
  const sheet = sheets.find(({ name }) => name === selected?.sheet)
  if (selected === null || sheet === undefined) return null
  const area = sharedPart(selected, sheet.used)
  if (area === null || area.rows < 2) return null
  const place = { sheet: sheet.name, ...area }
  if ((await judgeSelection(context, place, judge)) !== 'rows') return null
  const range = addressOf(area, sheet.name)
  const cut = selected.rows * selected.columns > area.rows * area.columns
  const remark = `Only the ${cut ? 'filled part of the selection' : 'selected cells'}, ${range}, ${cut ? 'is' : 'are'} read.`
  return { places: [{ ...place, hidden: sheet.hidden, certain: true }], others: [], range, remark }
}

/** A sheet as one of which nothing is read: of a table no more than its first row, so that it is never read in part. */
function leftOut({ found, head }: JudgedSheet): SheetCells {
  return found === 'none' ? head : { ...head, rows: head.rows.slice(0, 1) }
}

async function inBook(
  context: Excel.RequestContext,
  view: BookView,
  judge: Judge,
  known: KnownSheets
): Promise<FoundInventory | Problem> {
  if (view.sheets.length === 0) return problem('empty-selection', '')
  const sheets = await known.judge(context, view, judge)
  const read = toRead(sheets, view)
  if (read.length === 0) return problem('empty-selection', '')
  return {
    places: read.map(placeOf),
    others: sheets.filter((sheet) => !read.includes(sheet)).map(leftOut),
    range: null,
    remark: ''
  }
}

/**
 * The inventory that the selection means. A selection that holds headers with rows below them is read alone; any other
 * cell, wherever it stands, means the inventory of the workbook. Addresses and some 200 rows are read for that.
 */
export async function findInventory(
  context: Excel.RequestContext,
  judge: Judge,
  known = new KnownSheets()
): Promise<FoundSelection> {
  const view = await viewBook(context)
  const cells = view.selected
  if (view.areaCount > 1) return { cells, found: problem('several-areas', '', { count: view.areaCount }) }
  const range = await selectedRange(context, view, judge)
  return { cells, found: range ?? (await inBook(context, view, judge, known)) }
}

/** All of the inventory of the workbook, whatever is selected. */
export async function findWholeInventory(
  context: Excel.RequestContext,
  judge: Judge
): Promise<FoundInventory | Problem> {
  return inBook(context, await viewBook(context), judge, new KnownSheets())
}

/** The inventory in a range that was read before. */
export async function findRange(
  context: Excel.RequestContext,
  address: string
): Promise<FoundInventory | Problem> {
  const place = takeApart(address)
  if (place === null) return problem('address-gone', address)
  const sheet = context.workbook.worksheets.getItemOrNullObject(place.sheet)
  sheet.load('visibility')
  await context.sync()
  if (sheet.isNullObject) return problem('address-gone', address)
  const range = sheet.getRange(place.cells)
  range.load('rowIndex,columnIndex,rowCount,columnCount')
  await context.sync()
  const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range
  const area = { sheet: place.sheet, row, column, rows, columns }
  const hidden = String(sheet.visibility) !== 'Visible'
  return { places: [{ ...area, hidden, certain: true }], others: [], range: address, remark: '' }
}

/** The address of a place with its sheet, as a person reads it. */
export function placeAddress(place: SheetArea): string {
  return sheetPrefix(place.sheet) + areaOf(place)
}
