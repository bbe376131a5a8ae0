import type { Limb, Tree } from '../../inventory/inventory'

/** How far a limb goes out from the trunk, and whether that was measured. Meters. */
export interface Reach {
  reach: number
  assumed: boolean
}

/** Steeper than this, an angle says nothing useful about the reach; the same limit as in the brush estimate. */
const steepest = 75

/**
 * The level distance from origin to tip: from the measured length, or from the angle and the rise. Where neither was
 * measured it is assumed from the rise: 0.6 of it for a thin limb down to 0.25 for one as thick as its stem, at least
 * 0.08 of the tree's height, at most half the tree's spread (house rule, for the drawing only).
 */
export function limbReach(limb: Limb, tree: Tree, treeHeight: number, aspectRatio: number | null): Reach {
  const rise = Math.abs((limb.tip ?? 0) - (limb.origin ?? 0))
  if (limb.length !== null && limb.length >= rise)
    return { reach: Math.sqrt(limb.length ** 2 - rise ** 2), assumed: false }
  if (limb.angle !== null && rise > 0)
    return { reach: rise * Math.tan((Math.min(limb.angle, steepest) * Math.PI) / 180), assumed: false }
  const outward = 0.6 - 0.35 * Math.min(1, aspectRatio ?? 0.4)
  const reach = Math.max(rise * outward, 0.08 * treeHeight)
  return { reach: tree.spread === null ? reach : Math.min(reach, tree.spread / 2), assumed: true }
}
