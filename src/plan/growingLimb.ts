import { atLeast, inOrder, isOver, isUnder } from '../formulas/boundary'
import { foliageKept, lossAfterCut } from '../formulas/growth'
import type { Limb } from '../inventory/inventory'
import type { Permanence } from './scaffold/scaffold'

/** A reduction made earlier in the plan: its diameter, and the limb's when it was made, in mm. */
export interface EarlierCut {
  readonly diameter: number
  readonly limb: number
}

/**
 * A limb as the plan carries it from visit to visit; it belongs to the planning of one tree and never leaves it. Diameters
 * in mm, heights in m.
 */
export interface GrowingLimb {
  /** The row it was surveyed in. */
  readonly surveyed: Limb
  /** Its place among the limbs of its tree, from 0. */
  readonly place: number
  diameter: number
  /** The stem just above the union. */
  stem: number
  readonly origin: number
  tip: number
  /** Tip as first surveyed: a reduction leaves at least a third of that length. */
  readonly firstTip: number
  /** Diameter as first surveyed: a measured cut grows with its limb. */
  readonly firstDiameter: number
  /** Height of its lowest foliage. */
  lowest: number
  /** Where its foliage starts, as observed or as it was raised; null where it was not observed. */
  foliageStart: number | null
  /** Share of the tree's foliage the limb has when nothing was cut. */
  share: number
  /** Part of its foliage that it had when it was surveyed. */
  readonly hadAtSurvey: number
  /** Share of its foliage lost at its last cut, and whole years since. */
  loss: number
  lossAge: number
  /** Years over which the effect of a cut fades. */
  readonly fade: number
  parent: GrowingLimb | null
  readonly children: GrowingLimb[]
  /** Its broken or rubbing part came off, or what it rubbed did. */
  corrected: boolean
  /** Shortened at an earlier visit or season. */
  shortened: boolean
  /** The last reduction of this plan, or null. */
  earlier: EarlierCut | null
  /** What it is to the scaffold; null where that is not known. */
  permanence: Permanence | null
  /** The year by which it goes as a temporary limb of a scaffold that was chosen; otherwise null. */
  goneBy: number | null
  /** A stem of a multi-stem tree, which is not shortened for the others. */
  readonly isStem: boolean
  /** Removed, or gone with its parent. */
  gone: boolean
}

/** Share of its full foliage that a limb carries now. */
export function carried(limb: GrowingLimb): number {
  return foliageKept(limb.loss, limb.lossAge, limb.fade)
}

/** Share of the tree's foliage that a limb carries now. */
export function presentShare(limb: GrowingLimb): number {
  return limb.share * carried(limb)
}

/** Takes a share of what a limb carries. */
export function loseFoliage(limb: GrowingLimb, share: number): void {
  limb.loss = lossAfterCut(carried(limb), share)
  limb.lossAge = 0
}

/** A limb goes, and the limbs on it. */
export function takeAway(limb: GrowingLimb): void {
  limb.gone = true
  for (const child of limb.children) takeAway(child)
}

/** A limb that ends at the height it starts from has no heights along it. */
export function isLevelTo(origin: number, tip: number): boolean {
  return inOrder(origin, tip) === 0
}

/** A limb before the limbs on it; otherwise in the order given. */
export function carriersFirst(limbs: readonly GrowingLimb[]): readonly GrowingLimb[] {
  if (limbs.every(({ parent }) => parent === null)) return limbs
  return [...limbs].sort((a, b) => carriersOf(a) - carriersOf(b))
}

/** How many limbs carry it, one on the other. */
function carriersOf({ parent }: GrowingLimb): number {
  return parent === null ? 0 : 1 + carriersOf(parent)
}

/** Where a limb starts along its parent, 0 at the parent's origin and 1 at its tip, by heights. */
export function alongParent(child: GrowingLimb, parent: GrowingLimb): number {
  return (child.origin - parent.origin) / (parent.tip - parent.origin)
}

/** Where a limb's foliage starts when its tip is here: as observed, otherwise at its origin. */
export function foliageFrom(limb: GrowingLimb, tip: number): number {
  const { foliageStart } = limb
  return foliageStart !== null && isUnder(foliageStart, tip) ? foliageStart : limb.origin
}

/** Where the foliage of a limb starts that is bare inside: above its lower third, as observed; otherwise null. */
export function bareUpTo({ foliageStart, origin, tip }: GrowingLimb, part: number): number | null {
  if (foliageStart === null || !isOver(tip, origin) || atLeast(foliageStart, tip)) return null
  return isOver(foliageStart, origin + part * (tip - origin)) ? foliageStart : null
}

/** A limb that rises less than half of its measured length; its cuts are placed along it. */
export function isLevel({ surveyed, origin, firstTip }: GrowingLimb, rise: number): boolean {
  const { length } = surveyed
  return length !== null && length > 0 && isUnder(firstTip - origin, rise * length)
}

/** Part of the limb's surveyed length that is left, 1 where it was not shortened. */
export function lengthLeft({ origin, tip, firstTip }: GrowingLimb): number {
  const whole = firstTip - origin
  return isLevelTo(origin, firstTip) ? 1 : Math.min(1, Math.max(0, (tip - origin) / whole))
}

/** Broken or rubbing, and not yet dealt with. */
export function isDefective({ surveyed, corrected }: GrowingLimb): boolean {
  return (surveyed.broken || surveyed.rubbing) && !corrected
}
