import type { Area, Cell } from '../../shared/cells'

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

/** The values of an area, read in bands of rows; a band that is too large for one answer is halved. */
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
    range.load('values')
    try {
      await context.sync()
    } catch (error) {
      if (count === 1 || !tooLarge(error)) throw error
      band = Math.ceil(count / 2)
      continue
    }
    for (const row of range.values as (string | number | boolean)[][])
      rows.push(row.map((value) => (value === '' ? null : value)))
    onProgress?.(rows.length, area.rows)
  }
  return rows
}
