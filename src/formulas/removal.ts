import type { LifeStage, Vigor } from '../../shared/choices'
import { refuse, type Refusal } from '../../shared/refusal'
import { baseAllowance, defaultRules, vigorFactor, type Rules } from '../../shared/rules'
import { isOver, wholeUp } from './boundary'

/**
 * Share of live foliage that may come off this season: the life stage's base, times vigor, capped by a local limit,
 * less what was already removed, never below 0. A ceiling, not a target.
 *
 * Source of the bases: Colorado State University Extension GardenNotes, Pruning Mature Shade Trees (young 25 %,
 * medium 20 %, mature 10 %, stressed 0); planting 25 %, Gilman, EDIS EP276. Old 5 % and the vigor factors are common
 * practice, no source.
 */
export function allowedRemoval(
  stage: LifeStage,
  vigor: Vigor,
  removedAlready = 0,
  localLimit = 1,
  rules: Rules = defaultRules
): number {
  const seasonal = Math.min(baseAllowance(rules, stage) * vigorFactor(rules, vigor), localLimit)
  return Math.max(0, seasonal - removedAlready)
}

/**
 * Whole visits that a removal takes when each may take no more than the allowance: 42 % at 20 % takes 3. Both are
 * shares of the live foliage; regrowth between visits is left out.
 *
 * Source: arithmetic; spreading a removal over visits as in Gilman, EDIS EP276, UF/IFAS.
 */
export function visitsNeeded(needed: number, allowed: number): number | Refusal {
  if (needed === 0) return 0
  return isOver(allowed, 0)
    ? wholeUp(needed / allowed)
    : refuse('Nothing may be removed this season, so no number of visits reaches it: look again next season.')
}
