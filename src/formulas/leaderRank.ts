import type { IncludedBark } from '../../shared/choices'
import { barkScore, defaultRules, type Rules } from '../../shared/rules'

/** A stem that might be kept as the leader. Lean in degrees from vertical; lengths in one unit each. */
export interface LeaderCandidate {
  diameter: number
  lean: number
  height: number
  bark: IncludedBark
}

/**
 * How well a stem would lead among the others, higher is better: 0 to 10 by the default rules, a house scale with no
 * unit. The rules weigh, in this order, how upright it is, its diameter, its height and clear bark.
 */
export function leaderMerit(
  stem: LeaderCandidate,
  thickest: number,
  tallest: number,
  rules: Rules = defaultRules
): number {
  return (
    rules.leaderUpright * (1 - stem.lean / 90) +
    (rules.leaderDiameter * stem.diameter) / thickest +
    (rules.leaderHeight * stem.height) / tallest +
    rules.leaderBark * (1 - barkScore(rules, stem.bark))
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
    leads: stem.height >= rules.leaderReach * tallest,
    merit: leaderMerit(stem, thickest, tallest, rules)
  }))
  scored.sort((a, b) => Number(b.leads) - Number(a.leads) || b.merit - a.merit || a.index - b.index)
  const ranks = new Array<number>(stems.length)
  scored.forEach(({ index }, place) => (ranks[index] = place + 1))
  return ranks
}
