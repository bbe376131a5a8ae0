import type { AssessedLimb } from './assessLimb'
import { leaveAlone, type Effort, type Limits } from './choice'
import { choosing } from './choose'
import type { Crown } from './crown'
import {
  familyItems,
  goesWith,
  reliefOf,
  weighCuts,
  type Assessments,
  type FamilyItem,
  type Following,
  type WeighedCut
} from './families'
import { tightestFamilyPrices, type FamilyNode } from './familyBounds'
import type { InTurns } from './turns'

/** What may be done with a limb on the trunk. */
export type Group = readonly (WeighedCut | FamilyItem)[]

/** The limbs on the trunk that may be cut, or limbs on them, each with what may be done with it. */
export interface TreeGroups {
  readonly roots: readonly AssessedLimb[]
  readonly groups: readonly Group[]
}

/** What the groups of a tree are made from. */
interface ForGroups {
  readonly assessed: readonly AssessedLimb[]
  readonly crown: Crown
  readonly limits: Limits
  readonly effort: Effort
}

/** What may be done with the limbs on the trunk, each by itself; null where limbs grow on limbs. */
export function groupsOfLimbs({ assessed, crown }: ForGroups): TreeGroups | null {
  for (const { limb } of assessed) if (limb.parent !== null) return null
  const roots: AssessedLimb[] = []
  const groups: Group[] = []
  for (const root of assessed) {
    if (root.cuts.length === 0) continue
    roots.push(root)
    groups.push(weighCuts(root, crown.lower, crown.holders.has(root.limb)))
  }
  return { roots, groups }
}

/** Ways of a family kept at a time while a good choice is looked for. */
const quickly = 40

/** Part of what the best choice may gain beyond a good one that is looked through first, and how fast it is widened. */
const firstPart = 1 / 16
const widened = 4

/** What floating point may add to or take from a bound, in units of gain. */
const rounding = 1

/**
 * What may be done with the limbs on the trunk and those on them, in turns: a good choice is found first among few of their ways. Then only ways are followed that may
 * be part of a better one, or of one as good, so that the best is not missed: at first those that fall little short of the
 * bound, and more of them only while no choice among them comes that close to it.
 */
export function* groupsOfFamilies({ assessed, crown, limits, effort }: ForGroups): InTurns<TreeGroups> {
  const all: Assessments = new Map(assessed.map((each) => [each.limb, each]))
  const trunk = assessed.filter(({ limb }) => limb.parent === null)
  const nodes = trunk.map((root) => nodeOf(root, all, crown))
  const prices = tightestFamilyPrices(nodes, limits)
  const tree = { all, trunk, crown }
  const good = yield* familiesOf(tree, { limits, prices, gap: Infinity, most: quickly, effort })
  let short = prices.bound - (yield* gainOf(good, limits, effort)) + rounding
  for (let gap = short * firstPart; ; gap *= widened) {
    const enough = Math.min(gap, short)
    const groups = yield* familiesOf(tree, { limits, prices, gap: enough, most: Infinity, effort })
    if (enough === short) return groups
    short = Math.min(short, prices.bound - (yield* gainOf(groups, limits, effort)) + rounding)
    if (short <= enough) return groups
  }
}

/** The limbs of a tree as they were assessed, those on the trunk, and its crown. */
interface AssessedTree {
  readonly all: Assessments
  readonly trunk: readonly AssessedLimb[]
  readonly crown: Crown
}

/** The ways to treat each limb on the trunk with the limbs on it that are worth following. */
function* familiesOf({ all, trunk, crown }: AssessedTree, following: Following): InTurns<TreeGroups> {
  const roots: AssessedLimb[] = []
  const groups: Group[] = []
  for (const root of trunk) {
    const items = familyItems(root, { all, rule: crown.lower, following }, crown.holders.has(root.limb))
    if (items.length > 0) {
      roots.push(root)
      groups.push(items)
    }
    yield
  }
  return { roots, groups }
}

/** What the best choice among some ways gains. */
function* gainOf({ groups }: TreeGroups, limits: Limits, effort: Effort): InTurns<number> {
  const chosen = yield* choosing(groups, limits, effort)
  return chosen.reduce(
    (sum, index, at) => sum + (index === leaveAlone ? 0 : (groups[at]?.[index]?.gain ?? 0)),
    0
  )
}

function nodeOf(assessed: AssessedLimb, all: Assessments, crown: Crown): FamilyNode {
  const { limb } = assessed
  const own = weighCuts(assessed, crown.lower, false)
  const children = limb.children.flatMap((child) => all.get(child) ?? [])
  return {
    limb,
    own,
    children: children.map((child) => nodeOf(child, all, crown)),
    goes: own.map(({ cut }) => children.map((child) => goesWith(child.limb, limb, cut))),
    relief: reliefOf(assessed, all)
  }
}
