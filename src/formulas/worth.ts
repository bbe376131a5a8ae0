import { defaultRules, type Rules } from '../../shared/rules'
import { isOver } from './boundary'

/** A cut as its worth is judged: its share of the tree's foliage, its diameter in mm, and the limb's priority today. */
export interface CutToJustify {
  readonly dose: number
  readonly cutDiameter: number
  readonly priority: number
}

/** Points that foliage has to be worth: 1 for each 2 % of the tree's, and never less than 2 (house rule). */
export function pointsForFoliage(dose: number, rules: Rules = defaultRules): number {
  return Math.max(rules.leastGain, dose / rules.dosePerPoint)
}

/**
 * Points by which a live cut has to lower the priority at the next visit: the greatest of 2, 1 for each 2 % of the tree's
 * foliage, 5 where the cut exceeds 2 in and 10 where it exceeds 4 in. A limb of 40 points or more today is spared the two
 * for the size (house rules).
 */
export function pointsNeeded(
  { dose, cutDiameter, priority }: CutToJustify,
  rules: Rules = defaultRules
): number {
  const least = pointsForFoliage(dose, rules)
  if (!isOver(rules.urgentFrom, priority)) return least
  if (isOver(cutDiameter, rules.reasonedCut)) return Math.max(least, rules.gainLargest)
  return isOver(cutDiameter, rules.markedCut) ? Math.max(least, rules.gainLarge) : least
}
