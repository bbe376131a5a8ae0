import type { Rules } from '../../../shared/rules'
import type { PreparedTree } from '../prepareTree'
import { chooseScaffold } from './chooseScaffold'
import type { Scaffold } from './scaffold'

/** Chooses the scaffold of a tree that was just made ready, and tells its limbs what they are to it. */
export function applyScaffold(tree: PreparedTree, year: number, rules: Rules): Scaffold {
  const scaffold = chooseScaffold(tree, year, rules)
  if (scaffold.limbs.length === 0) return scaffold
  const told = new Map(scaffold.limbs.map((each) => [each.limb, each]))
  for (const limb of tree.limbs) {
    const found = told.get(limb.surveyed)
    if (found === undefined) continue
    limb.permanence = found.permanence
    // Where nothing is chosen, a limb said to be temporary goes when it grows too thick, as its visit finds it.
    if (scaffold.withheld === null) limb.goneBy = found.goneBy
  }
  return scaffold
}
