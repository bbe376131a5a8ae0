import type { Rules } from '../../shared/rules'
import { ratio } from '../../shared/words/figures'
import { showDiameter } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import { heightForClearance, liveCrownRatio } from '../formulas/crown'
import type { TreeCheck } from './checkTree'
import { inClearance } from './clearance'
import type { TreePlan, Visit } from './plan'
import type { PreparedTree } from './prepareTree'
import { closePairs } from './scaffold'

/** Notes what holds for the tree at every visit: its allowance, its crown, its spacing, its temporary limbs. */
export function noteTree(
  check: TreeCheck,
  plan: Pick<TreePlan, 'allowedRemoval' | 'allowedBasis' | 'vigor'>,
  tree: PreparedTree,
  rules: Rules
): void {
  const { row } = check.tree
  noteAllowance(check, plan)
  noteCrownRatio(check, liveCrownRatio(tree.height, tree.crownBase), rules)
  noteSpacing(check, rules)
  noteTemporary(check, rules)
  const observed = tree.limbs.reduce(
    (sum, limb) => sum + (limb.parent === null ? (limb.surveyed.foliageShare ?? 0) : 0),
    0
  )
  if (observed > 1 + 1e-9)
    check.note('observed-share-too-large', row, 'foliageShare', { value: percent(observed) })
}

/** Notes a tree that has nothing to spare, unless its vigor says so already. */
export function noteAllowance(
  check: TreeCheck,
  plan: Pick<TreePlan, 'allowedRemoval' | 'allowedBasis' | 'vigor'>
): void {
  if (plan.allowedRemoval <= 0 && plan.vigor !== 'poor')
    check.note('nothing-allowed', check.tree.row, 'removed', { value: plan.allowedBasis })
}

export function noteCrownRatio(check: TreeCheck, crownRatio: number, rules: Rules): void {
  if (crownRatio >= rules.crownRatioGoal - 1e-9) return
  const facts = { value: ratio(crownRatio), limit: ratio(rules.crownRatioGoal) }
  check.note('crown-ratio-low', check.tree.row, 'crownBase', facts)
}

function noteTemporary(check: TreeCheck, rules: Rules): void {
  const { caliper, trunk, limbs, row } = check.tree
  const size = caliper ?? trunk
  if (size === null || size >= rules.temporaryUpTo || limbs.length === 0) return
  const { system } = check.inventory
  const facts = { value: showDiameter(size, system), limit: showDiameter(rules.temporaryUpTo, system) }
  check.note('all-temporary', row, caliper === null ? 'trunk' : 'caliper', facts)
}

function noteSpacing(check: TreeCheck, rules: Rules): void {
  for (const { upper, lower, apart, wanted } of closePairs(check.tree, rules)) {
    const facts = { limb: upper.id, other: lower.id, value: check.show(apart), limit: check.show(wanted) }
    check.note('scaffold-spacing', upper.row, 'origin', facts)
  }
}

/** Notes what the first visit leaves: foliage that is high, competing leaders, and limbs that stay in the clearance. */
export function noteFirstVisit(
  check: TreeCheck,
  tree: PreparedTree,
  visit: Visit,
  leaders: number,
  rules: Rules
): void {
  if (visit.lowerFoliageBefore < rules.lowerFoliageGoal - 1e-9 && tree.limbs.length > 0)
    check.note('lower-foliage-low', check.tree.row, 'tree', { value: percent(visit.lowerFoliageBefore) })
  if (leaders > rules.leadersAtOnce) check.note('many-leaders', check.tree.row, 'tree', { count: leaders })
  const { clearance, clearanceSide } = tree.tree
  if (clearance === null) return
  const asked = { clearance, clearanceSide: clearanceSide?.degrees ?? null, rules }
  const until = stagedUntil(check, tree, clearance, rules)
  const cut = new Map(visit.cuts.map((each) => [each.limb, each.kind]))
  for (const { surveyed, lowest } of tree.limbs) {
    const kind = cut.get(surveyed)
    if (kind === 'remove' || !inClearance({ surveyed, lowest }, asked)) continue
    const done =
      kind === 'reduce' ? 'it is shortened now and not yet removed' : 'it is not removed at the first visit'
    check.note('clearance-held', surveyed.row, 'lowestFoliage', { limb: surveyed.id, value: done, until })
  }
}

/** The tree has to be taller before its crown may be raised as high as the clearance asks. */
function stagedUntil(check: TreeCheck, tree: PreparedTree, clearance: number, rules: Rules): string {
  const needed = heightForClearance(clearance, rules.crownRatioGoal)
  return needed > tree.height
    ? `; a live-crown ratio of ${rules.crownRatioGoal} allows that clearance once the tree is ${check.show(needed)} tall`
    : ''
}
