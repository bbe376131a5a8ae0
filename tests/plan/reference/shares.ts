/** Foliage shares by cross-section, on the trunk and on a limb by the same rule (design, section 3). */
import { childrenOf, firstOrder, limbAt, type LimbNow, type TreeNow } from './model'
import { sum } from './near'

/** The stem just above the highest union; of two as high the lesser. */
export function topStem(limbs: readonly LimbNow[]): number {
  const [highest] = [...limbs].sort((a, b) => b.origin - a.origin || a.stem - b.stem)
  return highest?.stem ?? 0
}

/** S = max(Σ d² + D_top², max(D² + d²)). */
export function wholeSection(limbs: readonly LimbNow[]): number {
  const together = sum(limbs.map(({ diameter }) => diameter ** 2)) + topStem(limbs) ** 2
  return Math.max(together, ...limbs.map(({ diameter, stem }) => stem ** 2 + diameter ** 2))
}

type Tree = Pick<TreeNow, 'limbs' | 'rules'>

/** The limb's share of the tree's foliage when nothing of it was cut; an observed share wins. */
export function fullShare(tree: Tree, limb: LimbNow): number {
  const parent = limb.parent === null ? null : limbAt(tree.limbs, limb.parent)
  const beside = parent === null ? firstOrder(tree.limbs) : childrenOf(tree.limbs, parent.at)
  const whole = parent === null ? 1 : fullShare(tree, parent)
  const observed = limb.limb.foliageShare
  return observed === null
    ? (whole * limb.diameter ** 2) / wholeSection(beside)
    : Math.min(limb.hadAtSurvey > 0 ? observed / limb.hadAtSurvey : observed, whole)
}
