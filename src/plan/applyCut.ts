import { isOver } from '../formulas/boundary'
import { alongParent, isLevelTo, loseFoliage, takeAway, type GrowingLimb } from './growingLimb'
import type { PossibleCut } from './possibleCut'

/** What a cut leaves of a limb. */
export function applyCut(limb: GrowingLimb, cut: PossibleCut): void {
  if (cut.kind === 'remove') {
    takeAway(limb)
    return
  }
  loseFoliage(limb, cut.share)
  if (cut.kind === 'raise') {
    limb.lowest = cut.cutHeight ?? limb.lowest
    limb.foliageStart = limb.lowest
    return
  }
  for (const child of limb.children) if (isBeyond(child, limb, cut)) takeAway(child)
  limb.tip = cut.tipAfter
  limb.shortened = true
  limb.earlier = { diameter: cut.cutDiameter * Math.sqrt(cut.count), limb: limb.diameter }
}

/** A limb starts beyond a cut of its parent, by heights along the parent; several cuts leave it. */
export function isBeyond(child: GrowingLimb, parent: GrowingLimb, cut: PossibleCut): boolean {
  if (cut.kind === 'remove') return true
  if (cut.kind === 'raise' || cut.count > 1 || isLevelTo(parent.origin, parent.tip)) return false
  return isOver(alongParent(child, parent), 1 - cut.beyond)
}
