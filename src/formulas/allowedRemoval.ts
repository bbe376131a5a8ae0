import type { LifeStage, Vigor } from '../../shared/choices'
import { baseAllowance, defaultRules, vigorFactor, type Rules } from '../../shared/rules'

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
