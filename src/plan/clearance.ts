import { degreesApart } from './scaffold'
import type { GrowingLimb } from './growingLimb'
import type { VisitConditions } from './visitConditions'

/** The height that has to be clear, in m, and on which side of the tree. */
export type ClearanceAsked = Pick<VisitConditions, 'clearance' | 'clearanceSide' | 'rules'>

/** Its lowest foliage hangs below the height required on its side. */
export function inClearance(
  { lowest, surveyed }: Pick<GrowingLimb, 'lowest' | 'surveyed'>,
  asked: ClearanceAsked
): boolean {
  return asked.clearance !== null && lowest < asked.clearance - 1e-9 && onSide(surveyed.bearing, asked)
}

/** A limb within 60° (editable) of the side meant; unknown bearings and sides count, which errs on the safe side. */
function onSide(bearing: number | null, { clearanceSide, rules }: ClearanceAsked): boolean {
  if (bearing === null || clearanceSide === null) return true
  return degreesApart(bearing, clearanceSide) <= rules.clearanceSide
}
