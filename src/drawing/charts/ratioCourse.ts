import type { Rules } from '../../../shared/rules'
import type { Limb } from '../../inventory/inventory'
import { ratioCourses } from '../../plan/outlook'
import type { LimbState, TreePlan } from '../../plan/plan'

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

/** The limb that most needs work at the first visit. */
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
  const course = ratioCourses(plan, rules).find((each) => each.limb === limb)
  if (course === undefined) return null
  const points = (ratios: readonly (number | null)[]): RatioPoint[] =>
    course.years.flatMap((year, at) => {
      const ratio = ratios[at] ?? null
      return ratio === null ? [] : [{ year, ratio }]
    })
  const removal = plan.visits.find(({ limbs }) =>
    limbs.some((state) => state.limb === limb && state.decision === 'remove')
  )
  return {
    limb,
    pruned: points(course.pruned),
    unpruned: points(course.unpruned),
    removedIn: removal?.year ?? null
  }
}
