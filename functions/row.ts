import { isRefusal, type Refusal } from '../shared/refusal'
import type { Argument } from './argument'
import { isBlankFor, readCell } from './cell'
import { isNotice, notice } from './cellError'
import type { Cells } from './grid'
import { plainCell, type PlainCell } from './plainCell'

export type Result = number | string | Refusal

/** A formula as the runner sees it: checked values in, a result out. */
export type Core = (...values: unknown[]) => Result

/** One result from its cells: "" where nothing was given, the first notice handed in, a value or a refusal. */
export function readRow(
  list: readonly Argument<unknown>[],
  core: Core,
  row: readonly unknown[],
  ranges: readonly Cells[] = []
): Result {
  const cells = row.map(plainCell)
  if (isEmptyRow(list, cells)) return ''
  const passed = cells.find(isNotice)
  if (passed !== undefined) return passed
  const values: unknown[] = []
  for (const [index, argument] of list.entries()) {
    const value = readCell(argument, cells[index] ?? null, ranges[index])
    if (isRefusal(value)) return value
    values.push(value)
  }
  return finite(core(...values))
}

/** All required cells blank, or 0 as some spreadsheets hand blanks over. */
export function isEmptyRow(list: readonly Argument<unknown>[], cells: readonly PlainCell[]): boolean {
  return list.every((argument, index) => {
    const cell = cells[index] ?? null
    return argument.fallback !== undefined || cell === 0 || isBlankFor(argument, cell)
  })
}

function finite(result: Result): Result {
  return typeof result !== 'number' || Number.isFinite(result)
    ? result
    : { refusal: 'wrong', sentence: 'These values give no finite number: check their size.' }
}

/** What a cell of a range shows. */
export function shown(result: Result): number | string {
  const checked = finite(result)
  return isRefusal(checked) ? notice(checked) : checked
}
