import type { Area } from '../../shared/cells'

/** Beyond so many pieces the hidden rows are no longer counted, only noticed. */
const mostPieces = 2_000

/**
 * How many rows of an area are hidden or filtered out, found by halving the area wherever its rows differ. "Some" where
 * they are too scattered to count in reasonable time.
 */
export async function countHiddenRows(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  area: Area
): Promise<number | 'Some'> {
  let pieces = [{ row: area.row, rows: area.rows }]
  let hidden = 0
  while (pieces.length > 0) {
    if (pieces.length > mostPieces) return 'Some'
    const ranges = pieces.map(({ row, rows }) => sheet.getRangeByIndexes(row, area.column, rows, 1))
    for (const range of ranges) range.load('rowHidden')
    await context.sync()
    const next: typeof pieces = []
    pieces.forEach(({ row, rows }, index) => {
      const state = ranges[index]?.rowHidden as boolean | null
      if (state === true) hidden += rows
      if (state !== null) return
      const half = Math.ceil(rows / 2)
      next.push({ row, rows: half }, { row: row + half, rows: rows - half })
    })
    pieces = next
  }
  return hidden
}
