import type { Area, Cell } from '../../shared/cells'
import { isDateFormat } from '../../shared/dates'
import { showDate } from '../../shared/words/dates'

/** Cells a request asks for at first. Excel on the web answers with at most 5 MB. */
const cellsAtOnce = 20_000

export interface Reading {
  signal?: AbortSignal | undefined
  onProgress?: ((done: number, total: number) => void) | undefined
  /** Numbers that are shown as dates come as texts such as "2026-03-01", so that they are not taken for amounts. */
  datesAsTexts?: boolean | undefined
}

function tooLarge(error: unknown): boolean {
  const code = (error as { code?: unknown }).code
  return code === 'ResponsePayloadSizeLimitExceeded' || code === 'RequestPayloadSizeLimitExceeded'
}

/** A cell as the readers take it; `format` is its number format, where dates are to come as texts. */
function cellOf(value: string | number | boolean, format: string | undefined): Cell {
  if (value === '') return null
  return typeof value === 'number' && format !== undefined && isDateFormat(format) ? showDate(value) : value
}

/** The values of an area, read in bands of rows; a band that is too large for one answer is halved. */
export async function readCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area,
  { signal, onProgress, datesAsTexts = false }: Reading = {}
): Promise<Cell[][]> {
  const rows: Cell[][] = []
  let band = Math.max(1, Math.floor(cellsAtOnce / area.columns))
  while (rows.length < area.rows) {
    signal?.throwIfAborted()
    const count = Math.min(band, area.rows - rows.length)
    const range = sheet.getRangeByIndexes(area.row + rows.length, area.column, count, area.columns)
    range.load(datesAsTexts ? 'values,numberFormat' : 'values')
    try {
      await context.sync()
    } catch (error) {
      if (count === 1 || !tooLarge(error)) throw error
      band = Math.ceil(count / 2)
      continue
    }
    const formats = datesAsTexts ? (range.numberFormat as string[][]) : []
    const values = range.values as (string | number | boolean)[][]
    for (const [at, row] of values.entries())
      rows.push(row.map((value, column) => cellOf(value, formats[at]?.[column])))
    onProgress?.(rows.length, area.rows)
  }
  return rows
}
