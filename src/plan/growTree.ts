import { aspectRatio } from '../formulas/diameters'
import { growthAfterLoss } from '../formulas/growth'
import type { AssessedLimb } from './assessLimb'
import { cutOf, type CutsChosen } from './chooseForVisit'
import { growthRate } from './growthRate'
import type { GrowingLimb } from './growingLimb'
import { applyCut } from './applyCut'
import type { VisitConditions } from './visitConditions'

/** Makes the cuts that were chosen; those of the first pass are made already. */
export function makeCuts(assessed: readonly Pick<AssessedLimb, 'limb'>[], chosen: CutsChosen): void {
  for (const { limb } of assessed) {
    const cut = cutOf(chosen, limb)
    if (cut !== undefined && !limb.gone) applyCut(limb, cut)
  }
}

/** Grows a limb and its stem for some years. */
export function growLimb(limb: GrowingLimb, years: number, conditions: VisitConditions): void {
  const ratio = aspectRatio(limb.diameter, limb.stem)
  const rate = growthRate(limb, ratio, limb.tip, limb.shortened, conditions)
  limb.diameter += growthAfterLoss(rate, limb.loss, years, limb.lossAge, limb.fade)
  limb.stem += years * conditions.stemGrowth
  limb.lossAge += years
}

/** Carries the limbs that are left to the next visit. */
export function growTree(conditions: VisitConditions): void {
  for (const limb of conditions.limbs) if (!limb.gone) growLimb(limb, conditions.years, conditions)
}
