/** Aspect ratio: the limb's diameter by that of the stem just above the union (design, section 3). */
import type { Limb } from '../../../src/inventory/inventory'

type Measured = Pick<Limb, 'diameter' | 'stem' | 'origin' | 'measured'>

/** The limbs of one trunk or limb whose unions count as one with that of a limb: within one stem diameter of it. */
export function unionOf<L extends Measured>(limb: L, siblings: readonly L[]): L[] {
  const apart = (other: L) => Math.abs((other.origin ?? Infinity) - (limb.origin ?? 0)) * 1000
  return siblings.filter((other) => other === limb || apart(other) <= (limb.stem ?? 0) + 1e-6)
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
