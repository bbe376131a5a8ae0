import { defaultRules, type Rules } from '../../../shared/rules'
import type { Limb, Tree } from '../../inventory/inventory'
import { atMost, isUnder } from '../../formulas/boundary'
import type { ClosePair } from './scaffold'

/** Spacing wanted between permanent limbs on a trunk: 3 % of the mature height, in the unit given. */
export function scaffoldSpacing(matureHeight: number, rules: Rules = defaultRules): number {
  return matureHeight * rules.scaffoldShare
}

/** Where a limb starts: m above ground, and degrees from north where that was surveyed. */
export type Placed = Pick<Limb, 'origin' | 'bearing'>

/** How two limbs stand too close to both be permanent, or null. */
export type Closeness = 'near' | 'above' | null

/**
 * Two limbs on a trunk that start closer than the spacing, whatever side they are on, or one above the other on one side.
 *
 * Source: 3 % of eventual height, and never one scaffold directly above another on the same side, text of the ISA
 * consumer brochure Pruning Young Trees. How many degrees are one side: common practice, no source.
 */
export function closeness(one: Placed, other: Placed, spacing: number, rules: Rules): Closeness {
  if (isUnder(Math.abs((one.origin ?? 0) - (other.origin ?? 0)), spacing)) return 'near'
  return onOneSide(one, other, rules) ? 'above' : null
}

/** On the same side of the trunk; not where a bearing was not surveyed. */
function onOneSide(one: Placed, other: Placed, rules: Rules): boolean {
  if (one.bearing === null || other.bearing === null) return false
  return atMost(degreesApart(one.bearing, other.bearing), rules.scaffoldSide)
}

/** Pairs of limbs, the lower one first, that are as they should not be. */
export function pairsThat(
  limbs: readonly Limb[],
  wanted: number,
  isClose: (lower: Limb, upper: Limb) => boolean
): ClosePair[] {
  const placed = limbs
    .filter(({ origin }) => origin !== null)
    .sort((a, b) => (a.origin ?? 0) - (b.origin ?? 0) || (a.id < b.id ? -1 : 1))
  return placed.flatMap((lower, at) =>
    placed.slice(at + 1).flatMap((upper) => {
      const apart = (upper.origin ?? 0) - (lower.origin ?? 0)
      return isClose(lower, upper) ? [{ upper, lower, apart, wanted }] : []
    })
  )
}

/**
 * Limbs that start closer than the spacing on the same side of the trunk, of all that may be permanent. Needs the mature
 * height and the limbs' bearings; without them there is nothing to say.
 */
export function closePairs(tree: Tree, rules: Rules = defaultRules): ClosePair[] {
  if (tree.matureHeight === null) return []
  const wanted = scaffoldSpacing(tree.matureHeight, rules)
  const lasting = tree.limbs.filter(
    ({ dead, parent, role, permanent }) =>
      !dead && parent === null && role !== 'temporary' && role !== 'leader' && permanent !== 'no'
  )
  return pairsThat(
    lasting,
    wanted,
    (lower, upper) => closeness(lower, upper, wanted, rules) === 'near' && onOneSide(lower, upper, rules)
  )
}

/** The angle between two bearings, 0 to 180. */
export function degreesApart(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360
  return Math.min(turn, 360 - turn)
}
