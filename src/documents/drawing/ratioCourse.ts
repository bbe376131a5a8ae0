import { classGrowth, stageGrowthFactor, visitInterval, type Rules } from '../../../shared/rules'
import { upperThird } from '../../arbor/assess/priority'
import type { Limb } from '../../arbor/measure/inventory'
import { effectLeft, limbGrowth } from '../../arbor/plan/growth'
import type { LimbState, TreePlan } from '../../arbor/plan/plan'
import { growthYears } from '../../arbor/plan/work'

/** An aspect ratio expected in a year. */
export interface RatioPoint {
  year: number
  ratio: number
}

/** How a limb's aspect ratio goes on if the plan is carried out, and if the limb is left alone. */
export interface RatioCourse {
  limb: Limb
  pruned: RatioPoint[]
  unpruned: RatioPoint[]
  /** The year in which the limb is removed, or null. */
  removedIn: number | null
}

/** A limb's state at visit number `visit`, counted from 1, or nothing once it is gone. */
function stateAt(plan: TreePlan, limb: Limb, visit: number): LimbState | undefined {
  return plan.visits[visit - 1]?.limbs.find((state) => state.limb === limb)
}

interface Season {
  growth: number
  years: number
  third: number
}

function seasonAt(plan: TreePlan, visit: number, rules: Rules): Season {
  const { tree, stage } = plan
  const byClass = classGrowth(rules, tree.growth ?? 'medium') * stageGrowthFactor(rules, stage)
  const base = plan.visits[visit - 2]?.crownBaseAfter ?? tree.crownBase ?? 0
  return {
    growth: tree.growthRate ?? byClass,
    years: visitInterval(rules, stage),
    third: upperThird(tree.height ?? 0, base)
  }
}

/**
 * Follows the limb from visit to visit by the plan's own growth rules and gives its ratio at each visit and one
 * interval after the last; `cuts` says whether the planned cuts are made.
 */
export function followRatio(plan: TreePlan, limb: Limb, cuts: boolean, rules: Rules): RatioPoint[] {
  const first = plan.visits[0]
  const start = stateAt(plan, limb, 1)
  if (first === undefined || start === undefined || limb.diameter === null) return []
  const points: RatioPoint[] = []
  let diameter = limb.diameter
  let stem = diameter / start.aspectRatio
  let tip = limb.tip ?? 0
  let loss = limb.lastCutShare ?? 0
  let age = limb.lastCutYear === null ? 0 : Math.max(0, first.year - limb.lastCutYear)
  for (let visit = 1; visit <= plan.visits.length + 1; visit++) {
    const season = seasonAt(plan, cuts ? visit : 1, rules)
    const year = first.year + (visit - 1) * season.years
    const ratio = diameter / stem
    points.push({ year, ratio })
    if (cuts && stateAt(plan, limb, visit)?.decision === 'remove') break
    const growth = limbGrowth(season.growth, ratio, tip >= season.third, rules)
    const cut = cuts ? plan.visits[visit - 1]?.cuts.find((each) => each.limb === limb) : undefined
    if (cut !== undefined) {
      loss = 1 - (1 - loss * effectLeft(age, rules.effectYears)) * (1 - cut.share)
      age = 0
      tip = cut.tipAfter ?? tip
    }
    diameter += growth * growthYears(loss, age, season.years, rules.effectYears)
    stem += season.years * season.growth
    age += season.years
  }
  return points
}

/** The limb that most wants work at the first visit. */
export function foremostLimb(plan: TreePlan): Limb | null {
  const states = plan.visits[0]?.limbs ?? []
  return (
    states.reduce<LimbState | null>(
      (best, state) => (best === null || state.priority > best.priority ? state : best),
      null
    )?.limb ?? null
  )
}

/** The course of one limb, or null where the plan does not judge it. */
export function ratioCourse(plan: TreePlan, limb: Limb, rules: Rules): RatioCourse | null {
  const unpruned = followRatio(plan, limb, false, rules)
  if (unpruned.length === 0) return null
  const removal = plan.visits.find(({ limbs }) =>
    limbs.some((state) => state.limb === limb && state.decision === 'remove')
  )
  return { limb, pruned: followRatio(plan, limb, true, rules), unpruned, removedIn: removal?.year ?? null }
}
