import { problem, type Problem } from '../../shared/problems'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { inExcel, isProblem } from './failures'
import {
  findInventory,
  findRange,
  findWholeInventory,
  placeAddress,
  type FoundInventory,
  type FoundPlace
} from './findInventory'
import { hiddenLines } from './hiddenLines'
import type { Judge } from './judgeSheets'
import { mergesIn } from './mergesIn'
import { readCells, type Reading } from './readCells'

/** What to read: the inventory that the selection means, all of the workbook's, or a range such as Trees!A1:P64. */
export type Wanted = 'selection' | 'workbook' | { readonly range: string }

/** What was read; with a problem of level "stop" there are no sheets. */
export interface ReadSheets {
  readonly sheets: readonly SheetCells[]
  /** The only range that was read, or null where it was all of the inventory. */
  readonly range: string | null
  readonly problems: readonly Problem[]
}

async function readSheet(
  context: Excel.RequestContext,
  place: FoundPlace,
  reading: Reading,
  problems: Problem[]
): Promise<SheetCells> {
  const { sheet: name, row: top, column: left, hidden } = place
  const sheet = context.workbook.worksheets.getItem(name)
  const rows = await readCells(context, sheet, place, reading)
  const merges = await mergesIn(context, sheet, place)
  const hiddenRows = await hiddenLines(context, sheet, place, 'rows')
  if (hiddenRows === null) problems.push(problem('hidden-rows', placeAddress(place)))
  const hiddenColumns = await hiddenLines(context, sheet, place, 'columns')
  return {
    ...{ name, rows, top, left, hidden, merges },
    ...(hiddenRows !== null && { hiddenRows }),
    ...(hiddenColumns !== null && { hiddenColumns })
  }
}

async function find(
  context: Excel.RequestContext,
  wanted: Wanted,
  judge: Judge
): Promise<FoundInventory | Problem> {
  if (wanted === 'selection') return (await findInventory(context, judge)).found
  return wanted === 'workbook' ? findWholeInventory(context, judge) : findRange(context, wanted.range)
}

async function read(
  context: Excel.RequestContext,
  wanted: Wanted,
  judge: Judge,
  { signal, onProgress }: Reading
): Promise<ReadSheets | Problem> {
  const found = await find(context, wanted, judge)
  if (isProblem(found)) return found
  const total = found.places.reduce((sum, { rows }) => sum + rows, 0)
  const problems: Problem[] = []
  const sheets: SheetCells[] = []
  let before = 0
  for (const place of found.places) {
    const reading = { signal, onProgress: (done: number) => onProgress?.(before + done, total) }
    sheets.push(await readSheet(context, place, reading, problems))
    before += place.rows
  }
  return { sheets: [...sheets, ...found.others], range: found.range, problems }
}

/**
 * The sheets of the inventory, cell by cell as a file would give them, in bands of rows. Waits while a cell is being edited.
 * Rejects with the signal's AbortError when canceled.
 */
export async function readInventorySheets(
  wanted: Wanted,
  judge: Judge,
  reading: Reading = {}
): Promise<ReadSheets> {
  reading.signal?.throwIfAborted()
  const result = await inExcel((context) => read(context, wanted, judge, reading), { wait: true })
  return isProblem(result) ? { sheets: [], range: null, problems: [result] } : result
}
