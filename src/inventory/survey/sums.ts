import { isBlank, type Cell } from '../../../shared/cells'

/** Columns whose sum or mean a row has to give before it is taken for a total; rows that may be one. House judgment. */
const enoughColumns = 2
const lastRows = 6

function isClose(value: number, other: number): boolean {
  return Math.abs(value - other) <= 1e-6 * Math.max(1, Math.abs(other))
}

/** A number in a text, with a point or a comma; three decimals could be thousands. */
const typed = /^\d+(?:[.,](?:\d{1,2}|\d{4,}))?$/

function numberOf(cell: Cell): number | null {
  if (typeof cell === 'number') return cell
  return typeof cell === 'string' && typed.test(cell) ? Number(cell.replace(',', '.')) : null
}

/** Sums and counts of the numbers in each column. */
class ColumnSums {
  private readonly sums: number[] = []
  private readonly counts: number[] = []
  private readonly lows: number[] = []
  private readonly highs: number[] = []

  add(row: readonly Cell[]): void {
    for (let column = 0; column < row.length; column++) {
      const value = numberOf(row[column] ?? null)
      if (value === null) continue
      this.sums[column] = (this.sums[column] ?? 0) + value
      this.counts[column] = (this.counts[column] ?? 0) + 1
      this.lows[column] = Math.min(this.lows[column] ?? value, value)
      this.highs[column] = Math.max(this.highs[column] ?? value, value)
    }
  }

  /** Whether the numbers of a row are the sums, or the means, of what stands above it. */
  areIn(row: readonly Cell[]): boolean {
    let sums = 0
    let means = 0
    let numbers = 0
    row.forEach((cell, column) => {
      const count = this.counts[column] ?? 0
      const value = numberOf(cell)
      // A column of one value only is the mean of itself in every row.
      if (
        value === null ||
        count < 2 ||
        (this.lows[column] === this.highs[column] && value === this.lows[column])
      )
        return
      const sum = this.sums[column] ?? 0
      numbers++
      if (isClose(value, sum)) sums++
      else if (isClose(value, sum / count)) means++
    })
    return Math.max(sums, means) >= enoughColumns && Math.max(sums, means) * 2 > numbers
  }
}

/**
 * Rows of totals without a word that says so: no id, and numbers that are the sums or means of their columns. Only the last
 * rows of a table are looked at.
 */
export function totalsWithoutWord(
  sheetRows: readonly (readonly Cell[])[],
  rows: readonly number[],
  idAt: number
): readonly number[] {
  const from = Math.max(2, rows.length - lastRows)
  const nameless = rows.slice(from).filter((row) => isBlank(sheetRows[row]?.[idAt]))
  if (idAt < 0 || nameless.length === 0) return []
  const above = new ColumnSums()
  for (const row of rows.slice(0, from)) above.add(sheetRows[row] ?? [])
  const found: number[] = []
  for (const row of rows.slice(from)) {
    const cells = sheetRows[row] ?? []
    if (nameless.includes(row) && above.areIn(cells)) found.push(row)
    else above.add(cells)
  }
  return found
}
