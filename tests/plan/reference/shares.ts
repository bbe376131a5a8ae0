/** Foliage shares by cross-section, on the trunk and on a limb by the same rule (design, section 3). */
import { partLeft } from './growth'
import { childrenOf, firstOrder, limbAt, type LimbNow, type TreeNow } from './model'
import { sum } from './near'

/** What stands for the limb's foliage: its section, less what it lost and has not regained. */
function section({ rules }: TreeNow, { diameter, losses }: LimbNow): number {
  return diameter ** 2 * partLeft(rules, losses)
}

/** The stem just above the highest union. */
export function topStem(limbs: readonly LimbNow[]): number {
  const highest = limbs.reduce<LimbNow | null>(
    (top, limb) => (top === null || limb.origin > top.origin ? limb : top),
    null
  )
  return highest?.stem ?? 0
}

/** S = max(Σ d² + D_top², max(D² + d²)). */
export function wholeSection(tree: TreeNow, limbs: readonly LimbNow[]): number {
  const together = sum(limbs.map((limb) => section(tree, limb))) + topStem(limbs) ** 2
  return Math.max(together, ...limbs.map((limb) => limb.stem ** 2 + section(tree, limb)))
}

/** The limb's share of the tree's live foliage. */
export function foliageShare(tree: TreeNow, limb: LimbNow): number {
  const parent = limb.parent === null ? null : limbAt(tree.limbs, limb.parent)
  const beside = parent === null ? firstOrder(tree.limbs) : childrenOf(tree.limbs, parent.at)
  const whole = parent === null ? 1 : foliageShare(tree, parent)
  const observed = limb.limb.foliageShare
  if (observed !== null) return Math.min(observed * partLeft(tree.rules, limb.lossesOfPlan), whole)
  return (whole * section(tree, limb)) / wholeSection(tree, beside)
}

/** What the leader carries. */
export function leaderShare(tree: TreeNow): number {
  const limbs = firstOrder(tree.limbs)
  return limbs.length === 0 ? 1 : topStem(limbs) ** 2 / wholeSection(tree, limbs)
}
