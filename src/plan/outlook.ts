import { foliagePart } from '../../shared/words/foliageParts'
import { defaultRules, visitInterval, type Rules } from '../../shared/rules'
import type { Limb } from '../inventory/inventory'
import { assessLimbs } from './assessLimb'
import { chooseForVisit, cutOf } from './chooseForVisit'
import { firstVisit, prepareAgain } from './firstVisit'
import { growTree } from './growTree'
import type { TreePlan } from './plan'
import type { CutKind } from './possibleCut'
import type { PreparedTree } from './prepareTree'
import { conditionsOf } from './visitConditions'

/** A limb's aspect ratio at the years of the visits, with the plan and without any pruning. */
export interface RatioCourse {
  readonly limb: Limb
  readonly years: readonly number[]
  /** Null once the limb is removed. */
  readonly pruned: readonly (number | null)[]
  readonly unpruned: readonly number[]
}

/** How the first visit's cuts hold when foliage shares are wrong by their usual error. */
export interface Confidence {
  /** The error of one limb's foliage share, 0.3 for ±30 %. */
  readonly error: number
  /** The first visit as it would be with every share that much lower, and that much higher. */
  readonly low: readonly PlannedCut[]
  readonly high: readonly PlannedCut[]
  /** Which cuts change between the two ends, a sentence each; empty where none does. */
  readonly changes: readonly string[]
}

export interface PlannedCut {
  readonly limb: Limb
  readonly kind: CutKind
  readonly share: number
}

/**
 * How each limb's ratio goes at the planned visits' years and one interval on, beside what it would do with no pruning
 * at all, so that the effect shows. Both are forecasts by the growth rules; measure again at each visit.
 */
export function ratioCourses(plan: TreePlan, rules: Rules = defaultRules): RatioCourse[] {
  const first = plan.visits[0]
  const tree = first === undefined ? null : prepareAgain(plan.tree, rules, `${String(first.year)}-01-01`)
  if (first === undefined || tree === null) return []
  const interval = visitInterval(rules, tree.stage)
  const years = [
    ...plan.visits.map((visit) => visit.year),
    (plan.visits.at(-1)?.year ?? first.year) + interval
  ]
  const unpruned = unprunedRatios(tree, years, interval, rules)
  return tree.limbs.map(({ surveyed }, place) => ({
    limb: surveyed,
    years,
    pruned: prunedRatios(plan, surveyed),
    unpruned: unpruned.map((ratios) => ratios[place] ?? NaN)
  }))
}

/**
 * The ratios of the limbs at some years without any pruning. Visits stand whole intervals apart, as the plan computes
 * them; one that was moved by a year is shown as it was computed.
 */
function unprunedRatios(
  tree: PreparedTree,
  years: readonly number[],
  interval: number,
  rules: Rules
): readonly (readonly number[])[] {
  const { stage, crownBase } = tree
  const visit = { rules, stage, crownBase, year: years[0] ?? 0, years: interval, allowed: 0, first: false }
  const conditions = conditionsOf(tree, visit)
  const first = years[0] ?? 0
  let passed = 0
  return years.map((at) => {
    for (; passed < Math.floor((at - first) / interval); passed++) growTree(conditions)
    return assessLimbs(conditions).map(({ aspectRatio }) => aspectRatio)
  })
}

/** The ratio at each visit, and as projected after the last one. */
function prunedRatios(plan: TreePlan, limb: Limb): (number | null)[] {
  const ratios = plan.visits.map(
    (visit) => visit.limbs.find((state) => state.limb === limb)?.aspectRatio ?? null
  )
  const last = plan.visits.at(-1)
  const cut = last?.cuts.filter((each) => each.limb === limb).at(-1)
  const state = last?.limbs.find((each) => each.limb === limb)
  if (cut !== undefined) ratios.push(cut.projectedAspectRatio)
  else ratios.push(state === undefined || state.decision === 'remove' ? null : state.nextRatio)
  return ratios
}

/**
 * Plans the first visit again with every computed foliage share lower and higher by its usual error, and says which
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
  const [visit] = plan.visits
  const first =
    visit &&
    firstVisit(plan.tree, {
      rules,
      date: `${String(visit.year)}-01-01`,
      factor,
      allowed: plan.allowedRemoval
    })
  if (!first) return []
  const choice = chooseForVisit(first.tree, first.conditions)
  return first.tree.limbs.flatMap((limb) => {
    const obliged = choice.pass.made.filter((each) => each.limb === limb).map(({ cut }) => cut)
    const cut = cutOf(choice, limb)
    const all = cut === undefined ? obliged : [...obliged, cut]
    return all.map(({ kind, share }) => ({ limb: limb.surveyed, kind, share }))
  })
}

const words = (cut: PlannedCut | undefined): string => {
  if (cut === undefined) return 'kept'
  if (cut.kind === 'raise') return `raised, ${foliagePart(cut.share)} of its foliage`
  return cut.kind === 'remove' ? 'removed' : `reduced by ${foliagePart(cut.share)} of its foliage`
}

function changesBetween(low: readonly PlannedCut[], high: readonly PlannedCut[]): string[] {
  const limbs = new Set([...low, ...high].map(({ limb }) => limb))
  return [...limbs].flatMap((limb) => {
    const one = words(low.find((cut) => cut.limb === limb))
    const other = words(high.find((cut) => cut.limb === limb))
    return one === other
      ? []
      : [`Limb ${limb.id}: ${one} if it carries less foliage than estimated, ${other} if more.`]
  })
}
