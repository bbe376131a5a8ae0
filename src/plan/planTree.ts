import type { Problem } from '../../shared/problems'
import { visitInterval, type Rules } from '../../shared/rules'
import { ceilingPercent, percent } from '../../shared/words/percent'
import { liveCrownRatio } from '../formulas/crown'
import { allowedRemoval } from '../formulas/removal'
import type { Limb, Tree, UnplannedList } from '../inventory/inventory'
import { TreeCheck } from './checkTree'
import type { LeaderChoice, TreePlan } from './plan'
import { planVisits, type VisitsWanted } from './planVisits'
import { basics, prepareTree, type TreeBasics } from './prepareTree'
import { noteFirstVisit, noteTree } from './treeNotes'
import { planWithoutLimbs } from './treeWithoutLimbs'

/** What is settled once for all the trees of an inventory, and where their problems are gathered. */
export interface PlanningRun extends VisitsWanted {
  readonly inventory: UnplannedList
  readonly problems: Problem[]
}

/** Plans a tree over its visits. */
export function planTree(tree: Tree, run: PlanningRun): TreePlan {
  const { inventory, problems, rules, year } = run
  const check = new TreeCheck(inventory, tree, problems)
  const known = basics(check, rules)
  const unjudged = unjudgedTree(known, rules)
  if (tree.limbs.length === 0) return planWithoutLimbs(check, unjudged, rules)
  const prepared = prepareTree(check, known, rules, year)
  if (prepared === null) return { ...unjudged, notJudged: tree.limbs }
  noteTree(check, unjudged, prepared, rules)
  const { visits, remaining, leaders } = planVisits(prepared, unjudged.allowedRemoval, run)
  const first = visits[0]
  if (first !== undefined) noteFirstVisit(check, prepared, first, leaders, rules)
  return {
    ...unjudged,
    leader: prepared.leader,
    liveCrownRatio: liveCrownRatio(prepared.height, prepared.crownBase),
    visits,
    remaining,
    notJudged: notJudged(check, prepared.leader),
    urgency: first?.limbs.reduce((most, { priority }) => Math.max(most, priority), 0) ?? 0
  }
}

/** The plan of a tree whose limbs cannot be judged. */
function unjudgedTree(known: TreeBasics, rules: Rules): TreePlan {
  const { tree, stage, vigor } = known
  return {
    tree,
    stage,
    vigor,
    leader: { limb: null, name: '', reason: 'not judged', confirm: true, lost: null },
    allowedRemoval: allowedRemoval(stage, vigor, tree.removed, tree.localLimit ?? 1, rules),
    allowedBasis: allowedBasis(known, rules),
    liveCrownRatio: null,
    interval: visitInterval(rules, stage),
    visits: [],
    remaining: [],
    notJudged: none,
    urgency: 0
  }
}

const none: readonly Limb[] = []

function notJudged(check: TreeCheck, leader: LeaderChoice): readonly Limb[] {
  const out = check.tree.limbs.filter((limb) => check.isOut(limb) && limb !== leader.limb)
  return out.length === 0 ? none : out
}

/** How an allowance came about. */
function allowedBasis({ tree, stage, vigor }: TreeBasics, rules: Rules): string {
  let basis = `${stage} ${ceilingPercent(allowedRemoval(stage, 'good', 0, 1, rules))}`
  if (vigor !== 'good')
    basis += `, ${vigor} vigor ${ceilingPercent(allowedRemoval(stage, vigor, 0, 1, rules))}`
  if (tree.localLimit !== null) basis += `, local limit ${ceilingPercent(tree.localLimit)}`
  if (tree.removed > 0) basis += `, ${percent(tree.removed)} already removed`
  return basis
}
