import type { AssessedLimb } from './assessLimb'
import { leaveAlone } from './choice'
import { choose } from './choose'
import { crownBaseAfter, type Crown } from './crown'
import { goesWith } from './families'
import type { GrowingLimb } from './growingLimb'
import type { PossibleCut } from './possibleCut'
import type { PreparedTree } from './prepareTree'
import type { VisitConditions } from './visitConditions'
import { visitProblem, type VisitProblem } from './visitProblem'

/** What becomes of the limbs of a tree at a visit: the cut of each that is cut, and those that go with a parent's. */
export interface CutsChosen {
  readonly cuts: ReadonlyMap<GrowingLimb, PossibleCut>
  readonly goneWithParent: ReadonlySet<GrowingLimb>
}

/** The choice of a visit, with what it was made from. */
export interface VisitChoice extends CutsChosen {
  /** Every limb that was there, in the inventory's order. */
  readonly assessed: readonly AssessedLimb[]
  readonly crown: Crown
  readonly crownBaseAfter: number
  /** Competing leaders before any cut. */
  readonly leaders: number
}

/** Nothing is cut. */
export const noCuts: CutsChosen = { cuts: new Map(), goneWithParent: new Set() }

/**
 * Chooses for one visit: one cut a limb, or none, so that the sum of the squares of the next priorities is least within
 * the allowance and the tree's limits. Exact for these stated rules.
 */
export function chooseForVisit(tree: PreparedTree, conditions: VisitConditions): VisitChoice {
  const problem = visitProblem(tree, conditions)
  const { assessed, crown, leaders, groups, limits } = problem
  const chosen = groups.length > 0 ? cutsChosen(problem, choose(groups, limits)) : noCuts
  const base = crownBaseAfter(tree, conditions.crownBase, crown, chosen.cuts, conditions.rules)
  const { cuts, goneWithParent } = chosen
  return { cuts, goneWithParent, assessed, crown, leaders, crownBaseAfter: base }
}

/** The cuts that the indices of a choice stand for. */
function cutsChosen({ roots, groups }: VisitProblem, indices: readonly number[]): CutsChosen {
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
