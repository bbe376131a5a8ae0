/** The limits of the tree that the second pass keeps (design, section 3). */
import { firstOrder, type LimbNow, type Taken, type TreeNow } from './model'
import { atMost, sum } from './near'
import { isBeyond } from './reductions'

/** What was taken from a limb, or from those that carry it, leaves nothing of it. */
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

/** Where the foliage of a limb starts when cuts are made. */
function lowestAfter(taken: readonly Taken[], limb: LimbNow): number {
  const raise = taken.find(({ at, kind }) => at === limb.at && kind === 'raise')
  return Math.max(limb.lowest, raise?.height ?? 0)
}

/** Listed foliage within 152 mm of the crown base holds it; where none is there, limbs that are not listed do. */
export function crownBaseAfter(tree: TreeNow, taken: readonly Taken[]): number {
  const near = tree.crownBase + tree.rules.crownHolding / 1000
  const trunk = firstOrder(tree.limbs)
  if (!trunk.some(({ lowest }) => atMost(lowest, near))) return tree.crownBase
  const left = trunk.filter((limb) => !isTakenAway(tree.limbs, taken, limb))
  const lowest = Math.min(tree.leaderFrom, ...left.map((limb) => lowestAfter(taken, limb)))
  return atMost(lowest, near) ? tree.crownBase : lowest
}

/** The highest crown base that a tree may come to: the one that keeps its ratio, or its own where that is broken. */
export function mayCome({ height, rules, crownBase }: TreeNow, base: number): boolean {
  const goal = height * (1 - rules.crownRatioGoal)
  return atMost(base, Math.max(goal, crownBase + rules.crownHolding / 1000))
}

export function keepsCrownRatio(tree: TreeNow, taken: readonly Taken[]): boolean {
  return mayCome(tree, crownBaseAfter(tree, taken))
}

/** The part of what lies evenly between two heights that is below a line. */
function partBelow(line: number, from: number, to: number): number {
  const [low, high] = [Math.min(from, to), Math.max(from, to)]
  if (line >= high) return 1
  return line <= low ? 0 : (line - low) / (high - low)
}

/** A limb that is not measured along its length carries its foliage evenly from origin to tip. */
function low(line: number, limb: LimbNow, from: number | null, tip: number): number {
  return partBelow(line, from !== null && from < tip ? from : limb.origin, tip)
}

interface Foliage {
  readonly all: number
  readonly below: number
}

/** What a limb has, of which so much hangs in the lower two-thirds of the crown, less what is taken from it. */
function foliageOf(tree: TreeNow, taken: readonly Taken[], limb: LimbNow, line: number): Foliage {
  const cuts = taken.filter(({ at }) => at === limb.at)
  if (cuts.some(({ kind }) => kind === 'remove')) return { all: 0, below: 0 }
  const all = tree.shares[limb.at]! - sum(cuts.map(({ dose }) => dose))
  const tip = cuts[0]?.tipAfter ?? limb.tip
  return { all, below: all * low(line, limb, limb.observedFrom, tip) }
}

/** The foliage of the tree once cuts are made, and what of it hangs in the lower two-thirds of the crown. */
export function crownFoliage(tree: TreeNow, taken: readonly Taken[]): Foliage {
  const line = tree.height - (tree.height - tree.crownBase) / 3
  let all = tree.leaderShare
  let below = all * partBelow(line, tree.leaderFrom, tree.height)
  for (const limb of tree.limbs.filter(({ gone, limb: { dead } }) => !gone && !dead)) {
    const now = foliageOf(tree, taken, limb, line)
    // What a limb on a limb has is counted with the one that carries it, until it is cut by itself.
    const before = limb.parent === null ? { all: 0, below: 0 } : foliageOf(tree, [], limb, line)
    if (limb.parent !== null && isGoneWithCarrier(tree, taken, limb)) continue
    all += now.all - before.all
    below += now.below - before.below
  }
  return { all, below }
}

/** The part of the foliage that hangs in the lower two-thirds of the crown. */
export function lowerFoliage(tree: TreeNow, taken: readonly Taken[]): number {
  const { all, below } = crownFoliage(tree, taken)
  return all > 0 ? below / all : 0
}

function isGoneWithCarrier(tree: TreeNow, taken: readonly Taken[], limb: LimbNow): boolean {
  return isTakenAway(
    tree.limbs,
    taken.filter(({ at }) => at !== limb.at),
    limb
  )
}
