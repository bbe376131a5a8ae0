import type { AssessedLimb } from './assessLimb'
import { leaveAlone, type Limits } from './choice'
import { beginChoice, goOn } from './choose'
import { crownBaseAfter, rootsOf, type Crown } from './crown'
import { goesWith } from './families'
import type { GrowingLimb } from './growingLimb'
import type { FirstPass } from './obligations/passState'
import type { PossibleCut } from './possibleCut'
import type { PreparedTree } from './prepareTree'
import type { VisitConditions } from './visitConditions'
import { atOnce, type InTurns } from './turns'
import { groupsOfFamilies, groupsOfLimbs, type TreeGroups } from './groupsOfTree'
import { assessVisit, type AssessedVisit } from './visitProblem'

/** What becomes of the limbs of a tree at a visit: the cut of each that is cut, and those that go with a parent's. */
export interface CutsChosen {
  /** The limbs that are cut, and the cut of each by its place among the limbs of the tree: `cutOf` finds it. */
  readonly limbsCut: readonly GrowingLimb[]
  readonly cutAt: readonly (PossibleCut | undefined)[]
  readonly goneWithParent: ReadonlySet<GrowingLimb>
}

/** The choice of a visit, with what it was made from. */
export interface VisitChoice extends CutsChosen {
  /** Every limb that was there before any cut, in the inventory's order. */
  readonly before: readonly AssessedLimb[]
  /** The first pass: the obligations that were met, and those that wait. */
  readonly pass: FirstPass
  /** Every limb that is still there after the first pass, in the inventory's order. */
  readonly assessed: readonly AssessedLimb[]
  readonly crownBefore: Crown
  /** The crown once the obligations are met, and the limits for what was chosen then. */
  readonly crown: Crown
  readonly limits: Limits
  readonly crownBaseAfter: number
  /** Competing leaders before any cut. */
  readonly leaders: number
}

/** Nothing is cut. */
export const noCuts: CutsChosen = { limbsCut: [], cutAt: [], goneWithParent: new Set() }

/** The cut of a limb that was chosen, or undefined. */
export function cutOf({ cutAt }: Pick<CutsChosen, 'cutAt'>, { place }: GrowingLimb): PossibleCut | undefined {
  return cutAt[place]
}

/**
 * Chooses for one visit, once its obligations are met: one cut a limb, or none, so that the sum of the squares of the next
 * priorities is least within the allowance and the tree's limits. Exact for these stated rules.
 */
export function chooseForVisit(tree: PreparedTree, conditions: VisitConditions): VisitChoice {
  return atOnce(choosingForVisit(tree, conditions))
}

/** The same in turns. */
export function* choosingForVisit(tree: PreparedTree, conditions: VisitConditions): InTurns<VisitChoice> {
  const visit = assessVisit(tree, conditions)
  const found = groupsOfLimbs(visit) ?? (yield* groupsOfFamilies(visit))
  if (found.groups.length === 0) return choiceOf(tree, conditions, visit, noCuts)
  const begun = beginChoice(found.groups, visit.limits)
  while (begun.chosen === null) {
    yield
    goOn(begun)
  }
  return choiceOf(tree, conditions, visit, cutsChosen(found, begun.chosen, tree))
}

function choiceOf(
  tree: PreparedTree,
  conditions: VisitConditions,
  visit: AssessedVisit,
  chosen: CutsChosen
): VisitChoice {
  const { limbsCut, cutAt, goneWithParent } = chosen
  const { before, pass, assessed, crownBefore, crown, crownBase, leaders, limits } = visit
  let base = crownBase
  if (isAnyRemoved(chosen)) {
    const sides = lowestFoliage(tree, chosen)
    base = crownBaseAfter(tree, crownBase, crown.leaderFrom, sides, conditions.rules)
  }
  return {
    limbsCut,
    cutAt,
    goneWithParent,
    before,
    pass,
    assessed,
    crownBefore,
    crown,
    limits,
    leaders,
    crownBaseAfter: base
  }
}

function isAnyRemoved(chosen: CutsChosen): boolean {
  for (const limb of chosen.limbsCut) if (cutOf(chosen, limb)?.kind === 'remove') return true
  return false
}

/** The lowest foliage of the limbs on the trunk, before the cuts and of those that are left. */
function lowestFoliage(tree: PreparedTree, chosen: CutsChosen): { before: number[]; after: number[] } {
  const before: number[] = []
  const after: number[] = []
  for (const root of rootsOf(tree)) {
    before.push(root.lowest)
    if (cutOf(chosen, root)?.kind !== 'remove') after.push(root.lowest)
  }
  return { before, after }
}

/** The cuts that the indices of a choice stand for. */
function cutsChosen(
  { roots, groups }: TreeGroups,
  indices: readonly number[],
  { limbs }: PreparedTree
): CutsChosen {
  const limbsCut: GrowingLimb[] = []
  const cutAt = new Array<PossibleCut | undefined>(limbs.length)
  const gone = new Set<GrowingLimb>()
  const take = (limb: GrowingLimb, cut: PossibleCut): void => {
    limbsCut.push(limb)
    cutAt[limb.place] = cut
  }
  for (let at = 0; at < roots.length; at++) {
    const index = indices[at] ?? leaveAlone
    const item = index === leaveAlone ? undefined : groups[at]?.[index]
    const root = roots[at]
    if (item === undefined || root === undefined) continue
    if ('cut' in item) take(root.limb, item.cut)
    else for (const [each, cut] of item.cutsMade) take(each, cut)
    if (root.limb.children.length > 0) addGone(gone, root.limb, { cutAt })
  }
  return { limbsCut, cutAt, goneWithParent: gone }
}

/** Adds the limbs on a limb that go with its cut, or with it. */
function addGone(gone: Set<GrowingLimb>, limb: GrowingLimb, chosen: Pick<CutsChosen, 'cutAt'>): void {
  for (const child of limb.children) {
    if (child.gone) continue
    if (gone.has(limb) || goesWith(child, limb, cutOf(chosen, limb) ?? null)) gone.add(child)
    addGone(gone, child, chosen)
  }
}

/** A limb goes with the cut of the limb that it grows on. */
export function isGoneWithParent({ goneWithParent }: CutsChosen, limb: GrowingLimb): boolean {
  return limb.parent !== null && goneWithParent.has(limb)
}

/** Priority expected at the next visit under what was chosen; a limb that goes has none. */
export function priorityAfter({ limb, nextPriority }: AssessedLimb, chosen: CutsChosen): number {
  if (isGoneWithParent(chosen, limb)) return 0
  return cutOf(chosen, limb)?.nextPriority ?? nextPriority
}
