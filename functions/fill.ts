import { isRefusal } from '../shared/refusal'
import type { Argument } from './argument'
import { readCell } from './cell'
import { isNotice } from './cellError'
import type { Cells, Shape } from './grid'
import { readRow, shown, type Core, type Result } from './row'
import { plainCell } from './plainCell'

/**
 * The loop over a range. Cells with ordinary values, which is nearly all of a real inventory, go straight to the
 * formula; any other cell sends its row through `readRow`, which knows every case.
 */
export function fillCells(list: Argument<unknown>[], core: Core, grids: Cells[], shape: Shape): Cells {
  const fixed = list.map((argument, index) => fixedValue(argument, grids[index] as Cells))
  return fillPairs(list, core, grids, shape, fixed) ?? fillAny(list, core, grids, shape, fixed)
}

/** Two columns of numbers, the rest fixed: the most common call by far, and so the one without any detour. */
function fillPairs(
  list: Argument<unknown>[],
  core: Core,
  grids: Cells[],
  shape: Shape,
  fixed: unknown[]
): Cells | null {
  const [x, y] = grids
  const [first, second] = list
  if (!x || !y || !first || !second || list.length > 4 || shape.columns !== 1) return null
  if (x.length !== shape.rows || y.length !== shape.rows) return null
  if (fixed.slice(2).includes(undefined)) return null
  const [, , third, fourth] = fixed
  const out: Cells = []
  for (let r = 0; r < shape.rows; r++) {
    const a = x[r]?.[0]
    const b = y[r]?.[0]
    const result =
      isOrdinary(first, a) && isOrdinary(second, b)
        ? core(a, b, third, fourth)
        : careful(list, core, grids, r, 0)
    out.push(typeof result === 'number' && result - result === 0 ? [result] : [shown(result)])
  }
  return out
}

function fillAny(
  list: Argument<unknown>[],
  core: Core,
  grids: Cells[],
  shape: Shape,
  fixed: unknown[]
): Cells {
  const open = fixed.flatMap((value, index) => (value === undefined ? [index] : []))
  const values = [...fixed]
  const out: Cells = []
  for (let r = 0; r < shape.rows; r++) {
    const row: unknown[] = []
    for (let c = 0; c < shape.columns; c++) {
      const ready = gather(list, grids, open, values, r, c)
      row.push(shown(ready ? call(core, values) : careful(list, core, grids, r, c)))
    }
    out.push(row)
  }
  return out
}

function gather(
  list: Argument<unknown>[],
  grids: Cells[],
  open: number[],
  values: unknown[],
  r: number,
  c: number
): boolean {
  for (const index of open) {
    const argument = list[index] as Argument<unknown>
    const cell = cellAt(grids[index] as Cells, r, c)
    if (isOrdinary(argument, cell)) values[index] = cell
    else {
      const known = typeof cell === 'string' ? argument.known?.get(cell) : undefined
      if (known === undefined) return false
      values[index] = known
    }
  }
  return true
}

/** A number within the parameter's limits. A 0 is looked at with care: it may stand for a blank. */
function isOrdinary(argument: Argument<unknown>, cell: unknown): boolean {
  return typeof cell === 'number' && cell > argument.over && cell <= argument.most && cell !== 0
}

function careful(list: Argument<unknown>[], core: Core, grids: Cells[], r: number, c: number): Result {
  return readRow(
    list,
    core,
    grids.map((grid) => cellAt(grid, r, c)),
    grids
  )
}

function cellAt(grid: Cells, r: number, c: number): unknown {
  const row = grid.length === 1 ? grid[0] : grid[r]
  return row === undefined ? null : row.length === 1 ? row[0] : row[c]
}

/** A parameter's value where one good cell serves the whole range; undefined where cells must be read one by one. */
function fixedValue(argument: Argument<unknown>, grid: Cells): unknown {
  if (grid.length !== 1 || grid[0]?.length !== 1) return undefined
  const cell = plainCell(grid[0][0])
  if (isNotice(cell) || (cell === 0 && argument.fallback === undefined)) return undefined
  const value = readCell(argument, cell)
  return isRefusal(value) ? undefined : value
}

/** Calls without spreading a list. */
function call(core: Core, v: unknown[]): Result {
  switch (v.length) {
    case 1:
      return core(v[0])
    case 2:
      return core(v[0], v[1])
    case 3:
      return core(v[0], v[1], v[2])
    case 4:
      return core(v[0], v[1], v[2], v[3])
    case 5:
      return core(v[0], v[1], v[2], v[3], v[4])
    default:
      return core(...v)
  }
}
