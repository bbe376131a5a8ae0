import type { Cell } from '../../shared/cells'
import { sharedPart } from '../../shared/cells'
import type { SheetCells } from '../inventory/survey/sheetCells'
import type { BookView, FilledSheet, SheetArea } from './bookView'
import { readFew } from './readCells'

/** What rows of a sheet show of an inventory: nothing, headers, or headers with rows below them. */
export type Shows = 'nothing' | 'headers' | 'rows'

/** Tells what the rows of a sheet show, as the reader of inventories sees them. */
export type Judge = (sheet: SheetCells) => Shows

/** Rows that are read at most before it is known what to read; of a selection, of all heads, and around the selected cell. */
export const looked = { selection: 40, heads: 120, around: 40 } as const

/** Rows of a head at most, and from how many on it is certain that a sheet without headers in it has none. */
const head = { most: 40, certain: 25, least: 3 } as const

/** Columns of these rows that are looked at. */
const mostColumns = 256

/** How the rows of a sheet were found; "unknown" where too few of them could be looked at. */
export type Found = 'table' | 'none' | 'unknown'

export interface JudgedSheet extends FilledSheet {
  readonly found: Found
  /** The rows that were looked at, for the sentence about sheets that were left out. */
  readonly head: SheetCells
}

function asSheet(area: SheetArea, rows: Cell[][], hidden: boolean): SheetCells {
  return { name: area.sheet, rows, top: area.row, left: area.column, hidden }
}

const narrow = (area: SheetArea): SheetArea => ({ ...area, columns: Math.min(area.columns, mostColumns) })

/** What the first rows of a selection of several cells show. */
export async function judgeSelection(
  context: Excel.RequestContext,
  area: SheetArea,
  judge: Judge
): Promise<Shows> {
  const first = narrow({ ...area, rows: Math.min(area.rows, looked.selection) })
  const [rows = []] = await readFew(context, [first])
  return judge(asSheet(first, rows, false))
}

/** The sheets in the order in which they are looked at: the selected one, visible ones, hidden ones. */
function inTurn({ sheets, selected }: BookView): FilledSheet[] {
  const rank = ({ name, hidden }: FilledSheet): number => (name === selected?.sheet ? 0 : hidden ? 2 : 1)
  return [...sheets].sort((a, b) => rank(a) - rank(b))
}

/** Rows of a sheet worth looking at: one column is no table, and is only looked at to tell that it was left out. */
const wanted = ({ used }: FilledSheet): number => (used.columns < 2 ? 1 : Math.min(used.rows, head.most))

/** Rows of each sheet to look at: all that is wanted of short ones, and of the others as many as there are rows for. */
function headsOf(sheets: readonly FilledSheet[], budget: number): SheetArea[] {
  let most: number = head.most
  const sum = (): number => sheets.reduce((total, sheet) => total + Math.min(wanted(sheet), most), 0)
  while (most > head.least && sum() > budget) most--
  let left = budget
  return sheets.map((sheet) => {
    const rows = Math.min(wanted(sheet), most, left)
    left -= rows
    return narrow({ sheet: sheet.name, ...sheet.used, rows })
  })
}

/** The rows around the selected cell that the head of its sheet does not reach, or null. */
function aroundSelection(
  { selected }: BookView,
  { name, used }: FilledSheet,
  read: number
): SheetArea | null {
  if (selected?.sheet !== name || used.rows <= read) return null
  const above = Math.floor(looked.around * 0.75)
  const from = Math.max(used.row + read, Math.min(selected.row, used.row + used.rows - 1) - above)
  const part = sharedPart(used, { ...used, row: from, rows: looked.around })
  return part === null ? null : narrow({ sheet: name, ...part })
}

/** Looks at a few rows of every sheet, and around the selected cell, to tell which sheets hold tables of an inventory. */
export async function judgeSheets(
  context: Excel.RequestContext,
  view: BookView,
  judge: Judge
): Promise<JudgedSheet[]> {
  const sheets = inTurn(view)
  const single = view.selected === null || view.selected.rows === 1
  const areas = headsOf(sheets, looked.heads + (single ? looked.selection : 0))
  const read = areas.filter(({ rows }) => rows > 0)
  const heads = await readFew(context, read)
  const judged = sheets.map((sheet, at): JudgedSheet => {
    const area = areas[at] ?? { sheet: sheet.name, ...sheet.used, rows: 0 }
    const cells = asSheet(area, heads[read.indexOf(area)] ?? [], sheet.hidden)
    const certain = sheet.used.columns < 2 || area.rows >= Math.min(sheet.used.rows, head.certain)
    const found = judge(cells) !== 'nothing' ? 'table' : certain ? 'none' : 'unknown'
    return { ...sheet, found, head: cells }
  })
  const [first] = judged
  const around =
    first && first.found !== 'table' ? aroundSelection(view, first, first.head.rows.length) : null
  if (first !== undefined && around !== null) {
    const [rows = []] = await readFew(context, [around])
    if (judge(asSheet(around, rows, first.hidden)) !== 'nothing') judged[0] = { ...first, found: 'table' }
  }
  const order = new Map(view.sheets.map(({ name }, at) => [name, at]))
  return judged.sort((a, b) => (order.get(a.name) ?? 0) - (order.get(b.name) ?? 0))
}
