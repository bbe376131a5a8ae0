import { isRefusal } from '../shared/refusal'
import type { Argument, Arguments, Given } from './argument'
import { cellError } from './cellError'
import { fillCells } from './fill'
import { commonShape, shapeOf, toGrid, type Cells } from './grid'
import { readRow, type Core, type Result } from './row'

/**
 * Makes a cell function of a formula: reads every cell by its parameter's description, stretches single cells, rows
 * and columns over the others, and puts a sentence where no value can be given. The formula itself sees plain,
 * checked values only. A single cell throws its sentence as #VALUE! or #N/A.
 */
export function eachCell<V extends unknown[], Name extends string>(
  parameters: Arguments<V, Name>,
  formula: (...values: V) => Result
): (given: Given<Name>) => Cells {
  const list = parameters as unknown as Argument<unknown, Name>[]
  const core = formula as Core
  return (given) => {
    const grids = list.map(({ name }) => toGrid(given[name]))
    const shape = commonShape(grids.map(shapeOf))
    if (isRefusal(shape)) throw cellError(shape)
    if (shape.rows !== 1 || shape.columns !== 1) return fillCells(list, core, grids, shape)
    const result = readRow(
      list,
      core,
      grids.map((grid) => grid[0]?.[0])
    )
    if (isRefusal(result)) throw cellError(result)
    return [[result]]
  }
}
