import { visitInterval, type Rules } from '../../shared/rules'
import { ceilingPercent, percent } from '../../shared/words/percent'
import { liveCrownRatio } from '../formulas/crown'
import { allowedRemoval } from '../formulas/removal'
import type { Limb } from '../inventory/inventory'
import { isOut, type Findings, type Refusal, type SurveyedTree } from './checkTree'
import type { LeaderChoice, TreePlan } from './plan'
import { planVisits, type VisitsWanted } from './planVisits'
import { basics, basicsProblems, prepareTree, type TreeBasics } from './prepareTree'
import { firstVisitNotes, treeNotes } from './treeNotes'
import { planWithoutLimbs } from './treeWithoutLimbs'

/** A tree's plan, and what was found of the tree. */
export interface PlannedTree extends Findings {
  readonly plan: TreePlan
}

/** Plans a tree over its visits. */
export function planTree(surveyed: SurveyedTree, wanted: VisitsWanted): PlannedTree {
  const { rules, year } = wanted
  const known = basics(surveyed.tree, rules)
  const unjudged = unjudgedTree(known, rules)
  const assumed = basicsProblems(surveyed, known)
  const { tree } = surveyed
  if (tree.limbs.length === 0) {
    const { plan, problems, refused } = planWithoutLimbs(surveyed, unjudged, rules)
    return { plan, problems: [...assumed, ...problems], refused }
  }
  const { prepared, problems, refused } = prepareTree(surveyed, known, rules, year)
  if (prepared === null)
    return {
      plan: { ...unjudged, notJudged: tree.limbs },
      problems: [...assumed, ...problems],
      refused
    }
  const { visits, remaining, leaders } = planVisits(prepared, unjudged.allowedRemoval, wanted)
  const first = visits[0]
  const notes = treeNotes(surveyed, unjudged, prepared, rules)
  const left = first === undefined ? [] : firstVisitNotes(surveyed, prepared, first, leaders, rules)
  const plan = {
    ...unjudged,
    leader: prepared.leader,
    liveCrownRatio: liveCrownRatio(prepared.height, prepared.crownBase),
    visits,
    remaining,
    notJudged: notJudged(tree.limbs, refused, prepared.leader),
    urgency: first?.limbs.reduce((most, { priority }) => Math.max(most, priority), 0) ?? 0
  }
  return { plan, problems: [...assumed, ...problems, ...notes, ...left], refused }
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

function notJudged(
  limbs: readonly Limb[],
  refused: readonly Refusal[],
  leader: LeaderChoice
): readonly Limb[] {
  const out = limbs.filter((limb) => isOut(limb, refused) && limb !== leader.limb)
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
