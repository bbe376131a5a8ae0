import { atLeast } from '../formulas/boundary'
import type { AssessedLimb } from './assessLimb'
import { reductionsOf } from './reductions'
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

/** A limb with the cuts offered for structure: reductions and its removal, those that are worth it. */
export function withCuts(assessed: AssessedLimb, conditions: VisitConditions): AssessedLimb {
  const { limb, aspectRatio } = assessed
  const stem = { diameter: limb.stem, gain: conditions.years * conditions.stemGrowth }
  const { cuts, barrier } = reductionsOf({ limb, aspectRatio, stem }, conditions)
  const possible = removalReason(limb, aspectRatio, conditions) === null ? cuts : [...cuts, removalOf(limb)]
  return {
    limb,
    aspectRatio,
    priority: assessed.priority,
    nextRatio: assessed.nextRatio,
    nextPriority: assessed.nextPriority,
    settled: assessed.settled,
    leads: assessed.leads,
    cuts: worthyCuts(assessed, possible, conditions),
    possible: possible.length,
    barrier
  }
}
