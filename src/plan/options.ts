import { atLeast } from '../formulas/boundary'
import type { AssessedLimb } from './assessLimb'
import type { PossibleCut } from './possibleCut'
import { worthyReductions } from './reductions'
import { removalOf } from './removal'
import { removalReason } from './removalReason'
import type { VisitConditions } from './visitConditions'
import { whyUnworthy } from './worthOfCuts'

/** Looked at for structure: a priority of 10 or more today, and not settled. */
export function isCandidate(assessed: AssessedLimb, conditions: VisitConditions): boolean {
  const { limb, priority, settled } = assessed
  if (limb.isStem || limb.surveyed.decay || settled) return false
  return atLeast(priority, conditions.rules.clearedBelow)
}

/** Offers the cuts of a limb for structure: reductions and its removal, those that are worth it. */
export function offerCuts(assessed: AssessedLimb, conditions: VisitConditions): void {
  const { limb, aspectRatio } = assessed
  const { cuts, possible, barrier } = worthyReductions(assessed, conditions)
  const removable = removalReason(limb, aspectRatio, conditions) !== null
  if (removable) assessed.cuts = withRemoval(assessed, cuts, conditions)
  else if (cuts.length > 0) assessed.cuts = cuts
  assessed.possible = removable ? possible + 1 : possible
  assessed.barrier = barrier
}

/** The removal comes after the reductions, as it takes the most foliage, where it is worth it beside them. */
function withRemoval(
  assessed: AssessedLimb,
  cuts: readonly PossibleCut[],
  conditions: VisitConditions
): readonly PossibleCut[] {
  const removal = removalOf(assessed.limb)
  return whyUnworthy(assessed, removal, cuts, conditions) === null ? [...cuts, removal] : cuts
}
