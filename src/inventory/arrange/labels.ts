import { isBlank, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { bestOf } from '../survey/headerRows'

/** How well words have to name a field, and letters of a label at most. House judgment. */
const likelyEnough = 0.55
const longest = 80

/** The field that a text likely names, or null. */
export function namedField(cell: Cell | undefined): Field | null {
  if (typeof cell !== 'string' || cell.length > longest) return null
  const best = bestOf(cell.trim())
  return best !== null && best.score >= likelyEnough ? best.field : null
}

/** Whether cells are mostly labels: three different fields or more, in that share of the filled ones. */
export function areLabels(cells: readonly (Cell | undefined)[], share: number): boolean {
  const filled = cells.filter((cell) => !isBlank(cell))
  const fields = filled.map(namedField).filter((field) => field !== null)
  return new Set(fields).size >= 3 && fields.length >= filled.length * share
}

/** The columns of a sheet, as many as its first rows have. */
export function widthOf(rows: readonly (readonly Cell[])[], looked: number): number {
  return rows.slice(0, looked).reduce((width, row) => Math.max(width, row.length), 0)
}
