import { shareDose } from '../formulas/cuts'
import { aspectRatio } from '../formulas/diameters'
import { growthAfterLoss, limbGrowth, ratioAfterGrowth } from '../formulas/growth'
import { standing, type Standing } from '../formulas/priority'
import { inClearance } from './clearance'
import { carried, isDefective, type GrowingLimb } from './growingLimb'
import type { Barrier, OfferedCuts, PossibleCut, Prospect } from './possibleCut'
import { reductionsOf } from './reductions'
import { removalReason } from './removalReason'
import { priorityOf, type VisitConditions } from './visitConditions'

/** A limb at one visit: where it stands, where it would stand at the next one if left alone, and the cuts offered. */
export interface AssessedLimb {
  readonly limb: GrowingLimb
  readonly aspectRatio: number
  readonly priority: number
  /** Growth of its diameter in mm a year if it is left alone. */
  readonly growth: number
  readonly nextRatio: number
  readonly nextPriority: number
  /** A competing leader: competes with the leader or more, and reaches the top quarter of the tree. */
  readonly leads: boolean
  readonly cuts: readonly PossibleCut[]
  /** What stands against every reduction where none can be made. */
  readonly barrier: Barrier | null
}

const nothing: OfferedCuts = { cuts: [], barrier: null }

/** The live limbs of a tree that are still there, in the inventory's order, assessed at this visit. */
export function assessLimbs(conditions: VisitConditions): AssessedLimb[] {
  const assessed: AssessedLimb[] = []
  for (const limb of conditions.limbs) if (!limb.gone) assessed.push(assessLimb(limb, conditions))
  return assessed
}

/** Assesses a live limb at this visit. A live cut lowers the next priority by 2 points or more. */
export function assessLimb(limb: GrowingLimb, conditions: VisitConditions): AssessedLimb {
  const { years, stemGrowth, rules, third } = conditions
  const ratio = aspectRatio(limb.diameter, limb.stem)
  const growth = limbGrowth(stemGrowth, ratio, limb.tip >= third, rules)
  const stem = { diameter: limb.stem, gain: years * stemGrowth }
  const gain = growthAfterLoss(growth, limb.loss, years, limb.lossAge, limb.fade)
  const nextRatio = ratioAfterGrowth({ diameter: limb.diameter, gain }, stem)
  const nextPriority = priorityOf(limb, nextRatio, limb.tip, conditions)
  const asked = isDefective(limb) || inClearance(limb, conditions)
  const least = asked ? 0 : rules.leastGain - 1e-9
  const offered =
    nextPriority < least || isLeftAlone(limb, ratio, conditions)
      ? nothing
      : cutsOf({ limb, growth, stem, nextPriority, least, asked }, ratio, conditions)
  return {
    limb,
    aspectRatio: ratio,
    priority: priorityOf(limb, ratio, limb.tip, conditions),
    growth,
    nextRatio,
    nextPriority,
    leads: isCompetingLeader(limb, ratio, conditions),
    cuts: offered.cuts,
    barrier: offered.barrier
  }
}

/** At planting only dead, broken and competing stems are cut. */
function isLeftAlone({ surveyed }: GrowingLimb, ratio: number, conditions: VisitConditions): boolean {
  if (conditions.allowed <= 0) return true
  if (conditions.stage !== 'planting' || surveyed.broken) return false
  return !competes(standing(ratio, surveyed.bark, conditions.rules))
}

/** Competing or codominant, and reaching the top quarter. */
function isCompetingLeader(limb: GrowingLimb, ratio: number, { rules, height }: VisitConditions): boolean {
  if (limb.parent !== null || limb.tip < rules.leaderReach * height) return false
  return competes(standing(ratio, limb.surveyed.bark, rules))
}

/** Standing that makes a limb a rival of the leader. */
function competes(place: Standing): boolean {
  return place === 'competing' || place === 'codominant'
}

/** The cuts that may be made on a limb of this ratio: reductions, least first, then its removal. */
function cutsOf(prospect: Prospect, ratio: number, conditions: VisitConditions): OfferedCuts {
  const reductions = reductionsOf(prospect, conditions)
  return removalReason(prospect.limb, ratio, conditions) === null
    ? reductions
    : { ...reductions, cuts: [...reductions.cuts, removalOf(prospect)] }
}

function removalOf({ limb, asked }: Prospect): PossibleCut {
  return {
    kind: 'remove',
    share: 1,
    cutDiameter: limb.diameter,
    cutHeight: null,
    tipAfter: limb.origin,
    dose: shareDose(1, limb.share) * carried(limb),
    nextRatio: 0,
    nextPriority: 0,
    asked: asked ? 2 : 0,
    lateral: null
  }
}
