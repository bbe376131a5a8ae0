import { atLeast, isOver, isUnder } from '../formulas/boundary'
import { heightForClearance } from '../formulas/crown'
import { yearsToHeight } from '../formulas/growth'
import type { VisitChoice } from './chooseForVisit'
import { onSide } from './clearance'
import type { GrowingLimb } from './growingLimb'
import type { ClearanceReached } from './plan'
import type { PreparedTree } from './prepareTree'
import type { VisitConditions } from './visitConditions'

/** The lowest foliage on the side for which clearance is asked, once the visit's cuts are made. */
function hangingLowest({ limbs, clearanceSide, rules }: VisitConditions): GrowingLimb | null {
  let lowest: GrowingLimb | null = null
  for (const limb of limbs) {
    if (limb.gone || !onSide(limb.surveyed.bearing, { clearanceSide, rules })) continue
    if (lowest === null || isUnder(limb.lowest, lowest.lowest)) lowest = limb
  }
  return lowest
}

/** How far the clearance is reached after the first visit, once its cuts are made; null where none is asked for. */
export function clearanceNow(
  tree: PreparedTree,
  { pass }: VisitChoice,
  conditions: VisitConditions,
  year: number
): ClearanceReached | null {
  const required = tree.tree.clearance
  if (required === null) return null
  const lowest = hangingLowest(conditions)
  if (lowest === null || atLeast(lowest.lowest, required))
    return { required, reachedNow: required, reachedYear: year, heldBy: null }
  return {
    required,
    reachedNow: lowest.lowest,
    reachedYear: null,
    heldBy: holdOf(lowest, pass.obliged, conditions)
  }
}

function holdOf(
  lowest: GrowingLimb,
  obliged: VisitChoice['pass']['obliged'],
  { clearance }: VisitConditions
): ClearanceReached['heldBy'] {
  if (clearance !== null && atLeast(lowest.lowest, clearance)) return 'crown ratio'
  return lowest.surveyed.decay ? 'inspect first' : (obliged.get(lowest) ?? 'size')
}

/** The same at a later visit, once its cuts are made: the year, where the height is reached by then. */
export function clearanceLater(
  reached: ClearanceReached | null,
  conditions: VisitConditions,
  year: number
): ClearanceReached | null {
  if (reached === null || reached.reachedYear !== null) return reached
  const lowest = hangingLowest(conditions)
  const isReached = lowest === null || atLeast(lowest.lowest, reached.required)
  return isReached ? { ...reached, reachedYear: year } : reached
}

/** Where only the crown ratio holds it at the end, the year in which the tree is forecast to be tall enough. */
export function clearanceForecast(
  reached: ClearanceReached | null,
  tree: PreparedTree,
  conditions: VisitConditions,
  surveyYear: number
): ClearanceReached | null {
  if (reached === null || reached.reachedYear !== null) return reached
  const { clearance, rules, height } = conditions
  const lowest = hangingLowest(conditions)
  if (clearance === null || lowest === null || !isOver(reached.required, clearance)) return reached
  if (!atLeast(lowest.lowest, clearance)) return reached
  const needed = heightForClearance(reached.required, rules.crownRatioGoal)
  const years = yearsToHeight(needed, height, tree.tree.trunk ?? 0, tree.stemGrowth, rules)
  return years === null ? reached : { ...reached, reachedYear: surveyYear + years }
}
