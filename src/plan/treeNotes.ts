import type { Problem } from '../../shared/problems'
import type { Rules } from '../../shared/rules'
import { ratio } from '../../shared/words/figures'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import { atLeast, atMost, isOver, isUnder } from '../formulas/boundary'
import { heightForClearance, liveCrownRatio } from '../formulas/crown'
import { treeProblem, type SurveyedTree } from './checkTree'
import type { ClearanceReached, TreePlan, Visit } from './plan'
import type { PreparedTree } from './prepareTree'
import type { Scaffold } from './scaffold/scaffold'
import { scaffoldNotes } from './scaffold/scaffoldNotes'

/** What holds for the tree at every visit: its allowance, its crown, its spacing, its temporary limbs. */
export function treeNotes(
  surveyed: SurveyedTree,
  plan: Pick<TreePlan, 'allowedRemoval' | 'allowedBasis' | 'vigor'>,
  { prepared: tree, scaffold }: { readonly prepared: PreparedTree; readonly scaffold: Scaffold },
  rules: Rules
): Problem[] {
  const { row } = surveyed.tree
  const notes = [
    ...allowanceNotes(surveyed, plan),
    ...crownRatioNotes(surveyed, liveCrownRatio(tree.height, tree.crownBase), rules),
    ...scaffoldNotes(surveyed, scaffold, rules),
    ...temporaryNotes(surveyed, rules),
    ...sideNotes(surveyed)
  ]
  const observed = tree.limbs.reduce(
    (sum, limb) => sum + (limb.parent === null ? (limb.surveyed.foliageShare ?? 0) : 0),
    0
  )
  if (isOver(observed, 1)) {
    const facts = { value: percent(observed) }
    notes.push(treeProblem(surveyed, 'observed-share-too-large', row, 'foliageShare', facts))
  }
  return notes
}

/** A tree that has nothing to spare, unless its vigor says so already, or its life stage is asked. */
export function allowanceNotes(
  surveyed: SurveyedTree,
  plan: Pick<TreePlan, 'allowedRemoval' | 'allowedBasis' | 'vigor'>
): Problem[] {
  if (isOver(plan.allowedRemoval, 0) || plan.vigor === 'poor' || surveyed.tree.unplannable !== null) return []
  const facts = { value: plan.allowedBasis }
  return [treeProblem(surveyed, 'nothing-allowed', surveyed.tree.row, 'removed', facts)]
}

export function crownRatioNotes(surveyed: SurveyedTree, crownRatio: number, rules: Rules): Problem[] {
  if (atLeast(crownRatio, rules.crownRatioGoal)) return []
  const facts = { value: ratio(crownRatio), limit: ratio(rules.crownRatioGoal) }
  return [treeProblem(surveyed, 'crown-ratio-low', surveyed.tree.row, 'crownBase', facts)]
}

/** A clearance of which no side is given holds on all of them. */
function sideNotes(surveyed: SurveyedTree): Problem[] {
  const { clearance, clearanceSide, limbs, row } = surveyed.tree
  if (clearance === null || clearance <= 0 || clearanceSide !== null || limbs.length === 0) return []
  const facts = { value: showHeight(clearance, surveyed.inventory.system) }
  return [treeProblem(surveyed, 'clearance-all-sides', row, 'clearance', facts)]
}

function temporaryNotes(surveyed: SurveyedTree, rules: Rules): Problem[] {
  const { caliper, trunk, limbs, row } = surveyed.tree
  const size = caliper ?? trunk
  if (size === null || atLeast(size, rules.temporaryUpTo) || limbs.length === 0) return []
  const { system } = surveyed.inventory
  const facts = { value: showDiameter(size, system), limit: showDiameter(rules.temporaryUpTo, system) }
  return [treeProblem(surveyed, 'all-temporary', row, caliper === null ? 'trunk' : 'caliper', facts)]
}

/** What the first visit leaves: foliage that is high, competing leaders, and limbs that stay in the clearance. */
export function firstVisitNotes(
  surveyed: SurveyedTree,
  visit: Visit,
  { leaders, clearance }: { readonly leaders: number; readonly clearance: ClearanceReached | null },
  rules: Rules
): Problem[] {
  const { row } = surveyed.tree
  const notes: Problem[] = []
  if (isUnder(visit.lowerFoliageBefore, rules.lowerFoliageGoal) && visit.limbs.length > 0) {
    const facts = { value: percent(visit.lowerFoliageBefore) }
    notes.push(treeProblem(surveyed, 'lower-foliage-low', row, 'tree', facts))
  }
  if (leaders > rules.leadersAtOnce)
    notes.push(treeProblem(surveyed, 'many-leaders', row, 'tree', { count: leaders }))
  if (clearance !== null && clearance.heldBy !== null)
    notes.push(clearanceNote(surveyed, clearance, visit.allowedRemoval, rules))
  return notes
}

const holds: Record<NonNullable<ClearanceReached['heldBy']>, string> = {
  allowance: 'the allowance is used up by what hangs lower or comes first',
  'crown ratio': 'raised higher, the crown would be too short',
  size: 'a limb there is too large to remove at once',
  permanent: 'a limb there is permanent and is only raised or reduced',
  'inspect first': 'a limb there has decay or a crack, inspect it first'
}

/** What holds a clearance that is not reached at the first visit, and when it is. */
function clearanceNote(
  surveyed: SurveyedTree,
  clearance: ClearanceReached,
  allowed: number,
  rules: Rules
): Problem {
  const show = (meters: number) => showHeight(meters, surveyed.inventory.system)
  const { required, reachedNow, reachedYear, heldBy } = clearance
  const { height, row } = surveyed.tree
  const needed = heightForClearance(required, rules.crownRatioGoal)
  const tall =
    height !== null && isOver(needed, height)
      ? `; a live-crown ratio of ${ratio(rules.crownRatioGoal)} allows it once the tree is ${show(needed)} tall`
      : ''
  const when =
    reachedYear === null
      ? ', and this plan does not reach it'
      : `, and it is expected in ${String(reachedYear)}`
  const isBarred = heldBy === 'allowance' && atMost(allowed, 0)
  const why = heldBy === null ? '' : isBarred ? 'no live foliage may come off this season' : holds[heldBy]
  const facts = { value: show(reachedNow), limit: show(required), why, until: tall + when }
  return treeProblem(surveyed, 'clearance-held', row, 'clearance', facts)
}
