import { defaultRules, type Rules } from '../../shared/rules'
import { atMost, isUnder } from '../formulas/boundary'
import type { Limb, Tree } from '../inventory/inventory'

/** Two permanent limbs that start too close on the same side of the trunk. */
export interface ClosePair {
  upper: Limb
  lower: Limb
  /** Meters between their origins, and meters wanted. */
  apart: number
  wanted: number
}

/** Limbs within this many degrees of each other stand on the same side (common practice, no source). */
const sameSide = 60

/** Spacing wanted between permanent limbs on a trunk: 3 % of the mature height, in the unit given. */
export function scaffoldSpacing(matureHeight: number, rules: Rules = defaultRules): number {
  return matureHeight * rules.scaffoldShare
}

/**
 * Pairs of permanent limbs closer than the spacing on the same side of the trunk. Needs the mature height and the
 * limbs' bearings; without them there is nothing to say.
 *
 * Source: 3 % of eventual height, and never one scaffold directly above another on the same side, text of the ISA
 * consumer brochure Pruning Young Trees.
 */
export function closePairs(tree: Tree, rules: Rules = defaultRules): ClosePair[] {
  if (tree.matureHeight === null) return []
  const wanted = scaffoldSpacing(tree.matureHeight, rules)
  const permanent = tree.limbs
    .filter(
      ({ dead, parent, role, origin, bearing }) =>
        !dead &&
        parent === null &&
        role !== 'temporary' &&
        role !== 'leader' &&
        origin !== null &&
        bearing !== null
    )
    .sort((a, b) => (a.origin ?? 0) - (b.origin ?? 0))
  return permanent.flatMap((lower, at) =>
    permanent.slice(at + 1).flatMap((upper) => {
      const apart = (upper.origin ?? 0) - (lower.origin ?? 0)
      return isUnder(apart, wanted) && atMost(degreesApart(lower.bearing ?? 0, upper.bearing ?? 0), sameSide)
        ? [{ upper, lower, apart, wanted }]
        : []
    })
  )
}

/** The angle between two bearings, 0 to 180. */
export function degreesApart(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360
  return Math.min(turn, 360 - turn)
}
