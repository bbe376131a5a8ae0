import type { Rules } from '../../shared/rules'
import { listed } from '../../shared/words/lists'
import { liveCrownRatio } from '../formulas/crown'
import { leaveUnplanned } from '../inventory/inventory'
import type { TreeCheck } from './checkTree'
import { chooseLeader } from './chooseLeader'
import { isUnmeasured } from './judged'
import type { TreePlan } from './plan'
import { noteAllowance, noteCrownRatio } from './treeNotes'

/**
 * The plan of a tree without limbs: its allowance, and its crown ratio and a time budget where they are known. One that has
 * neither of these is listed among what is not planned.
 */
export function planWithoutLimbs(check: TreeCheck, unjudged: TreePlan, rules: Rules): TreePlan {
  const { tree, inventory } = check
  const crownRatio = crownRatioOf(check)
  const leader = chooseLeader(inventory, tree, check.problems, rules)
  const plan = { ...unjudged, leader, liveCrownRatio: crownRatio }
  const found = check.note('no-limbs', tree.row, 'tree', { given: givenOf(plan) })
  noteAllowance(check, plan)
  if (crownRatio !== null) noteCrownRatio(check, crownRatio, rules)
  if (isUnmeasured(plan)) leaveUnplanned(inventory, tree.id, tree.row, found.message, { wholeTree: true })
  return plan
}

function crownRatioOf(check: TreeCheck): number | null {
  const { height, crownBase, row } = check.tree
  if (height === null || crownBase === null) return null
  if (crownBase < height) return liveCrownRatio(height, crownBase)
  check.note('crown-base-above-top', row, 'crownBase', { value: check.show(height) })
  return null
}

/** What is known of a tree without its limbs: "allowance, crown ratio and a time budget are given". */
function givenOf({ tree, liveCrownRatio: ratio, allowedRemoval }: TreePlan): string {
  const given = [
    'allowance',
    ...(ratio === null ? [] : ['crown ratio']),
    ...(tree.trunk === null || allowedRemoval <= 0 ? [] : ['a time budget'])
  ]
  return `${listed(given)} ${given.length === 1 ? 'is' : 'are'} given`
}
