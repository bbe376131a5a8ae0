/** Where a limb's foliage starts, and what is asked for below it (design, section 3). */
import { over, under } from './near'
import type { LimbNow, TreeModel } from './model'

/** Its foliage was observed to start above the lower third of the limb, or was raised above it. */
export function isBare({ rules }: TreeModel, { observedFrom, origin, tip }: LimbNow): boolean {
  return (
    observedFrom !== null &&
    tip > origin &&
    observedFrom < tip &&
    over(observedFrom, origin + (tip - origin) * rules.bareBelow)
  )
}

/** The height to clear: what is asked for, and not above the crown base that keeps the crown ratio. */
export function heightToClear({ tree, height, rules }: TreeModel): number | null {
  if (tree.clearance === null) return null
  return Math.min(tree.clearance, height * (1 - rules.crownRatioGoal))
}

/** A side means 90° to both hands; without a bearing or a side every limb counts. */
export function isOnSide({ tree, rules }: TreeModel, { limb }: Pick<LimbNow, 'limb'>): boolean {
  const side = tree.clearanceSide?.degrees ?? null
  if (side === null || limb.bearing === null) return true
  const apart = Math.abs(side - limb.bearing) % 360
  return !over(Math.min(apart, 360 - apart), rules.clearanceSide)
}

export function isInClearance(tree: TreeModel, limb: LimbNow): boolean {
  const height = heightToClear(tree)
  return height !== null && isOnSide(tree, limb) && under(limb.lowest, height)
}
