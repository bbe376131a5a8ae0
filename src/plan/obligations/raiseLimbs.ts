import { atMost, inOrder } from '../../formulas/boundary'
import { raisedShare } from '../../formulas/crown'
import { cutDiameter, severalCuts, shareDose } from '../../formulas/cuts'
import { growthAfterLoss, lossAfterCut, ratioAfterGrowth } from '../../formulas/growth'
import { inClearance } from '../clearance'
import { carried, type GrowingLimb } from '../growingLimb'
import { growthRate } from '../growthRate'
import type { PossibleCut } from '../possibleCut'
import { priorityOf, type VisitConditions } from '../visitConditions'
import { fits, make, type FirstPass } from './passState'
import { removeOrShorten, wait } from './shorten'

/**
 * Clearance on its side, the lowest foliage first. A limb is raised where that takes at most half of its foliage, removed
 * where it may be, and otherwise reduced as the first step of its removal.
 */
export function clearTheSide(pass: FirstPass): void {
  const { conditions } = pass
  const { clearance } = conditions
  if (clearance === null) return
  const hanging = conditions.limbs.filter((limb) => !limb.gone && inClearance(limb, conditions))
  for (const limb of hanging.sort((a, b) => inOrder(a.lowest, b.lowest))) {
    if (limb.gone || isCut(pass, limb)) continue
    if (limb.surveyed.decay) {
      wait(pass, limb, 'inspect first')
      continue
    }
    const raising = raisingOf(limb, clearance, conditions)
    if (raising === null) {
      const hold = removeOrShorten(pass, limb, 'clearance')
      pass.obliged.set(limb, hold)
    } else if (fits(pass, raising)) make(pass, limb, raising, 'clearance')
    else wait(pass, limb, 'allowance')
  }
}

/** Cut in this pass already. */
function isCut({ made }: FirstPass, limb: GrowingLimb): boolean {
  return made.some((each) => each.limb === limb)
}

/** The side branches below a height taken off; null where that is more than half of the limb's foliage. */
function raisingOf(limb: GrowingLimb, height: number, conditions: VisitConditions): PossibleCut | null {
  const { rules } = conditions
  const share = raisedShare(limb.lowest, limb.tip, height)
  if (!atMost(share, rules.raiseUpTo)) return null
  const ratio = limb.diameter / limb.stem
  const rate = growthRate(limb, ratio, limb.tip, limb.shortened, conditions)
  const kept = carried(limb)
  const gain = growthAfterLoss(rate, lossAfterCut(kept, share), conditions.years, 0, limb.fade)
  const stem = { diameter: limb.stem, gain: conditions.years * conditions.stemGrowth }
  const nextRatio = ratioAfterGrowth({ diameter: limb.diameter, gain }, stem)
  // As thick together as a cut that takes as much; made as cuts of at most 2 in.
  const { count, diameter } = severalCuts(cutDiameter(limb.diameter, share), rules.smallCuts)
  return {
    kind: 'raise',
    share,
    cutDiameter: diameter,
    count,
    cutHeight: height,
    distance: null,
    beyond: share,
    tipAfter: limb.tip,
    dose: shareDose(share, limb.share) * kept,
    nextRatio,
    nextPriority: priorityOf(limb, nextRatio, limb.tip, conditions),
    lateral: null
  }
}
