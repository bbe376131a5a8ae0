import { problem, type Problem } from '../../../shared/problems'
import { rowsNamed } from '../../../shared/words/some'
import { cellAddress } from '../../../shared/cells'
import type { IdentifiedRow } from './identity'
import { namedRuns } from './tellOf'
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
  const numbers = left.map(({ part, row }) => part.block.top + row + 1)
  problems.push(
    problem('said-no-trees', cellAddress(top + first.row, column, sheet), {
      rows: rowsNamed(numbers, namedRuns)
    })
  )
  return rows.filter(({ key }) => !keys.has(key))
}
