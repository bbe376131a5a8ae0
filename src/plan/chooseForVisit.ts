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
  readonly cuts: ReadonlyMap<GrowingLimb, PossibleCut>
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
export const noCuts: CutsChosen = { cuts: new Map(), goneWithParent: new Set() }

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
  return choiceOf(tree, conditions, visit, cutsChosen(found, begun.chosen))
}

function choiceOf(
  tree: PreparedTree,
  conditions: VisitConditions,
  visit: AssessedVisit,
  { cuts, goneWithParent }: CutsChosen
): VisitChoice {
  const { before, pass, assessed, crownBefore, crown, crownBase, leaders, limits } = visit
  let base = crownBase
  if (isAnyRemoved(cuts)) {
    const roots = rootsOf(tree)
    const after = roots.filter((root) => cuts.get(root)?.kind !== 'remove')
    const sides = { before: roots.map(lowestOf), after: after.map(lowestOf) }
    base = crownBaseAfter(tree, crownBase, crown.leaderFrom, sides, conditions.rules)
  }
  return {
    cuts,
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

function isAnyRemoved(cuts: CutsChosen['cuts']): boolean {
  for (const { kind } of cuts.values()) if (kind === 'remove') return true
  return false
}

function lowestOf({ lowest }: GrowingLimb): number {
  return lowest
}

/** The cuts that the indices of a choice stand for. */
function cutsChosen({ roots, groups }: TreeGroups, indices: readonly number[]): CutsChosen {
  const cuts = new Map<GrowingLimb, PossibleCut>()
  const goneWithParent = new Set<GrowingLimb>()
  for (const [at, { limb }] of roots.entries()) {
    const index = indices[at] ?? leaveAlone
    const item = index === leaveAlone ? undefined : groups[at]?.[index]
    if (item === undefined) continue
    if ('cut' in item) cuts.set(limb, item.cut)
    else for (const [each, cut] of item.cutsMade) cuts.set(each, cut)
    addGone(goneWithParent, limb, cuts)
  }
  return { cuts, goneWithParent }
}

/** Adds the limbs on a limb that go with its cut, or with it. */
function addGone(
  gone: Set<GrowingLimb>,
  limb: GrowingLimb,
  cuts: ReadonlyMap<GrowingLimb, PossibleCut>
): void {
  for (const child of limb.children) {
    if (child.gone) continue
    if (gone.has(limb) || goesWith(child, limb, cuts.get(limb) ?? null)) gone.add(child)
    addGone(gone, child, cuts)
  }
}

/** Priority expected at the next visit under what was chosen; a limb that goes has none. */
export function priorityAfter({ limb, nextPriority }: AssessedLimb, chosen: CutsChosen): number {
  if (chosen.goneWithParent.has(limb)) return 0
  return chosen.cuts.get(limb)?.nextPriority ?? nextPriority
}
