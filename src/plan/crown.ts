import type { Rules } from '../../shared/rules'
import { atMost } from '../formulas/boundary'
import { crownSection, foliageShare, shareBelow } from '../formulas/crown'
import type { LowerRule } from './families'
import { carried, foliageFrom, type GrowingLimb } from './growingLimb'
import type { PreparedTree } from './prepareTree'
import type { VisitConditions } from './visitConditions'

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

/** The limbs on the trunk that are there. */
export function rootsOf({ limbs }: Pick<PreparedTree, 'limbs'>): GrowingLimb[] {
  return limbs.filter((limb) => limb.parent === null && !limb.gone)
}

/**
 * Gives every limb its share of the tree's foliage: d²/S on the trunk, a limb's limbs share theirs. The factor tries
 * shares that are wrong by their usual error; an observed share stays.
 */
export function setShares(tree: PreparedTree, factor = 1): void {
  const roots = rootsOf(tree)
  const unplanned = tree.unplanned.map(({ diameter }) => ({
    diameter: diameter ?? 0,
    stem: 0,
    origin: -Infinity
  }))
  const section = crownSection(unplanned.length === 0 ? roots : [...roots, ...unplanned])
  for (const root of roots) {
    root.share = observedShare(root) ?? Math.min(1, factor * foliageShare(root.diameter, section))
    if (root.children.length > 0) shareOut(root)
  }
}

/**
 * The share that was observed, as that of a limb with all its foliage: what was missing at the survey is in what was seen.
 */
function observedShare({ surveyed, hadAtSurvey }: GrowingLimb): number | null {
  const { foliageShare: observed } = surveyed
  return observed === null || hadAtSurvey <= 0 ? observed : Math.min(1, observed / hadAtSurvey)
}

function shareOut(parent: GrowingLimb): void {
  const children = parent.children.filter((child) => !child.gone)
  if (children.length === 0) return
  const section = crownSection(children)
  for (const child of children) {
    const own = observedShare(child) ?? parent.share * foliageShare(child.diameter, section)
    child.share = Math.min(own, parent.share)
    shareOut(child)
  }
}

/** What the leader carries: its share of the tree's foliage, which lies from the highest union to the top. */
export type LeaderFoliage = Pick<Crown, 'leaderShare' | 'leaderFrom'>

/** The leader's foliage before any cut of a visit. */
export function leaderFoliage(tree: PreparedTree, crownBase: number): LeaderFoliage {
  let listed = 0
  let leaderFrom = crownBase
  for (const root of tree.limbs) {
    if (root.gone || root.parent !== null) continue
    listed += root.share
    if (root.origin > leaderFrom) leaderFrom = root.origin
  }
  return { leaderShare: Math.max(0, 1 - listed), leaderFrom }
}

/**
 * What the crown allows now: who holds its base, and how much foliage has to stay in its lower two-thirds. The leader's
 * foliage is that before any cut of the visit.
 */
export function crownOf(
  tree: PreparedTree,
  { crownBase, third, rules }: Pick<VisitConditions, 'crownBase' | 'third' | 'rules'>,
  { leaderShare, leaderFrom }: LeaderFoliage = leaderFoliage(tree, crownBase)
): Crown {
  const roots = rootsOf(tree)
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
    lower: { line: third, keep },
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
export function highestBase(height: number, crownBase: number, rules: Rules): number {
  return Math.max(crownBase, height * (1 - rules.crownRatioGoal))
}

/** Up to this height foliage keeps the crown base where it may be. */
function holdsUpTo(height: number, crownBase: number, rules: Rules): number {
  return Math.max(crownBase + holding(rules), highestBase(height, crownBase, rules))
}

const nobody: Crown['holders'] = new Set()

/** The limbs of which one has to stay; none where the leader, unplanned limbs or limbs not listed hold the crown base. */
function holdersOf(
  tree: PreparedTree,
  roots: readonly GrowingLimb[],
  crownBase: number,
  leaderFrom: number,
  rules: Rules
): Crown['holders'] {
  const limit = holdsUpTo(tree.height, crownBase, rules)
  const others =
    atMost(leaderFrom, limit) ||
    tree.unplanned.some((limb) => atMost(limb.lowestFoliage ?? limb.origin ?? 0, limit))
  if (others || !roots.some((root) => atMost(root.lowest, crownBase + holding(rules)))) return nobody
  return new Set(roots.filter((root) => atMost(root.lowest, limit)))
}

/**
 * Height of the crown base once limbs were removed or raised: where it was while foliage within 152 mm of it remains,
 * otherwise the lowest foliage that does. Where no listed limb held it, it stays.
 */
export function crownBaseAfter(
  tree: PreparedTree,
  crownBase: number,
  leaderFrom: number,
  { before, after }: { readonly before: readonly number[]; readonly after: readonly number[] },
  rules: Rules
): number {
  const near = crownBase + holding(rules)
  if (!before.some((lowest) => atMost(lowest, near))) return crownBase
  let lowest = leaderFrom
  for (const each of after) if (each < lowest) lowest = each
  for (const limb of tree.unplanned) lowest = Math.min(lowest, limb.lowestFoliage ?? limb.origin ?? crownBase)
  return atMost(lowest, near) ? crownBase : lowest
}
