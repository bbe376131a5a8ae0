import type { IncludedBark } from '../../shared/choices'
import { defaultRules, type Rules } from '../../shared/rules'

/** Where a limb stands against its stem. */
export type Standing = 'subordinate' | 'gaining' | 'competing' | 'codominant'

/**
 * Where a limb stands against its stem, from the aspect ratio.
 * Codominant from 0.80, or from 0.70 with any included bark; the bands are a house choice between the sources
 * of trade knowledge named in the rule book.
 */
export function standing(
  aspectRatio: number,
  bark: IncludedBark = 'none',
  rules: Rules = defaultRules
): Standing {
  const codominantFrom = bark === 'none' ? rules.codominantFrom : rules.codominantIncludedFrom
  if (aspectRatio >= codominantFrom) return 'codominant'
  if (aspectRatio <= rules.subordinateUpTo) return 'subordinate'
  return aspectRatio <= rules.gainingUpTo ? 'gaining' : 'competing'
}
