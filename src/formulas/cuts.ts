import { defaultRules, type Rules } from '../../shared/rules'

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

/** Share of the tree's foliage that a cut takes: (c/d)² of the limb's share. */
export function cutDose(cut: number, limb: number, limbShare: number): number {
  return cutShare(cut, limb) * limbShare
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
  return cutMillimeters > rules.largeCut ? rules.lateralFractionLarge : rules.lateralFraction
}

/**
 * Height of a cut that takes the share f of a limb's foliage: origin + (tip − origin)·(1 − √f), diameter taken
 * proportional to the length that remains (house rule).
 */
export function cutHeight(origin: number, tip: number, share: number): number {
  return origin + (tip - origin) * (1 - Math.sqrt(share))
}

/**
 * Tip of a limb after a reduction: origin + (tip − origin)·(1 − (1 − ℓ)·√f), ℓ the lateral over the cut. The lateral
 * becomes the tip (house rule).
 */
export function tipAfterCut(origin: number, tip: number, share: number, lateralRatio: number): number {
  return origin + (tip - origin) * (1 - (1 - lateralRatio) * Math.sqrt(share))
}
