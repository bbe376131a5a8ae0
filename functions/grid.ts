import { refuse, type Refusal } from '../shared/refusal'

/** Cells as the spreadsheet hands them over and takes them back: rows of cells. */
export type Cells = unknown[][]

/** How many rows and columns a result has. */
export interface Shape {
  rows: number
  columns: number
}

/** Any argument as rows of cells: a bare value becomes one cell, a bare list one row, nothing one blank cell. */
export function toGrid(given: unknown): Cells {
  if (!Array.isArray(given)) return [[given]]
  if (given.length === 0) return [[null]]
  if (!Array.isArray(given[0])) return [given]
  return given[0].length === 0 ? [[null]] : (given as Cells)
}

export function shapeOf(grid: Cells): Shape {
  return { rows: grid.length, columns: grid[0]?.length ?? 0 }
}

/** The shape of a result: single cells, rows and columns stretch to the others; unequal ranges do not. */
export function commonShape(shapes: readonly Shape[]): Shape | Refusal {
  const rows = Math.max(...shapes.map((shape) => shape.rows))
  const columns = Math.max(...shapes.map((shape) => shape.columns))
  const fits = shapes.every(
    (shape) => (shape.rows === rows || shape.rows === 1) && (shape.columns === columns || shape.columns === 1)
  )
  if (fits) return { rows, columns }
  const sizes = shapes.map((shape) => `${shape.rows} × ${shape.columns}`).join(', ')
  return refuse(`The ranges differ in size (${sizes}): give ranges of the same rows and columns.`)
}
