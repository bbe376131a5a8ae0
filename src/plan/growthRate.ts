import { atLeast, isUnder } from '../formulas/boundary'
import { limbGrowth, overtoppedGrowth } from '../formulas/growth'
import type { GrowingLimb } from './growingLimb'
import type { VisitConditions } from './visitConditions'

/**
 * Growth of a limb's diameter in mm a year before a cut slows it, with its tip at a height: a shortened limb is overtopped
 * below the canopy's upper third, or below half-way between its union and the top of the tree.
 */
export function growthRate(
  limb: GrowingLimb,
  ratio: number,
  tip: number,
  shortened: boolean,
  { stemGrowth, third, height, rules }: Pick<VisitConditions, 'stemGrowth' | 'third' | 'height' | 'rules'>
): number {
  const isHigh = atLeast(tip, third)
  if (shortened) {
    const halfway = limb.origin + rules.overtoppedBelow * (height - limb.origin)
    if (!isHigh || isUnder(tip, halfway)) return overtoppedGrowth(stemGrowth, ratio, rules)
  }
  return limbGrowth(stemGrowth, ratio, isHigh, rules)
}
