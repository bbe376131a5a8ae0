import { atMost } from '../../formulas/boundary'
import type { Limb } from '../../inventory/inventory'
import type { AssessedLimb } from '../assessLimb'
import { crownBaseAfter, highestBase, rootsOf, type LeaderFoliage } from '../crown'
import { applyCut } from '../applyCut'
import type { GrowingLimb } from '../growingLimb'
import type { Hold, Obligation } from '../obligation'
import type { PossibleCut } from '../possibleCut'
import type { PreparedTree } from '../prepareTree'
import type { VisitConditions } from '../visitConditions'

/** An obligation that is met by a cut. */
export interface ObligedCut {
  /** The row it is about, and the limb as it grows; null for a leader that was lost. */
  readonly surveyed: Limb
  readonly limb: GrowingLimb | null
  /** The limb as it was before the cut; null for a leader that was lost. */
  readonly assessed: AssessedLimb | null
  readonly cut: PossibleCut
  readonly obligation: Exclude<Obligation, 'dead'>
}

/** The first pass of a visit: what is left of the allowance, the cuts made, and what waits. */
export interface FirstPass {
  readonly tree: PreparedTree
  readonly conditions: VisitConditions
  readonly leader: LeaderFoliage
  readonly assessed: ReadonlyMap<GrowingLimb, AssessedLimb>
  /** Lowest foliage of the limbs on the trunk before any cut. */
  readonly lowestBefore: readonly number[]
  left: number
  readonly made: ObligedCut[]
  /** Limbs with an obligation, and what holds those that wait. */
  readonly obliged: Map<GrowingLimb, Hold | null>
}

/** Whether a cut keeps within what is left of the allowance. */
export function fits({ left }: FirstPass, { dose }: PossibleCut): boolean {
  return atMost(dose, left)
}

/** Whether the crown keeps its ratio when a limb is removed. */
export function keepsCrown(pass: FirstPass, limb: GrowingLimb): boolean {
  if (limb.parent !== null) return true
  const { tree, conditions, leader, lowestBefore } = pass
  const { crownBase, height, rules } = conditions
  const after = rootsOf(tree).flatMap((root) => (root === limb ? [] : [root.lowest]))
  const base = crownBaseAfter(tree, crownBase, leader.leaderFrom, { before: lowestBefore, after }, rules)
  return atMost(base, highestBase(height, crownBase, rules))
}

/** Makes a cut: the limb is as it leaves it, for the second pass and the years after. */
export function make(
  pass: FirstPass,
  limb: GrowingLimb,
  cut: PossibleCut,
  obligation: ObligedCut['obligation']
): void {
  const known = pass.assessed.get(limb)
  const assessed = known === undefined ? null : { ...known, limb: { ...limb } }
  pass.made.push({ surveyed: limb.surveyed, limb, assessed, cut, obligation })
  pass.obliged.set(limb, null)
  pass.left = Math.max(0, pass.left - cut.dose)
  applyCut(limb, cut)
}
