import type { IncludedBark } from '../../../shared/choices'
import { barkScore, defaultRules, type Rules } from '../../../shared/rules'

/** A stem that might be kept as the leader. Lean in degrees from vertical; lengths in one unit each. */
export interface LeaderCandidate {
  diameter: number
  lean: number
  height: number
  bark: IncludedBark
}

/** A house rule, in this order of weight: upright, diameter, height, no included bark. */
const weights = { upright: 4, diameter: 3, height: 2, bark: 1 } as const

/** Only stems that reach the top quarter can lead (house rule). */
const reach = 0.75

/** How well a stem would lead among the others, higher is better: 0 to 10, a house scale with no unit. */
export function leaderMerit(
  stem: LeaderCandidate,
  thickest: number,
  tallest: number,
  rules: Rules = defaultRules
): number {
  return (
    weights.upright * (1 - stem.lean / 90) +
    (weights.diameter * stem.diameter) / thickest +
    (weights.height * stem.height) / tallest +
    weights.bark * (1 - barkScore(rules, stem.bark))
  )
}

/**
 * Rank of each stem as the leader to keep, 1 the best. Stems that reach the top quarter of the tallest come first;
 * among them more upright, thicker, taller and without included bark ranks higher. Ties keep the order given. To be
 * confirmed on site: no published weights exist.
 *
 * Source of the criteria: common practice, no source; their weights are a house rule.
 */
export function leaderRank(stems: readonly LeaderCandidate[], rules: Rules = defaultRules): number[] {
  let thickest = 0
  let tallest = 0
  for (const { diameter, height } of stems) {
    thickest = Math.max(thickest, diameter)
    tallest = Math.max(tallest, height)
  }
  const scored = stems.map((stem, index) => ({
    index,
    leads: stem.height >= reach * tallest,
    merit: leaderMerit(stem, thickest, tallest, rules)
  }))
  scored.sort((a, b) => Number(b.leads) - Number(a.leads) || b.merit - a.merit || a.index - b.index)
  const ranks = new Array<number>(stems.length)
  scored.forEach(({ index }, place) => (ranks[index] = place + 1))
  return ranks
}
