import { atLeast } from '../formulas/boundary'
import { aspectRatio } from '../formulas/diameters'
import { growthAfterLoss } from '../formulas/growth'
import { isSettled, standing } from '../formulas/priority'
import type { GrowingLimb } from './growingLimb'
import { growthRate } from './growthRate'
import type { Barrier, PossibleCut } from './possibleCut'
import { priorityOf, type VisitConditions } from './visitConditions'

/** A limb at one visit: where it stands, and where it would stand at the next one if left alone. */
export interface AssessedLimb {
  readonly limb: GrowingLimb
  readonly aspectRatio: number
  readonly priority: number
  readonly nextRatio: number
  readonly nextPriority: number
  /** At most half its stem at the next visit, with little besides its bark that speaks for a cut. */
  readonly settled: boolean
  /** A competing leader: competes with the leader or more, and reaches the top quarter of the tree. */
  readonly leads: boolean
  /** The cuts offered for structure, worth making, least foliage first; none until they are looked for. */
  cuts: readonly PossibleCut[]
  /** How many could be made at all, worth making or not. */
  possible: number
  /** What stands against every reduction where none can be made. */
  barrier: Barrier | null
}

const none: readonly PossibleCut[] = []

/** The live limbs of a tree that are still there, in the inventory's order, assessed at this visit. */
export function assessLimbs(conditions: VisitConditions): AssessedLimb[] {
  const assessed: AssessedLimb[] = []
  for (const limb of conditions.limbs) if (!limb.gone) assessed.push(assessLimb(limb, conditions))
  return assessed
}

/** Assesses a live limb at this visit. */
export function assessLimb(limb: GrowingLimb, conditions: VisitConditions): AssessedLimb {
  const { years, stemGrowth, rules } = conditions
  const ratio = aspectRatio(limb.diameter, limb.stem)
  const rate = growthRate(limb, ratio, limb.tip, limb.shortened, conditions)
  const gain = growthAfterLoss(rate, limb.loss, years, limb.lossAge, limb.fade)
  const nextRatio = aspectRatio(limb.diameter + gain, limb.stem + years * stemGrowth)
  const nextPriority = priorityOf(limb, nextRatio, limb.tip, conditions)
  return {
    limb,
    aspectRatio: ratio,
    priority: priorityOf(limb, ratio, limb.tip, conditions),
    nextRatio,
    nextPriority,
    settled: isSettled(nextRatio, nextPriority, limb.surveyed.bark, rules),
    leads: isCompetingLeader(limb, ratio, conditions),
    cuts: none,
    possible: 0,
    barrier: null
  }
}

/** Competing or codominant, and reaching the top quarter. */
function isCompetingLeader(limb: GrowingLimb, ratio: number, { rules, height }: VisitConditions): boolean {
  if (limb.parent !== null || limb.isStem || !atLeast(limb.tip, rules.leaderReach * height)) return false
  const place = standing(ratio, limb.surveyed.bark, rules)
  return place === 'competing' || place === 'codominant'
}
