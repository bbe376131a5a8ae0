import { visitInterval, type Rules } from '../../shared/rules'
import { ceilingPercent, percent } from '../../shared/words/percent'
import { liveCrownRatio } from '../formulas/crown'
import { allowedRemoval } from '../formulas/removal'
import type { Limb } from '../inventory/inventory'
import { isOut, treeProblem, type Findings, type Refusal, type SurveyedTree } from './checkTree'
import type { LeaderChoice, TreePlan, Visit } from './plan'
import { planVisits, type VisitsWanted } from './planVisits'
import { prepareTree, type PreparedTree } from './prepareTree'
import { applyScaffold } from './scaffold/applyScaffold'
import { allowedFirst, basics, basicsProblems, type TreeBasics } from './treeBasics'
import { firstVisitNotes, treeNotes } from './treeNotes'
import { planWithoutLimbs } from './treeWithoutLimbs'
import type { InTurns } from './turns'

/** A tree's plan, and what was found of the tree. */
export interface PlannedTree extends Findings {
  readonly plan: TreePlan
}

/** Plans a tree over its visits, in turns. */
export function* planTree(surveyed: SurveyedTree, wanted: VisitsWanted): InTurns<PlannedTree> {
  const { rules, year } = wanted
  const known = basics(surveyed.tree, rules, wanted.date)
  const unjudged = unjudgedTree(known, rules)
  const { tree } = surveyed
  if (known.form === 'palm') return palm(surveyed, { ...unjudged, notJudged: tree.limbs })
  if (tree.unplannable !== null) return asked(surveyed, tree.unplannable, unjudged, rules)
  const assumed = basicsProblems(surveyed, known, rules)
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
  const scaffold = applyScaffold(prepared, year, rules)
  const { visits, outcomes, clearance, leaders } = yield* planVisits(
    prepared,
    unjudged.allowedRemoval,
    wanted
  )
  const first = visits[0]
  const notes = treeNotes(surveyed, unjudged, { prepared, scaffold }, rules)
  const left = first === undefined ? [] : firstVisitNotes(surveyed, first, { leaders, clearance }, rules)
  const plan = {
    ...unjudged,
    leader: prepared.leader,
    liveCrownRatio: liveCrownRatio(prepared.height, prepared.crownBase),
    visits,
    outcomes,
    clearance,
    scaffold,
    notJudged: notJudged(tree.limbs, refused, prepared.leader),
    urgency: first === undefined ? 0 : urgencyOf(first, prepared)
  }
  return { plan, problems: [...assumed, ...problems, ...notes, ...left], refused }
}

/** The highest priority of a limb that may be cut for it; the stems of a multi-stem tree are not reduced for each other. */
function urgencyOf({ limbs }: Visit, { limbs: grown }: PreparedTree): number {
  let most = 0
  for (const { limb, priority } of limbs) if (priority > most && !isStem(limb, grown)) most = priority
  return most
}

function isStem(limb: Limb, grown: PreparedTree['limbs']): boolean {
  for (const each of grown) if (each.surveyed === limb) return each.isStem
  return false
}

/**
 * Life stage or form is not known: nothing is planned on a guess, and all limbs wait for the answer. A tree without limbs has
 * what its trunk alone gives.
 */
function asked(surveyed: SurveyedTree, reason: string, unjudged: TreePlan, rules: Rules): PlannedTree {
  const { limbs } = surveyed.tree
  const plan = { ...unjudged, allowedRemoval: 0, allowedBasis: 'not known', notJudged: limbs }
  if (limbs.length === 0) return planWithoutLimbs(surveyed, plan, rules)
  const rows = limbs.filter((limb) => limb.unplannable === null)
  return { plan, problems: [], refused: rows.map((limb) => ({ limb, reason })) }
}

/** A palm is refused with a sentence, all of its rows with it. */
function palm(surveyed: SurveyedTree, plan: TreePlan): PlannedTree {
  const { tree } = surveyed
  const field = tree.form === 'palm' ? 'form' : 'species'
  const found = treeProblem(surveyed, 'palm', tree.row, field)
  const rows = tree.limbs.filter((limb) => limb.unplannable === null)
  const refused = rows.length === 0 ? [null] : rows
  return {
    plan: { ...plan, allowedRemoval: 0 },
    problems: [found],
    refused: refused.map((limb) => ({ limb, reason: found.message }))
  }
}

/** The plan of a tree whose limbs cannot be judged. */
function unjudgedTree(known: TreeBasics, rules: Rules): TreePlan {
  const { tree, form, stage, vigor } = known
  return {
    tree,
    form,
    stage,
    vigor,
    leader: { limb: null, name: '', reason: 'not judged', confirm: true, lost: null },
    allowedRemoval: allowedFirst(known, rules),
    allowedBasis: allowedBasis(known, rules),
    liveCrownRatio: null,
    interval: visitInterval(rules, stage),
    visits: [],
    outcomes: [],
    clearance: null,
    scaffold: null,
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
function allowedBasis({ tree, stage, vigor, justPruned }: TreeBasics, rules: Rules): string {
  let basis = `${stage} ${ceilingPercent(allowedRemoval(stage, 'good', 0, 1, rules))}`
  if (vigor !== 'good')
    basis += `, ${vigor} vigor ${ceilingPercent(allowedRemoval(stage, vigor, 0, 1, rules))}`
  if (tree.localLimit !== null) basis += `, local limit ${ceilingPercent(tree.localLimit)}`
  const removed = tree.removed ?? 0
  if (removed > 0) basis += `, ${percent(removed)} already removed`
  if (justPruned) basis += ', pruned within a year, how much is not given'
  return basis
}
