import { problem, type Problem } from '../../../shared/problems'
import { namedRows } from '../../../shared/words/rows'
import { cellAddress } from '../../../shared/cells'
import type { IdentifiedRow } from './identity'
import { shownId, treeKey } from './treeKeys'

/** Leaves out the rows that a person called no trees, by their ids, in one line. */
export function leaveNoTrees(
  rows: readonly IdentifiedRow[],
  noTrees: readonly string[],
  problems: Problem[]
): readonly IdentifiedRow[] {
  if (noTrees.length === 0) return rows
  const keys = new Set(noTrees.map((typed) => treeKey(shownId(typed))))
  const left = rows.filter(({ key }) => keys.has(key))
  const [first] = left
  if (first === undefined) return rows
  const { top, left: column, sheet } = first.part.block
  const numbers = [...new Set(left.map(({ part, row }) => part.block.top + row + 1))].sort((a, b) => a - b)
  problems.push(
    problem('said-no-trees', cellAddress(top + first.row, column, sheet), { rows: namedRows(numbers) })
  )
  return rows.filter(({ key }) => !keys.has(key))
}
