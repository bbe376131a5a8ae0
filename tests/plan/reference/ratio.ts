/** Aspect ratio: the limb's diameter by that of the stem just above the union (design, section 3). */
import type { Limb } from '../../../src/inventory/inventory'

type Measured = Pick<Limb, 'diameter' | 'stem' | 'origin' | 'measured'>

/**
 * The limbs of one trunk or limb whose unions count as one with that of the first: within one stem diameter of each other,
 * and so on from union to union.
 */
export function unionOf<L extends Measured>(limb: L, siblings: readonly L[]): L[] {
  const together = [limb]
  for (let grown = true; grown;) {
    const next = siblings.find(
      (other) => !together.includes(other) && together.some((member) => isNear(member, other))
    )
    grown = next !== undefined
    if (next !== undefined) together.push(next)
  }
  return together
}

function isNear(one: Measured, other: Measured): boolean {
  const apart = Math.abs((one.origin ?? 0) - (other.origin ?? 0)) * 1000
  return apart <= Math.max(one.stem ?? 0, other.stem ?? 0) + 1e-6
}

/** The stem just above the union; measured below, what the limbs of the union do not take of its section. */
export function stemAbove<L extends Measured>(limb: L, siblings: readonly L[]): number | null {
  if (limb.stem === null || limb.diameter === null) return null
  if (limb.measured === 'above') return limb.stem
  const taken = unionOf(limb, siblings)
    .map(({ diameter }) => (diameter ?? 0) ** 2)
    .reduce((total, each) => total + each, 0)
  const left = limb.stem ** 2 - taken
  return left > 0 ? Math.sqrt(left) : null
}
