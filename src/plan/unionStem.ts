import { atMost } from '../formulas/boundary'
import { aspectRatio, stemAbove } from '../formulas/diameters'
import type { Limb, Tree } from '../inventory/inventory'

/**
 * The stem just above a limb's union in mm: as measured, or brought there from below; null where it was not measured or
 * where the limbs of the union together are as thick as the stem below it.
 */
export function stemAtUnion(tree: Tree, limb: Limb): number | null {
  const { stem, measured } = limb
  if (stem === null) return null
  const above = measured === 'above' ? stem : stemAbove(stem, unionSquares(tree, limb, stem))
  return above > 0 ? above : null
}

/** The aspect ratio of a limb as it was surveyed, live or dead; null where it cannot be computed. */
export function ratioAsSurveyed(tree: Tree, limb: Limb): number | null {
  const stem = stemAtUnion(tree, limb)
  return limb.diameter === null || stem === null ? null : aspectRatio(limb.diameter, stem)
}

/**
 * Σd² of the limbs whose unions are within one stem diameter of this one: they count as one union, wherever the stems of
 * the others were measured.
 */
function unionSquares(tree: Tree, limb: Limb, stem: number): number {
  let squares = 0
  for (const other of tree.limbs) {
    if (other.role === 'leader' || other.diameter === null || other.parent !== limb.parent) continue
    const together =
      other === limb ||
      (other.origin !== null && atMost(Math.abs(other.origin - (limb.origin ?? 0)) * 1000, stem))
    if (together) squares += other.diameter * other.diameter
  }
  return squares
}
