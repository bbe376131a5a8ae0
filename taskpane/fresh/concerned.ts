import { rowsAt } from '../../src/inventory/inventory'
import type { Plan } from '../../src/plan/plan'
import { findingsByRow } from '../plan/limbCard'
import type { Change } from './changes'

/** The trees that a change concerns by their ids, or all of them. */
export function treesConcerned(plan: Plan, changes: readonly Change[]): ReadonlySet<string> | 'all' {
  if (changes.length === 0) return new Set()
  const rows = findingsByRow(plan)
  const ids = new Set<string>()
  for (const change of changes) {
    const at = change.kind === 'cell' ? rowsAt(plan.inventory, change.sheet, change.row + 1) : []
    const found = at.flatMap((row) => {
      const finding = rows.get(row)
      if (finding === undefined) return []
      return [finding.kind === 'unplanned' ? finding.tree : finding.treePlan.tree.id]
    })
    if (found.length === 0) return 'all'
    for (const id of found) ids.add(id)
  }
  return ids
}
