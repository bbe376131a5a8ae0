import { atMost, isOver } from '../formulas/boundary'
import { lowAndHigh } from '../formulas/priority'
import { inClearance } from './clearance'
import { isDefective, type GrowingLimb } from './growingLimb'
import { isGrown, type VisitConditions } from './visitConditions'

/** Why a live limb may be removed rather than shortened, or null; a permanent limb stays. */
export function removalReason(limb: GrowingLimb, ratio: number, conditions: VisitConditions): string | null {
  const { rules } = conditions
  if (limb.permanence === 'permanent') return null
  if (limb.permanence === 'temporary') return 'temporary'
  if (atMost(ratio, rules.removeUpToRatio) && atMost(limb.diameter, rules.removeUpTo)) {
    const reason = reasonForSubordinate(limb, conditions)
    if (reason !== null) return reason
  }
  if (endsSubordination(limb, ratio, conditions)) return 'reduced before, the end of its subordination'
  return isSmallOnYoung(limb, conditions) ? 'small limb of a young tree' : null
}

/** What stands against removing a live limb that may not be removed. */
export type RemovalBarrier = 'permanent' | 'ratio' | 'size' | 'no reason'

/**
 * What stands against removing a limb, with the ratio and the diameter in mm up to which it could be: those of a limb that
 * was shortened before where they reach further. Null where it may be removed.
 */
export function removalBarrier(
  limb: GrowingLimb,
  ratio: number,
  conditions: VisitConditions
): { readonly barrier: RemovalBarrier; readonly ratio: number; readonly diameter: number } | null {
  if (removalReason(limb, ratio, conditions) !== null) return null
  const { rules, stage } = conditions
  const isSlim = atMost(ratio, rules.removeUpToRatio)
  if (limb.permanence === 'permanent')
    return { barrier: 'permanent', ratio: rules.removeUpToRatio, diameter: rules.removeUpTo }
  if (isSlim && atMost(limb.diameter, rules.removeUpTo))
    return { barrier: 'no reason', ratio: rules.removeUpToRatio, diameter: rules.removeUpTo }
  if (limb.shortened && !isGrown(stage)) {
    const barrier = atMost(ratio, rules.stagedRemovalRatio) ? 'size' : 'ratio'
    return { barrier, ratio: rules.stagedRemovalRatio, diameter: rules.stagedRemoval }
  }
  return { barrier: isSlim ? 'size' : 'ratio', ratio: rules.removeUpToRatio, diameter: rules.removeUpTo }
}

/** What speaks against a limb of at most half its stem and at most 4 in. */
function reasonForSubordinate(limb: GrowingLimb, conditions: VisitConditions): string | null {
  const { surveyed } = limb
  if (inClearance(limb, conditions)) return 'in the clearance'
  if (isDefective(limb)) return surveyed.broken ? 'broken' : 'rubbing'
  if (surveyed.bark !== 'none') return 'included bark'
  if (lowAndHigh(limb, conditions) > 0) return 'starts low and reaches high'
  const crowding = crowdedBy(limb, conditions)
  if (crowding !== null)
    return `within ${Math.round(conditions.rules.crowdedWithin)} mm of the larger limb ${crowding.surveyed.id}`
  return limb.shortened ? 'reduced before and no longer needed' : null
}

/** A limb that was shortened at an earlier visit or season, small enough to come off. */
function endsSubordination(limb: GrowingLimb, ratio: number, { rules, stage }: VisitConditions): boolean {
  if (!limb.shortened || isGrown(stage)) return false
  return atMost(ratio, rules.stagedRemovalRatio) && atMost(limb.diameter, rules.stagedRemoval)
}

function isSmallOnYoung({ diameter }: GrowingLimb, { rules, stage }: VisitConditions): boolean {
  return (stage === 'planting' || stage === 'young') && atMost(diameter, rules.smallRemoval)
}

function crowdedBy(limb: GrowingLimb, { limbs, rules }: VisitConditions): GrowingLimb | null {
  const within = rules.crowdedWithin / 1000
  for (const other of limbs)
    if (
      other !== limb &&
      !other.gone &&
      other.parent === limb.parent &&
      other.permanence !== 'temporary' &&
      isOver(other.diameter, limb.diameter) &&
      atMost(Math.abs(other.origin - limb.origin), within)
    )
      return other
  return null
}
