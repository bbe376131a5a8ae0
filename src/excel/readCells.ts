import type { Area, Cell } from '../../shared/cells'
import { isDateFormat, isPercentFormat, shownPercent } from '../../shared/numberFormats'
import { dateShiftOf } from './dateShift'
import { showDate } from '../../shared/words/dates'

/** Cells a request asks for at first. Excel on the web answers with at most 5 MB. */
const cellsAtOnce = 20_000

export interface Reading {
  signal?: AbortSignal | undefined
  onProgress?: ((done: number, total: number) => void) | undefined
}

function tooLarge(error: unknown): boolean {
  const code = (error as { code?: unknown }).code
  return code === 'ResponsePayloadSizeLimitExceeded' || code === 'RequestPayloadSizeLimitExceeded'
}

/**
 * A cell as the readers take it, and as a file gives it: a number that is shown as a date comes as a text such as
 * "2026-03-01", one that is shown as a percentage as "5 %", so that neither is taken for an amount.
 */
function cellOf(value: string | number | boolean, format: string, dateShift: number): Cell {
  if (value === '') return null
  if (typeof value !== 'number') return value
  if (isDateFormat(format)) return showDate(value + dateShift)
  return isPercentFormat(format) ? (shownPercent(value) ?? value) : value
}

const loaded = 'values,numberFormat'

async function rowsOf(
  context: Excel.RequestContext,
  { values, numberFormat }: Excel.Range
): Promise<Cell[][]> {
  const formats = numberFormat as string[][]
  const dates = formats.some((row) => row.some(isDateFormat))
  const shift = dates ? await dateShiftOf(context) : 0
  return (values as (string | number | boolean)[][]).map((row, at) =>
    row.map((value, column) => cellOf(value, formats[at]?.[column] ?? '', shift))
  )
}

/** The cells of an area, read in bands of rows; a band that is too large for one answer is halved. */
export async function readCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area,
  { signal, onProgress }: Reading = {}
): Promise<Cell[][]> {
  const rows: Cell[][] = []
  let band = Math.max(1, Math.floor(cellsAtOnce / area.columns))
  while (rows.length < area.rows) {
    signal?.throwIfAborted()
    const count = Math.min(band, area.rows - rows.length)
    const range = sheet.getRangeByIndexes(area.row + rows.length, area.column, count, area.columns)
    range.load(loaded)
    try {
      await context.sync()
    } catch (error) {
      if (count === 1 || !tooLarge(error)) throw error
      band = Math.ceil(count / 2)
      continue
    }
    for (const row of await rowsOf(context, range)) rows.push(row)
    onProgress?.(rows.length, area.rows)
  }
  return rows
}

/** A few rows of several sheets, in one request. */
export async function readFew(
  context: Excel.RequestContext,
  areas: readonly (Area & { sheet: string })[]
): Promise<Cell[][][]> {
  if (areas.length === 0) return []
  const ranges = areas.map(({ sheet, row, column, rows, columns }) =>
    context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns)
  )
  for (const range of ranges) range.load(loaded)
  await context.sync()
  return Promise.all(ranges.map((range) => rowsOf(context, range)))
}
