import type { Limits } from './choice'
import type { FamilyPrices, WeighedCut } from './families'
import type { GrowingLimb } from './growingLimb'

/** A limb with its weighed cuts and the limbs on it, as the bound of a whole tree sees it. */
export interface FamilyNode {
  readonly limb: GrowingLimb
  readonly own: readonly WeighedCut[]
  readonly children: readonly FamilyNode[]
  /** For each of its own cuts, which of the limbs on it go with it. */
  readonly goes: readonly (readonly boolean[])[]
  /** What vanishes with the limb when it goes with its parent's cut. */
  readonly relief: number
}

type Limited = Pick<Limits, 'units' | 'cuts'>

/** What the best way to treat a family is worth at prices. */
function valueOf(
  { own, children, goes }: FamilyNode,
  price: number,
  perCut: number,
  values: ReadonlyMap<FamilyNode, number>
): number {
  let best = 0
  for (const child of children) best += values.get(child) ?? 0
  own.forEach(({ gain, units, cuts }, at) => {
    let value = gain - price * units - perCut * cuts
    children.forEach((child, place) => {
      value += goes[at]?.[place] === true ? child.relief : (values.get(child) ?? 0)
    })
    best = Math.max(best, value)
  })
  return best
}

/** The values of all families at prices. */
function valuesAt(
  roots: readonly FamilyNode[],
  price: number,
  perCut: number
): { sum: number; values: Map<FamilyNode, number> } {
  const values = new Map<FamilyNode, number>()
  const visit = (node: FamilyNode): number => {
    node.children.forEach(visit)
    const value = valueOf(node, price, perCut, values)
    values.set(node, value)
    return value
  }
  return { sum: roots.reduce((all, root) => all + visit(root), 0), values }
}

const steps = 24

/** Rounds in which the two prices are set in turn; any prices give a bound. */
const rounds = 3

/** The place of the least of a convex function between 0 and an end. */
function leastOf(end: number, of: (at: number) => number): number {
  let [low, high] = [0, end]
  for (let step = 0; step < steps; step++) {
    const [one, other] = [low + (high - low) / 3, high - (high - low) / 3]
    if (of(one) <= of(other)) high = other
    else low = one
  }
  return of(0) <= of(low) ? 0 : low
}

/** The prices at which the bound on the whole tree's gain is least (Lagrange). */
export function tightestFamilyPrices(roots: readonly FamilyNode[], limits: Limited): FamilyPrices {
  let [mostPrice, mostPerCut] = [0, 0]
  const look = ({ own, children }: FamilyNode): void => {
    for (const { gain, units, cuts } of own) {
      mostPrice = Math.max(mostPrice, gain / Math.max(1, units))
      mostPerCut = Math.max(mostPerCut, gain / cuts)
    }
    children.forEach(look)
  }
  roots.forEach(look)
  const boundAt = (price: number, perCut: number): number =>
    price * limits.units + perCut * limits.cuts + valuesAt(roots, price, perCut).sum
  let [price, perCut] = [0, 0]
  for (let round = 0; round < rounds; round++) {
    price = leastOf(mostPrice, (at) => boundAt(at, perCut))
    perCut = leastOf(mostPerCut, (at) => boundAt(price, at))
  }
  const { values } = valuesAt(roots, price, perCut)
  return {
    price,
    perCut,
    values: new Map([...values].map(([node, value]) => [node.limb, value])),
    bound: boundAt(price, perCut)
  }
}
