import type { Problem } from '../../shared/problems'
import type { Rules } from '../../shared/rules'
import { ratio } from '../../shared/words/figures'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import { heightForClearance, liveCrownRatio } from '../formulas/crown'
import { treeProblem, type SurveyedTree } from './checkTree'
import { inClearance } from './clearance'
import type { TreePlan, Visit } from './plan'
import type { PreparedTree } from './prepareTree'
import { closePairs } from './scaffold'

/** What holds for the tree at every visit: its allowance, its crown, its spacing, its temporary limbs. */
export function treeNotes(
  surveyed: SurveyedTree,
  plan: Pick<TreePlan, 'allowedRemoval' | 'allowedBasis' | 'vigor'>,
  tree: PreparedTree,
  rules: Rules
): Problem[] {
  const { row } = surveyed.tree
  const notes = [
    ...allowanceNotes(surveyed, plan),
    ...crownRatioNotes(surveyed, liveCrownRatio(tree.height, tree.crownBase), rules),
    ...spacingNotes(surveyed, rules),
    ...temporaryNotes(surveyed, rules)
  ]
  const observed = tree.limbs.reduce(
    (sum, limb) => sum + (limb.parent === null ? (limb.surveyed.foliageShare ?? 0) : 0),
    0
  )
  if (observed > 1 + 1e-9) {
    const facts = { value: percent(observed) }
    notes.push(treeProblem(surveyed, 'observed-share-too-large', row, 'foliageShare', facts))
  }
  return notes
}

/** A tree that has nothing to spare, unless its vigor says so already. */
export function allowanceNotes(
  surveyed: SurveyedTree,
  plan: Pick<TreePlan, 'allowedRemoval' | 'allowedBasis' | 'vigor'>
): Problem[] {
  if (plan.allowedRemoval > 0 || plan.vigor === 'poor') return []
  const facts = { value: plan.allowedBasis }
  return [treeProblem(surveyed, 'nothing-allowed', surveyed.tree.row, 'removed', facts)]
}

export function crownRatioNotes(surveyed: SurveyedTree, crownRatio: number, rules: Rules): Problem[] {
  if (crownRatio >= rules.crownRatioGoal - 1e-9) return []
  const facts = { value: ratio(crownRatio), limit: ratio(rules.crownRatioGoal) }
  return [treeProblem(surveyed, 'crown-ratio-low', surveyed.tree.row, 'crownBase', facts)]
}

function temporaryNotes(surveyed: SurveyedTree, rules: Rules): Problem[] {
  const { caliper, trunk, limbs, row } = surveyed.tree
  const size = caliper ?? trunk
  if (size === null || size >= rules.temporaryUpTo || limbs.length === 0) return []
  const { system } = surveyed.inventory
  const facts = { value: showDiameter(size, system), limit: showDiameter(rules.temporaryUpTo, system) }
  return [treeProblem(surveyed, 'all-temporary', row, caliper === null ? 'trunk' : 'caliper', facts)]
}

function spacingNotes(surveyed: SurveyedTree, rules: Rules): Problem[] {
  const show = (meters: number) => showHeight(meters, surveyed.inventory.system)
  return closePairs(surveyed.tree, rules).map(({ upper, lower, apart, wanted }) => {
    const facts = { limb: upper.id, other: lower.id, value: show(apart), limit: show(wanted) }
    return treeProblem(surveyed, 'scaffold-spacing', upper.row, 'origin', facts)
  })
}

/** What the first visit leaves: foliage that is high, competing leaders, and limbs that stay in the clearance. */
export function firstVisitNotes(
  surveyed: SurveyedTree,
  tree: PreparedTree,
  visit: Visit,
  leaders: number,
  rules: Rules
): Problem[] {
  const { row } = surveyed.tree
  const notes: Problem[] = []
  if (visit.lowerFoliageBefore < rules.lowerFoliageGoal - 1e-9 && tree.limbs.length > 0) {
    const facts = { value: percent(visit.lowerFoliageBefore) }
    notes.push(treeProblem(surveyed, 'lower-foliage-low', row, 'tree', facts))
  }
  if (leaders > rules.leadersAtOnce)
    notes.push(treeProblem(surveyed, 'many-leaders', row, 'tree', { count: leaders }))
  const { clearance } = surveyed.tree
  if (clearance !== null) notes.push(...clearanceNotes(surveyed, tree, visit, clearance, rules))
  return notes
}

/** The limbs that hang into the clearance and are not removed at the first visit. */
function clearanceNotes(
  surveyed: SurveyedTree,
  tree: PreparedTree,
  visit: Visit,
  clearance: number,
  rules: Rules
): Problem[] {
  const notes: Problem[] = []
  const asked = { clearance, clearanceSide: tree.tree.clearanceSide?.degrees ?? null, rules }
  const until = stagedUntil(tree, clearance, rules)
  const cut = new Map(visit.cuts.map((each) => [each.limb, each.kind]))
  for (const { surveyed: limb, lowest } of tree.limbs) {
    const kind = cut.get(limb)
    if (kind === 'remove' || !inClearance({ surveyed: limb, lowest }, asked)) continue
    const done =
      kind === 'reduce' ? 'it is shortened now and not yet removed' : 'it is not removed at the first visit'
    const facts = { limb: limb.id, value: done, until }
    notes.push(treeProblem(surveyed, 'clearance-held', limb.row, 'lowestFoliage', facts))
  }
  return notes
}

/** The tree has to be taller before its crown may be raised as high as the clearance asks. */
function stagedUntil(tree: PreparedTree, clearance: number, rules: Rules): string {
  const needed = heightForClearance(clearance, rules.crownRatioGoal)
  return needed > tree.height
    ? `; a live-crown ratio of ${rules.crownRatioGoal} allows that clearance once the tree is ${showHeight(needed, tree.system)} tall`
    : ''
}
