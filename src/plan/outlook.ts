import { percent } from '../../shared/words/percent'
import { defaultRules, visitInterval, type Rules } from '../../shared/rules'
import { TreeCheck } from './checkTree'
import type { Limb, UnplannedList } from '../inventory/inventory'
import { setShares } from './crown'
import { lookAt } from './options'
import type { TreePlan } from './plan'
import { advance, seasonOf } from './planTree'
import { chooseForVisit } from './planVisit'
import { basics, prepareTree, type PreparedTree } from './prepareTree'

/** A limb's aspect ratio at the years of the visits, with the plan and without any pruning. */
export interface RatioCourse {
  limb: Limb
  years: number[]
  /** Null once the limb is removed. */
  pruned: (number | null)[]
  unpruned: number[]
}

/** How the first visit's cuts hold when foliage shares are wrong by their usual error. */
export interface Confidence {
  /** The error of one limb's foliage share, 0.3 for ±30 %. */
  error: number
  /** The first visit as it would be with every share that much lower, and that much higher. */
  low: PlannedCut[]
  high: PlannedCut[]
  /** Which cuts change between the two ends, a sentence each; empty where none does. */
  changes: string[]
}

export interface PlannedCut {
  limb: Limb
  kind: 'reduce' | 'remove'
  share: number
}

/** The tree made ready again from its plan; what it notes was noted when it was planned. */
function prepare(plan: TreePlan, rules: Rules): PreparedTree | null {
  const nowhere: UnplannedList = {
    sheet: '',
    address: '',
    top: 0,
    left: 0,
    matches: [],
    system: 'in-ft',
    trees: [],
    limbCount: 0,
    unplanned: [],
    problems: []
  }
  const check = new TreeCheck(nowhere, plan.tree, [])
  return prepareTree(check, basics(check, rules), rules, plan.visits[0]?.year ?? 0)
}

/**
 * How each limb's ratio goes at the planned visits' years and one interval on, beside what it would do with no pruning
 * at all, so that the effect shows. Both are forecasts by the growth rules; measure again at each visit.
 */
export function ratioCourses(plan: TreePlan, rules: Rules = defaultRules): RatioCourse[] {
  const tree = prepare(plan, rules)
  const first = plan.visits[0]
  if (tree === null || first === undefined) return []
  const interval = visitInterval(rules, tree.stage)
  const years = [
    ...plan.visits.map((visit) => visit.year),
    (plan.visits.at(-1)?.year ?? first.year) + interval
  ]
  const courses = new Map<Limb, RatioCourse>()
  for (const work of tree.works) courses.set(work.limb, { limb: work.limb, years, pruned: [], unpruned: [] })
  for (const at of years) {
    const season = seasonOf(tree, rules, tree.crownBase, interval, 0, false)
    for (const work of tree.works) {
      lookAt(work, season)
      courses.get(work.limb)?.unpruned.push(work.ratio)
    }
    if (at !== years.at(-1)) advance(tree, season)
  }
  for (const course of courses.values()) course.pruned = prunedRatios(plan, course.limb)
  return [...courses.values()]
}

/** The ratio at each visit, and as projected after the last one. */
function prunedRatios(plan: TreePlan, limb: Limb): (number | null)[] {
  const ratios = plan.visits.map(
    (visit) => visit.limbs.find((state) => state.limb === limb)?.aspectRatio ?? null
  )
  const last = plan.visits.at(-1)
  const cut = last?.cuts.find((each) => each.limb === limb)
  const state = last?.limbs.find((each) => each.limb === limb)
  if (cut !== undefined) ratios.push(cut.projectedAspectRatio)
  else ratios.push(state === undefined || state.decision === 'remove' ? null : state.nextRatio)
  return ratios
}

/**
 * Plans the first visit again with every reckoned foliage share lower and higher by its usual error, and says which
 * cuts change. Observed shares stay as they are.
 *
 * Source of the error: ±30 % for a single limb, a house reading of open data (USFS Urban Tree Database, BAAD).
 */
export function confidenceOf(plan: TreePlan, rules: Rules = defaultRules): Confidence {
  const error = rules.foliageError
  const low = firstCuts(plan, rules, 1 - error)
  const high = firstCuts(plan, rules, 1 + error)
  return { error, low, high, changes: changesBetween(low, high) }
}

function firstCuts(plan: TreePlan, rules: Rules, factor: number): PlannedCut[] {
  const tree = prepare(plan, rules)
  if (tree === null || plan.visits.length === 0) return []
  const season = seasonOf(
    tree,
    rules,
    tree.crownBase,
    visitInterval(rules, tree.stage),
    plan.allowedRemoval,
    true
  )
  setShares(tree, factor)
  chooseForVisit(tree, season)
  return tree.works.flatMap(({ limb, chosen }) =>
    chosen === null ? [] : [{ limb, kind: chosen.kind, share: chosen.share }]
  )
}

const words = (cut: PlannedCut | undefined): string => {
  if (cut === undefined) return 'kept'
  return cut.kind === 'remove' ? 'removed' : `shortened by ${percent(cut.share)} of its foliage`
}

function changesBetween(low: readonly PlannedCut[], high: readonly PlannedCut[]): string[] {
  const limbs = new Set([...low, ...high].map(({ limb }) => limb))
  return [...limbs].flatMap((limb) => {
    const one = words(low.find((cut) => cut.limb === limb))
    const other = words(high.find((cut) => cut.limb === limb))
    return one === other
      ? []
      : [`Limb ${limb.id}: ${one} if it carries less foliage than reckoned, ${other} if more.`]
  })
}
