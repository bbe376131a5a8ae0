import { shareDose } from '../formulas/cuts'
import { carried, type GrowingLimb } from './growingLimb'
import type { PossibleCut } from './possibleCut'

/** The removal of a limb. */
export function removalOf(limb: GrowingLimb): PossibleCut {
  return {
    kind: 'remove',
    share: 1,
    cutDiameter: limb.diameter,
    count: 1,
    cutHeight: null,
    distance: null,
    beyond: 1,
    tipAfter: limb.origin,
    dose: shareDose(1, limb.share) * carried(limb),
    nextRatio: 0,
    nextPriority: 0,
    lateral: null
  }
}
