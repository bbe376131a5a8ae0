import { isRefusal, refuse, type Refusal } from '../shared/refusal'
import type { Argument, Arguments, Given } from './argument'
import { readCell } from './cell'
import { cellError, isNotice } from './cellError'
import { commonShape, shapeOf, toGrid, type Cells, type Shape } from './grid'
import { isEmptyRow, shown, type Result } from './row'
import { plainCell, type PlainCell } from './plainCell'

/**
 * Makes a cell function whose results depend on one another, such as shares and ranks: every row is read, the formula
 * gets all good rows at once and answers one result for each. Rows that are blank or wrong take no part.
 */
export function allCells<V extends unknown[], Name extends string>(
  parameters: Arguments<V, Name>,
  formula: (rows: V[]) => Result[]
): (given: Given<Name>) => Cells {
  const list = parameters as unknown as Argument<unknown, Name>[]
  return (given) => {
    const { grids, shape } = gridsOf(list, given)
    const results: Result[] = []
    const good: V[] = []
    const places: number[] = []
    for (let r = 0; r < shape.rows; r++)
      for (let c = 0; c < shape.columns; c++) {
        const row = readValues(list, cellsAt(grids, r, c), grids)
        if (Array.isArray(row)) {
          places.push(results.length)
          good.push(row as V)
          results.push('')
        } else results.push(row)
      }
    formula(good).forEach((result, index) => (results[places[index] as number] = result))
    const single = shape.rows === 1 && shape.columns === 1 ? results[0] : undefined
    if (isRefusal(single)) throw cellError(single)
    return Array.from({ length: shape.rows }, (_, r) =>
      results.slice(r * shape.columns, (r + 1) * shape.columns).map(shown)
    )
  }
}

function gridsOf<Name extends string>(
  list: readonly Argument<unknown, Name>[],
  given: Given<Name>
): { grids: Cells[]; shape: Shape } {
  const grids = list.map(({ name }) => toGrid(given[name]))
  const shape = commonShape(grids.map(shapeOf))
  if (isRefusal(shape)) throw cellError(shape)
  return { grids, shape }
}

function cellsAt(grids: readonly Cells[], r: number, c: number): PlainCell[] {
  return grids.map((grid) => {
    const row = grid.length === 1 ? grid[0] : grid[r]
    return plainCell(row?.length === 1 ? row[0] : row?.[c])
  })
}

/** The values of one row, or what its cell shows instead. */
function readValues(
  list: readonly Argument<unknown>[],
  cells: readonly PlainCell[],
  ranges: readonly Cells[]
): unknown[] | Result {
  if (isEmptyRow(list, cells)) return ''
  const passed = cells.find(isNotice)
  if (passed !== undefined) return passed
  const values = list.map((argument, index) => readCell(argument, cells[index] ?? null, ranges[index]))
  return values.find(isRefusal) ?? values
}

/**
 * Makes a cell function with one result from all rows of its ranges. Blank rows, and rows of 0, are passed over; the
 * first notice or wrong cell decides the result.
 */
export function oneResult<V extends unknown[], Name extends string>(
  parameters: Arguments<V, Name>,
  formula: (rows: V[]) => Result
): (given: Given<Name>) => Cells {
  const list = parameters as unknown as Argument<unknown, Name>[]
  return (given) => {
    const { grids, shape } = gridsOf(list, given)
    const good: V[] = []
    for (let r = 0; r < shape.rows; r++)
      for (let c = 0; c < shape.columns; c++) {
        const row = readValues(list, cellsAt(grids, r, c), grids)
        if (Array.isArray(row)) good.push(row as V)
        else if (isRefusal(row)) throw cellError(placed(row, r, c, shape))
        else if (row !== '') return [[row]]
      }
    const result = good.length === 0 ? '' : formula(good)
    if (isRefusal(result)) throw cellError(result)
    return [[shown(result)]]
  }
}

/** Says which cell of the range is meant, as the whole range has but one result to say it in. */
function placed(refused: Refusal, r: number, c: number, { rows, columns }: Shape): Refusal {
  if (rows === 1 && columns === 1) return refused
  return refuse(`In row ${r + 1}, column ${c + 1} of the range: ${refused.sentence}`, refused.refusal)
}
