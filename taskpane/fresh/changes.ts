import { grouped } from '../../shared/words/figures'
import { listed } from '../../shared/words/lists'
import { cellAddress, type Cell, type ReadCells } from '../../shared/cells'

/** What is not any more as it was when the plan was made. */
export type Change =
  | { readonly kind: 'cell'; readonly sheet: string; readonly row: number; readonly column: number }
  /** A whole sheet that came since, or that is gone or called otherwise. */
  | { readonly kind: 'new' | 'gone'; readonly sheet: string }

/** A change by its name: the same cell changed twice is one change. */
export function changeName(change: Change): string {
  return change.kind === 'cell'
    ? cellAddress(change.row, change.column, change.sheet)
    : `the sheet ${change.sheet}, which is ${change.kind}`
}

/** The cells of an area that differ, where a cell beyond either reading is blank. */
export function changedCells(before: ReadCells, now: ReadCells): Change[] {
  const at = ({ rows, top, left }: ReadCells, row: number, column: number): Cell =>
    rows[row - top]?.[column - left] ?? null
  const [top, left] = [Math.min(before.top, now.top), Math.min(before.left, now.left)]
  const bottom = Math.max(before.top + before.rows.length, now.top + now.rows.length)
  const right = Math.max(...[before, now].map(({ left: first, rows }) => first + (rows[0]?.length ?? 0)))
  const found: Change[] = []
  for (let row = top; row < bottom; row++)
    for (let column = left; column < right; column++)
      if (at(before, row, column) !== at(now, row, column))
        found.push({ kind: 'cell', sheet: before.sheet, row, column })
  return found
}

/** What changed between two readings of a sheet that there may be or not. */
export function changedSheets(before: ReadCells | null, now: ReadCells | null): Change[] {
  if (before === null) return now === null ? [] : [{ kind: 'new', sheet: now.sheet }]
  if (now === null || now.sheet !== before.sheet) return [{ kind: 'gone', sheet: before.sheet }]
  return changedCells(before, now)
}

/** Named in full are the first few; people look there. */
const namedInFull = 3

/** “Inventory!N3, Rates!D7 and 2 other cells”. */
export function changeWords(changes: readonly Change[]): string {
  const names = [...new Set(changes.map(changeName))]
  const more = names.length - namedInFull
  return listed(more > 0 ? [...names.slice(0, namedInFull), `${grouped(more)} more`] : names)
}

/** Beside what is older than the cells. */
export const staleWords = 'Changed since: plan again before you go by this.'
