import { defaultRules, type Rules } from '../../shared/rules'
import { isOver, wholeUp } from './boundary'
import type { LimbHeights } from './heights'

/**
 * Diameter at which to cut a limb so that the cut takes a share of its foliage: d·√f, foliage going with
 * cross-section.
 *
 * Source: Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167 (leaf mass linear in basal area).
 */
export function cutDiameter(limb: number, shareOfLimb: number): number {
  return limb * Math.sqrt(shareOfLimb)
}

/** Share of a limb's foliage that a cut of this diameter takes: (c/d)². */
export function cutShare(cut: number, limb: number): number {
  return (cut * cut) / (limb * limb)
}

/** Share of the tree's foliage that goes with a share of a limb's: f of what the limb carries. */
export function shareDose(shareOfLimb: number, limbShare: number): number {
  return shareOfLimb * limbShare
}

/** Share of the tree's foliage that a cut takes: (c/d)² of the limb's share. */
export function cutDose(cut: number, limb: number, limbShare: number): number {
  return shareDose(cutShare(cut, limb), limbShare)
}

/**
 * Least diameter of the lateral left at a reduction cut, as a share of the cut's diameter.
 *
 * Source: at least a third, Grabosky & Gilman 2007, AUF 33(5):360-366; half for larger cuts, ISA best management
 * practices, from memory.
 */
export function lateralMin(cut: number, fraction = 1 / 3): number {
  return cut * fraction
}

/** The share a lateral must have of a cut of this diameter in mm: a third, or half on larger cuts. */
export function lateralFraction(cutMillimeters: number, rules: Rules = defaultRules): number {
  return isOver(cutMillimeters, rules.largeCut) ? rules.lateralFractionLarge : rules.lateralFraction
}

/** Diameter of a limb at a place along it, 0 at its base and 1 at its tip: d·(1 − along), an even taper (house rule). */
export function diameterAlong(limb: number, along: number): number {
  return limb * (1 - along)
}

/** Where along a limb a cut takes the share f of its foliage, 0 at its base and 1 at its tip: 1 − √f (even taper). */
export function cutAlong(share: number): number {
  return 1 - Math.sqrt(share)
}

/** Part of a limb's length, from its tip, that goes with the share f of its foliage: √f (even taper). */
export function partBeyond(share: number): number {
  return Math.sqrt(share)
}

/** Height of a cut that takes the share f of a limb's foliage: origin + (tip − origin)·(1 − √f). */
export function cutHeight({ origin, tip }: LimbHeights, share: number): number {
  return origin + (tip - origin) * cutAlong(share)
}

/**
 * Several cuts in place of one of diameter c: (c/most)² of them, rounded up, together of the same cross-section. Diameters
 * in one unit.
 *
 * Source: ideal cut up to 2 in, Colorado State University Extension GardenNotes, Pruning Cuts; equal cross-section, equal
 * foliage is a house rule.
 */
export function severalCuts(cut: number, most: number): { count: number; diameter: number } {
  const count = countOfCuts(cut, most)
  return { count, diameter: cut / Math.sqrt(count) }
}

/** How many cuts those are: 1 where the one is not over the most. */
export function countOfCuts(cut: number, most: number): number {
  return isOver(cut, most) ? wholeUp((cut / most) ** 2) : 1
}

/** Tip of a limb after several cuts over its outer part: origin + (tip − origin)·(1 − f) (house rule). */
export function tipAfterSeveral({ origin, tip }: LimbHeights, share: number): number {
  return origin + (tip - origin) * (1 - share)
}

/**
 * Tip of a limb after a reduction: origin + (tip − origin)·(1 − (1 − ℓ)·√f), ℓ the lateral over the cut. The lateral
 * becomes the tip (house rule).
 */
export function tipAfterCut({ origin, tip }: LimbHeights, share: number, lateralRatio: number): number {
  return origin + (tip - origin) * (1 - (1 - lateralRatio) * Math.sqrt(share))
}
