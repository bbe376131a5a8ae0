import type { Plan } from '../../src/plan/plan'
import type { Check } from './checksSection'

/** Ids under which nothing could be planned: no limb, and no tree of its own. */
function unplannedIds({ inventory, trees, unplanned }: Plan): ReadonlySet<string> {
  const left = new Set(unplanned.map(({ at }) => at))
  const planned = new Set(
    trees
      .filter(({ visits, liveCrownRatio }) => visits.length > 0 || liveCrownRatio !== null)
      .map(({ tree }) => tree.id)
  )
  const ids = inventory.trees.filter(
    ({ id, row, limbs }) =>
      !planned.has(id) && (left.has(row) || limbs.length > 0) && limbs.every((limb) => left.has(limb.row))
  )
  return new Set(ids.map(({ id }) => id))
}

/** The checks, each of a row that may be no tree with the id that stands there. */
export function withNoTrees(checks: readonly Check[], plan: Plan): Check[] {
  const ids = unplannedIds(plan)
  const byRow = new Map(
    plan.unplanned.flatMap(({ tree, cell }) => (ids.has(tree) ? [[rowOf(cell), tree] as const] : []))
  )
  return checks.map((check) => {
    const noTree = check.level === 'row' ? byRow.get(rowOf(check.cell)) : undefined
    return noTree === undefined ? check : { ...check, noTree }
  })
}

/** The sheet and row of an address: Survey!B9 gives Survey!9. */
function rowOf(cell: string): string {
  const [, sheet = '', row = ''] = /^(.*!)?[A-Z]+(\d+)/i.exec(cell) ?? []
  return sheet + row
}
