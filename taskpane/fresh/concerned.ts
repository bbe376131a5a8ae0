import { rowsAt } from '../../src/inventory/inventory'
import type { Plan } from '../../src/plan/plan'
import { treeOf, type RowFinding } from '../plan/limbCard'
import type { Change } from './changes'

/** The trees that a change concerns by their ids, or all of them. */
export function treesConcerned(
  { inventory }: Plan,
  rows: ReadonlyMap<number, RowFinding>,
  changes: readonly Change[]
): ReadonlySet<string> | 'all' {
  const ids = new Set<string>()
  for (const change of changes) {
    const at = change.kind === 'cell' ? rowsAt(inventory, change.sheet, change.row + 1) : []
    const found = at.flatMap((row) => {
      const finding = rows.get(row)
      if (finding === undefined) return []
      return [treeOf(finding)]
    })
    if (found.length === 0) return 'all'
    for (const id of found) ids.add(id)
  }
  return ids
}
