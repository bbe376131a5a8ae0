import { atMost, isUnder } from '../formulas/boundary'
import { crownBaseMax } from '../formulas/crown'
import type { Rules } from '../../shared/rules'
import { degreesApart } from './scaffold/spacing'
import type { GrowingLimb } from './growingLimb'

/** The height that is to be clear, in m, and on which side of the tree. */
export interface ClearanceAsked {
  /** Up to this height limbs are cleared now: the height required, or the highest that keeps the crown ratio. */
  readonly clearance: number | null
  /** Degrees from north of the side it is asked for; null where that is every side or none that could be read. */
  readonly clearanceSide: number | null
  readonly rules: Rules
}

/** To what height the limbs of a tree may be cleared now: the height required, as far as the crown ratio allows. */
export function clearableHeight(required: number | null, height: number, rules: Rules): number | null {
  return required === null ? null : Math.min(required, crownBaseMax(height, rules.crownRatioGoal))
}

/** Its lowest foliage hangs below the height that is cleared now, on the side it is asked for. */
export function inClearance(
  { lowest, surveyed }: Pick<GrowingLimb, 'lowest' | 'surveyed'>,
  asked: ClearanceAsked
): boolean {
  return asked.clearance !== null && isUnder(lowest, asked.clearance) && onSide(surveyed.bearing, asked)
}

/** A limb within 90° (editable) of the side meant; unknown bearings and sides count, which errs on the safe side. */
export function onSide(
  bearing: number | null,
  { clearanceSide, rules }: Pick<ClearanceAsked, 'clearanceSide' | 'rules'>
): boolean {
  if (bearing === null || clearanceSide === null) return true
  return atMost(degreesApart(bearing, clearanceSide), rules.clearanceSide)
}
