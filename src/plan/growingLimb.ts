import { foliageKept } from '../formulas/growth'
import type { Limb } from '../inventory/inventory'

/**
 * A limb as the plan carries it from visit to visit; it belongs to the planning of one tree and never leaves it. Diameters
 * in mm, heights in m.
 */
export interface GrowingLimb {
  /** The row it was surveyed in. */
  readonly surveyed: Limb
  diameter: number
  /** The stem just above the union. */
  stem: number
  readonly origin: number
  tip: number
  /** Tip as first surveyed: a reduction leaves at least a third of that length. */
  readonly firstTip: number
  /** Height of its lowest foliage. */
  readonly lowest: number
  /** Share of the tree's foliage the limb has when nothing was cut. */
  share: number
  /** Share of its foliage lost at its last cut, and whole years since. */
  loss: number
  lossAge: number
  /** Years over which the effect of a cut fades. */
  readonly fade: number
  parent: GrowingLimb | null
  readonly children: GrowingLimb[]
  /** Its broken or rubbing part came off at an earlier visit. */
  corrected: boolean
  /** Removed, or gone with its parent. */
  gone: boolean
}

/** Share of its full foliage that a limb carries now. */
export function carried(limb: GrowingLimb): number {
  return foliageKept(limb.loss, limb.lossAge, limb.fade)
}

/** Where a limb starts along its parent, 0 at the parent's origin and 1 at its tip, by heights. */
export function alongParent(child: GrowingLimb, parent: GrowingLimb): number {
  return (child.origin - parent.origin) / (parent.tip - parent.origin)
}

/** Where a limb's foliage starts when its tip is here: as measured, otherwise at its origin. */
export function foliageFrom(limb: GrowingLimb, tip: number): number {
  const measured = limb.surveyed.lowestFoliage
  return measured !== null && measured < tip ? measured : limb.origin
}

/** Broken or rubbing, and not yet dealt with. */
export function isDefective({ surveyed, corrected }: GrowingLimb): boolean {
  return (surveyed.broken || surveyed.rubbing) && !corrected
}
