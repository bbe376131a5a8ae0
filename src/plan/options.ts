import { atLeast } from '../formulas/boundary'
import type { AssessedLimb } from './assessLimb'
import { reductionsWithGain } from './reductions'
import { removalOf } from './removal'
import { removalReason } from './removalReason'
import type { VisitConditions } from './visitConditions'
import { worthyCuts } from './worthOfCuts'

/** Looked at for structure: a priority of 10 or more today, and not settled. */
export function isCandidate(assessed: AssessedLimb, conditions: VisitConditions): boolean {
  const { limb, priority, settled } = assessed
  if (limb.isStem || limb.surveyed.decay || settled) return false
  return atLeast(priority, conditions.rules.clearedBelow)
}

/** Offers the cuts of a limb for structure: reductions and its removal, those that are worth it. */
export function offerCuts(assessed: AssessedLimb, conditions: VisitConditions): void {
  const { limb, aspectRatio } = assessed
  const { cuts, possible, barrier } = reductionsWithGain(assessed, conditions)
  const removable = removalReason(limb, aspectRatio, conditions) !== null
  const offered = removable ? [...cuts, removalOf(limb)] : cuts
  if (offered.length > 0) assessed.cuts = worthyCuts(assessed, offered, conditions)
  assessed.possible = removable ? possible + 1 : possible
  assessed.barrier = barrier
}
