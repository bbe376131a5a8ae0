import { refuse, type Refusal } from '../../shared/refusal'
import { atLeast, atMost, isOver } from './boundary'

/**
 * Live-crown ratio, uncompacted: (height − crown base) / height, 0 to 1. Both heights in the same unit.
 *
 * Source: Toney & Reeves 2009, West. J. Appl. For. 24(2):76-82 (uncompacted against compacted).
 */
export function liveCrownRatio(height: number, crownBase: number): number {
  return (height - crownBase) / height
}

/** What is wrong with the height of a crown base, or null where it lies within the tree. */
export function checkCrownBase(height: number, crownBase: number): Refusal | null {
  return isOver(crownBase, height)
    ? refuse('The crown base is above the top of the tree: check both heights.')
    : null
}

/** The highest crown base that keeps a live-crown ratio: height × (1 − ratio). */
export function crownBaseMax(height: number, ratio = 0.6): number {
  return height * (1 - ratio)
}

/**
 * Height a tree must reach before its crown may be raised to a clearance and keep a live-crown ratio: clearance /
 * (1 − ratio), in the clearance’s unit.
 *
 * Source: the live-crown ratio, rearranged; the ratio 0.60 is Gilman, EDIS EP276, UF/IFAS, strategy 6.
 */
export function heightForClearance(clearance: number, ratio = 0.6): number {
  return clearance / (1 - ratio)
}

/**
 * Share of the foliage of a crown that a limb carries: d²/S, with S the cross-section that the whole of it is measured
 * against, in the square of the diameter's unit.
 *
 * Source: Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167 (leaf mass linear in basal area). A single
 * limb is known to ±30 % only (house reading of open data).
 */
export function foliageShare(diameter: number, section: number): number {
  return (diameter * diameter) / section
}

/** Shares of foliage among the rows given: d²/Σd². */
export function sharesAmong(diameters: readonly number[]): number[] {
  let squares = 0
  for (const diameter of diameters) squares += diameter * diameter
  return diameters.map((diameter) => foliageShare(diameter, squares))
}

/**
 * What the whole tree's foliage is measured against: S = max(Σd² + D_top², max(D² + d²)) over the live limbs on the
 * trunk, D the stem just above each union and D_top that of the highest union. Sparse surveys leave limbs out, so S
 * comes out small and doses large, which errs on the safe side.
 */
export function crownSection(limbs: readonly { diameter: number; stem: number; origin: number }[]): number {
  let squares = 0
  let largest = 0
  let topOrigin = -Infinity
  let topStem = 0
  for (const { diameter, stem, origin } of limbs) {
    const square = diameter * diameter
    squares += square
    if (stem * stem + square > largest) largest = stem * stem + square
    if (isOver(origin, topOrigin) || (atLeast(origin, topOrigin) && stem < topStem)) {
      topOrigin = origin
      topStem = stem
    }
  }
  return Math.max(squares + topStem * topStem, largest)
}

/** The engine's shares for limbs with their stems: d²/S. */
export function sharesWithStems(
  limbs: readonly { diameter: number; stem: number; origin: number }[]
): number[] {
  const section = crownSection(limbs)
  return limbs.map(({ diameter }) => foliageShare(diameter, section))
}

/** Share of foliage spread evenly between two heights that lies below a line, 0 to 1; all heights in one unit. */
export function shareBelow(from: number, to: number, line: number): number {
  const low = from < to ? from : to
  const high = from < to ? to : from
  if (atLeast(line, high)) return 1
  return atMost(line, low) ? 0 : (line - low) / (high - low)
}

/**
 * Share of a limb's foliage that hangs below a height, its foliage spread evenly from the lowest to the tip (house rule):
 * (h − lowest)/(tip − lowest), heights in one unit; Infinity where the tip is no higher than the lowest foliage.
 */
export function raisedShare(lowest: number, tip: number, height: number): number {
  return tip > lowest ? (height - lowest) / (tip - lowest) : Infinity
}
