import { lowAndHigh } from '../formulas/priority'
import { inClearance } from './clearance'
import type { GrowingLimb } from './growingLimb'
import type { VisitConditions } from './visitConditions'

/** Why a live limb may be removed rather than shortened, or null. */
export function removalReason(limb: GrowingLimb, ratio: number, conditions: VisitConditions): string | null {
  const { rules, stage } = conditions
  const { surveyed } = limb
  if (surveyed.role === 'temporary') return 'temporary'
  if (ratio <= rules.removeUpToRatio && limb.diameter <= rules.removeUpTo) {
    if (inClearance(limb, conditions)) return 'in the clearance'
    if (surveyed.broken) return 'broken'
    if (surveyed.rubbing) return 'rubbing'
    if (surveyed.bark !== 'none') return 'included bark'
    if (lowAndHigh(limb, conditions) > 0) return 'starts low and reaches high'
    const crowding = crowdedBy(limb, conditions)
    if (crowding !== null)
      return `within ${Math.round(rules.crowdedWithin)} mm of the larger limb ${crowding.surveyed.id}`
  }
  const small = (stage === 'planting' || stage === 'young') && limb.diameter <= rules.smallRemoval
  return small ? 'small limb of a young tree' : null
}

function crowdedBy(limb: GrowingLimb, { limbs, rules }: VisitConditions): GrowingLimb | null {
  const within = rules.crowdedWithin / 1000
  for (const other of limbs)
    if (
      other !== limb &&
      !other.gone &&
      other.parent === limb.parent &&
      other.surveyed.role !== 'temporary' &&
      other.diameter > limb.diameter &&
      Math.abs(other.origin - limb.origin) < within
    )
      return other
  return null
}
