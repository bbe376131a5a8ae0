import type { Rules } from '../../shared/rules'
import { crownSection, foliageShare, shareBelow } from '../formulas/crown'
import type { LowerRule } from './families'
import { carried, foliageFrom, type GrowingLimb } from './growingLimb'
import type { PossibleCut } from './possibleCut'
import type { PreparedTree } from './prepareTree'

/** What a tree's crown allows at a visit. */
export interface Crown {
  /** The limbs on the trunk that may not all go, or none where something else holds the crown base. */
  holders: ReadonlySet<GrowingLimb>
  lower: LowerRule
  /** Balance of the lower two-thirds before any cut, 0 or more. */
  lowerRoom: number
  lowerShare: number
  /** Foliage the leader carries, share of the tree's. */
  leaderShare: number
  leaderFrom: number
}

/**
 * Gives every limb its share of the tree's foliage: d²/S on the trunk, a limb's limbs share theirs. The factor tries
 * shares that are wrong by their usual error; an observed share stays.
 */
export function setShares(tree: PreparedTree, factor = 1): void {
  const roots = tree.limbs.filter((limb) => limb.parent === null && !limb.gone)
  const section = crownSection([
    ...roots,
    ...tree.unplanned.map((limb) => ({ diameter: limb.diameter ?? 0, stem: 0, origin: -Infinity }))
  ])
  for (const root of roots) {
    root.share = root.surveyed.foliageShare ?? Math.min(1, factor * foliageShare(root.diameter, section))
    if (root.children.length > 0) shareOut(root)
  }
}

function shareOut(parent: GrowingLimb): void {
  const children = parent.children.filter((child) => !child.gone)
  if (children.length === 0) return
  const section = crownSection(children)
  for (const child of children) {
    const own = child.surveyed.foliageShare ?? parent.share * foliageShare(child.diameter, section)
    child.share = Math.min(own, parent.share)
    shareOut(child)
  }
}

/** What the crown allows now: who holds its base, and how much foliage has to stay in its lower two-thirds. */
export function crownOf(tree: PreparedTree, crownBase: number, third: number, rules: Rules): Crown {
  const roots = tree.limbs.filter((limb) => limb.parent === null && !limb.gone)
  let listed = 0
  let leaderFrom = crownBase
  for (const root of roots) {
    listed += root.share
    if (root.origin > leaderFrom) leaderFrom = root.origin
  }
  const leaderShare = Math.max(0, 1 - listed)
  const leaderLow = leaderShare * shareBelow(leaderFrom, tree.height, third)
  let low = leaderLow
  let all = leaderShare
  for (const root of roots) {
    const share = root.share * carried(root)
    all += share
    low += share * shareBelow(foliageFrom(root, root.tip), root.tip, third)
  }
  const lowerShare = all > 0 ? low / all : 0
  const keep = Math.min(rules.lowerFoliageGoal, lowerShare)
  return {
    holders: holdersOf(tree, roots, crownBase, leaderFrom, rules),
    lower: { line: third, keep, inner: rules.lowerFoliageGoal },
    lowerRoom: low - keep * all,
    lowerShare,
    leaderShare,
    leaderFrom
  }
}

/** Foliage within this of the crown base counts as holding it, in meters. */
function holding(rules: Rules): number {
  return rules.crownHolding / 1000
}

/** The highest crown base the tree may have: the goal's, or its own where it is already higher. */
function highestBase(height: number, crownBase: number, rules: Rules): number {
  return Math.max(crownBase, height * (1 - rules.crownRatioGoal))
}

function holdersOf(
  tree: PreparedTree,
  roots: readonly GrowingLimb[],
  crownBase: number,
  leaderFrom: number,
  rules: Rules
): Set<GrowingLimb> {
  const limit = highestBase(tree.height, crownBase, rules) + 1e-9
  const others =
    leaderFrom <= limit || tree.unplanned.some((limb) => (limb.lowestFoliage ?? limb.origin ?? 0) <= limit)
  if (others || !roots.some((root) => root.lowest <= crownBase + holding(rules))) return new Set()
  return new Set(roots.filter((root) => root.lowest <= limit))
}

/** Height of the crown base once the removed limbs are gone: the lowest foliage that remains. */
export function crownBaseAfter(
  tree: PreparedTree,
  crownBase: number,
  crown: Crown,
  cuts: ReadonlyMap<GrowingLimb, PossibleCut>,
  rules: Rules
): number {
  const roots = tree.limbs.filter((limb) => limb.parent === null && !limb.gone)
  const isRemoved = (root: GrowingLimb): boolean => cuts.get(root)?.kind === 'remove'
  if (!roots.some(isRemoved)) return crownBase
  if (!roots.some((root) => root.lowest <= crownBase + holding(rules))) return crownBase
  let lowest = crown.leaderFrom
  for (const root of roots) if (!isRemoved(root) && root.lowest < lowest) lowest = root.lowest
  for (const limb of tree.unplanned) lowest = Math.min(lowest, limb.lowestFoliage ?? limb.origin ?? crownBase)
  return Math.max(crownBase, lowest)
}
