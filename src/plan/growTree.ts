import { growthAfterLoss, lossAfterCut } from '../formulas/growth'
import type { AssessedLimb } from './assessLimb'
import type { CutsChosen } from './chooseForVisit'
import { carried } from './growingLimb'
import type { VisitConditions } from './visitConditions'

/** Carries every limb to the next visit: cuts made, then years of growth. */
export function growTree(
  assessed: readonly AssessedLimb[],
  { cuts, goneWithParent }: CutsChosen,
  { years, stemGrowth }: VisitConditions
): void {
  for (const { limb, growth } of assessed) {
    const cut = cuts.get(limb)
    if (cut?.kind === 'remove' || goneWithParent.has(limb)) {
      limb.gone = true
      continue
    }
    if (cut !== undefined) {
      limb.loss = lossAfterCut(carried(limb), cut.share)
      limb.lossAge = 0
      limb.tip = cut.tipAfter
      limb.corrected = true
    }
    limb.diameter += growthAfterLoss(growth, limb.loss, years, limb.lossAge, limb.fade)
    limb.stem += years * stemGrowth
    limb.lossAge += years
  }
}
