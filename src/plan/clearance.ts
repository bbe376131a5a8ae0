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

const sides: Record<string, number> = { n: 0, ne: 45, e: 90, se: 135, s: 180, sw: 225, w: 270, nw: 315 }

/** A limb within 60° (editable) of the side meant; unknown bearings and sides count, which errs on the safe side. */
function onSide(bearing: number | null, { clearanceSide: side, rules }: ClearanceAsked): boolean {
  const word = side
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace('north', 'n')
    .replace('south', 's')
    .replace('east', 'e')
    .replace('west', 'w')
  const middle = sides[word]
  if (bearing === null || middle === undefined) return true
  return degreesApart(bearing, middle) <= rules.clearanceSide
}
