import type { IncludedBark } from '../../shared/choices'
import { barkScore, defaultRules, type Rules } from '../../shared/rules'

function clamp(value: number): number {
  return value <= 0 ? 0 : value >= 1 ? 1 : value
}

/** Start of the canopy's upper third: H − (H − crown base)/3. Same unit as given. */
export function upperThird(height: number, crownBase: number): number {
  return height - (height - crownBase) / 3
}

/**
 * How much a limb starts low and reaches high, 0 to 1: √(low·high). Low falls from 1 at the ground to 0 at half the
 * tree's height, high rises from 0 at the canopy's upper third to 1 at the top.
 *
 * Source of the rule: Gilman & Black, Circular 853/MG087, Fig. 15 (limbs that originate in the bottom half and grow
 * into the upper third of the canopy); the scale between is a house rule.
 */
export function lowAndHigh(origin: number, tip: number, height: number, crownBase: number): number {
  const half = height / 2
  const third = upperThird(height, crownBase)
  return Math.sqrt(clamp((half - origin) / half) * clamp((tip - third) / (height - third)))
}

/**
 * Subordination priority, 0 to 100 and above where the limb is thicker than its stem:
 * 100·(0.45·A + 0.30·R + 0.15·B + 0.10·T). A house rule, with editable weights. The ratio is a fraction, the four
 * heights are in one unit.
 */
export function priority(
  aspectRatio: number,
  origin: number,
  tip: number,
  height: number,
  crownBase: number,
  bark: IncludedBark = 'none',
  rules: Rules = defaultRules
): number {
  const from = rules.ratioScoredFrom
  const ratio = aspectRatio > from ? (aspectRatio - from) / (1 - from) : 0
  const high = rules.tipScoredFrom
  const top = clamp((tip / height - high) / (1 - high))
  return (
    100 *
    (rules.weightRatio * ratio +
      rules.weightReach * lowAndHigh(origin, tip, height, crownBase) +
      rules.weightBark * barkScore(rules, bark) +
      rules.weightTip * top)
  )
}
