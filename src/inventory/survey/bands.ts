import { isBlank, type Cell } from '../../../shared/cells'
import type { SheetCells } from './sheetCells'

/** Columns from and up to (not included) that stand together between columns without anything in them. */
export interface Band {
  readonly from: number
  readonly to: number
}

/** The bands of a sheet, from the left; most sheets have one. */
export function bandsOf({ rows }: SheetCells): Band[] {
  let width = 0
  for (const row of rows) width = Math.max(width, row.length)
  const filled: boolean[] = Array<boolean>(width).fill(false)
  let left = width
  for (const row of rows) {
    for (let column = 0; column < row.length; column++)
      if (filled[column] === false && !isBlank(row[column])) {
        filled[column] = true
        left--
      }
    if (left === 0) break
  }
  const bands: { from: number; to: number }[] = []
  filled.forEach((full, column) => {
    if (!full) return
    const last = bands.at(-1)
    if (last?.to === column) last.to++
    else bands.push({ from: column, to: column + 1 })
  })
  return bands
}

/** A band as a sheet of its own, which knows where it stands. */
export function bandSheet(sheet: SheetCells, { from, to }: Band): SheetCells {
  const shifted = (columns: ReadonlySet<number> | undefined): ReadonlySet<number> =>
    new Set([...(columns ?? [])].map((column) => column - from))
  const { placeOf } = sheet
  return {
    ...sheet,
    ...(placeOf === undefined
      ? {}
      : { placeOf: (row: number, column: number) => placeOf(row, column + from) }),
    left: sheet.left + from,
    rows: sheet.rows.map((row): readonly Cell[] => row.slice(from, to)),
    merges: (sheet.merges ?? []).map((merge) => ({
      ...merge,
      left: merge.left - from,
      right: merge.right - from
    })),
    hiddenColumns: shifted(sheet.hiddenColumns)
  }
}
