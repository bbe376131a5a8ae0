/** The limits of the tree that the second pass keeps (design, section 3). */
import { lowestFoliage } from './hanging'
import { firstOrder, type LimbNow, type Taken, type TreeNow } from './model'
import { atLeast, atMost, sum } from './near'
import { isBeyond } from './options'
import { leaderShare } from './shares'

/** What was taken from a limb, and from those that carry it, leaves nothing of it. */
export function isTakenAway(limbs: readonly LimbNow[], taken: readonly Taken[], limb: LimbNow): boolean {
  if (taken.some(({ at, kind }) => at === limb.at && kind === 'remove')) return true
  if (limb.parent === null) return false
  const parent = limbs.find(({ at }) => at === limb.parent)
  if (parent === undefined) return false
  return isTakenAway(limbs, taken, parent) || endsBefore(taken, parent, limb)
}

/** The limb that carries another one is cut below it. */
function endsBefore(taken: readonly Taken[], parent: LimbNow, child: LimbNow): boolean {
  return taken.some(
    ({ at, kind, endsAt }) => at === parent.at && kind === 'reduce' && isBeyond(parent, child, endsAt)
  )
}

/** Foliage listed this near the crown base holds it; otherwise limbs that are not listed do. */
export function crownBaseAfter(tree: TreeNow, taken: readonly Taken[]): number {
  const { rules, base } = tree
  const live = tree.limbs.filter(({ gone, limb }) => !gone && !limb.dead)
  const holds = live.some((limb) => atMost((lowestFoliage(tree, limb) - base) * 1000, rules.crownHolding))
  if (!holds) return base
  const left = live.filter((limb) => !isTakenAway(tree.limbs, taken, limb))
  const starts = left.map((limb) => {
    const raise = taken.find(({ at, kind }) => at === limb.at && kind === 'raise')
    return Math.max(lowestFoliage(tree, limb), raise?.height ?? 0)
  })
  const highest = Math.max(...firstOrder(tree.limbs).map(({ origin }) => origin))
  return Math.max(base, Math.min(highest, ...starts))
}

function partBelow(height: number, from: number, to: number): number {
  const [low, high] = [Math.min(from, to), Math.max(from, to)]
  if (high - low < 1e-9) return low <= height ? 1 : 0
  return Math.min(1, Math.max(0, (height - low) / (high - low)))
}

/** The part of the foliage that hangs in the lower two-thirds of the crown. */
export function lowerFoliage(tree: TreeNow, taken: readonly Taken[]): number {
  const { height, base, limbs } = tree
  const line = base + ((height - base) * 2) / 3
  const trunk = firstOrder(limbs)
  const top = Math.max(0, ...trunk.map(({ origin }) => origin))
  const leader = leaderShare(tree)
  const parts = trunk.map((limb) => {
    const own = taken.filter(({ at }) => at === limb.at)
    const below = taken.filter(({ at }) => at !== limb.at && isCarriedBy(limbs, at, limb))
    const dose = sum([...own, ...below].map((cut) => cut.dose))
    const tip = own.find(({ kind }) => kind === 'reduce')?.tipAfter ?? limb.tip
    const start = limb.limb.lowestFoliage ?? Math.max(base, limb.origin)
    const raised = own.find(({ kind }) => kind === 'raise')?.height ?? limb.raisedTo ?? start
    const has = Math.max(0, tree.shares[limb.at]! - dose)
    return { has, low: has * partBelow(line, Math.max(start, raised), tip) }
  })
  const all = leader + sum(parts.map(({ has }) => has))
  return (leader * partBelow(line, top, height) + sum(parts.map(({ low }) => low))) / all
}

function isCarriedBy(limbs: readonly LimbNow[], at: number, carrier: LimbNow): boolean {
  const limb = limbs.find((each) => each.at === at)
  if (limb === undefined || limb.parent === null) return false
  return limb.parent === carrier.at || isCarriedBy(limbs, limb.parent, carrier)
}

/** The crown ratio and the foliage below are kept; where they are broken before cutting, they are not made worse. */
export function keepsLimits(tree: TreeNow, obliged: readonly Taken[], taken: readonly Taken[]): boolean {
  const { rules, height } = tree
  const base = crownBaseAfter(tree, taken)
  const before = crownBaseAfter(tree, obliged)
  const highest = height * (1 - rules.crownRatioGoal)
  const low = lowerFoliage(tree, taken)
  return (
    (atMost(base, highest) || atMost(base, before)) &&
    (atLeast(low, rules.lowerFoliageGoal) || atLeast(low, lowerFoliage(tree, obliged)))
  )
}
