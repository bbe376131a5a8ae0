import { atLeast } from '../formulas/boundary'
import type { AssessedLimb } from './assessLimb'
import type { OfferedCuts, PossibleCut } from './possibleCut'
import { reductionsOf } from './reductions'
import { removalOf } from './removal'
import { removalReason } from './removalReason'
import type { VisitConditions } from './visitConditions'
import { worthyCuts } from './worthOfCuts'

/** A limb with the cuts offered for structure. */
export interface Candidate extends AssessedLimb {
  /** Worth making, least foliage first. */
  readonly cuts: readonly PossibleCut[]
  /** How many could be made at all, worth making or not. */
  readonly possible: number
  /** What stands against every reduction where none can be made. */
  readonly barrier: OfferedCuts['barrier']
}

/** Looked at for structure: a priority of 10 or more today, and not settled. */
export function isCandidate(assessed: AssessedLimb, conditions: VisitConditions): boolean {
  const { limb, priority, settled } = assessed
  if (limb.isStem || limb.surveyed.decay || settled) return false
  return atLeast(priority, conditions.rules.clearedBelow)
}

/** A limb for which nothing is offered. */
export function withoutCuts(assessed: AssessedLimb): Candidate {
  return { ...assessed, cuts: [], possible: 0, barrier: null }
}

/** The cuts offered on a limb for structure: reductions and its removal, those that are worth it. */
export function candidateOf(assessed: AssessedLimb, conditions: VisitConditions): Candidate {
  const { limb, aspectRatio } = assessed
  const stem = { diameter: limb.stem, gain: conditions.years * conditions.stemGrowth }
  const { cuts, barrier } = reductionsOf({ limb, aspectRatio, stem }, conditions)
  const possible = removalReason(limb, aspectRatio, conditions) === null ? cuts : [...cuts, removalOf(limb)]
  return {
    ...assessed,
    cuts: worthyCuts(assessed, possible, conditions),
    possible: possible.length,
    barrier
  }
}
