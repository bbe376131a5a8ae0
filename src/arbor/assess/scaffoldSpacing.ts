import { defaultRules, type Rules } from '../../../shared/rules'

/**
 * Least distance up the trunk between the permanent limbs of a tree: 3 % of its height at maturity, in that height’s
 * unit. 50 ft gives 1.5 ft.
 *
 * Source: ISA consumer brochure, Pruning Young Trees (read as reprinted).
 */
export function scaffoldSpacing(matureHeight: number, rules: Rules = defaultRules): number {
  return rules.scaffoldShare * matureHeight
}
