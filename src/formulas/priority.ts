import type { IncludedBark } from '../../shared/choices'
import { barkScore, defaultRules, type Rules } from '../../shared/rules'
import { atLeast, atMost, inOrder, isOver } from './boundary'
import type { LimbHeights, TreeHeights } from './heights'

/** Where a limb stands against its stem. */
export type Standing = 'subordinate' | 'gaining' | 'competing' | 'codominant'

/**
 * Where a limb stands against its stem, from the aspect ratio.
 * Codominant from 0.80, or from 0.70 with any included bark; the bands are a house choice between the sources
 * of trade knowledge named in the rule book. A ratio on a boundary belongs to it, in whatever unit it was typed.
 */
export function standing(
  aspectRatio: number,
  bark: IncludedBark = 'none',
  rules: Rules = defaultRules
): Standing {
  const codominantFrom = bark === 'none' ? rules.codominantFrom : rules.codominantIncludedFrom
  if (atLeast(aspectRatio, codominantFrom)) return 'codominant'
  if (atMost(aspectRatio, rules.subordinateUpTo)) return 'subordinate'
  return atMost(aspectRatio, rules.gainingUpTo) ? 'gaining' : 'competing'
}

/** The root of a mere rounding would be a thousand times the rounding: what lies on a boundary scores nothing. */
function part(value: number): number {
  return isOver(value, 0) ? clamp(value) : 0
}

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
export function lowAndHigh({ origin, tip }: LimbHeights, tree: TreeHeights): number {
  return reach(origin, tip, tree)
}

function reach(origin: number, tip: number, { height, crownBase }: TreeHeights): number {
  const half = height / 2
  const third = upperThird(height, crownBase)
  return Math.sqrt(part((half - origin) / half) * part((tip - third) / (height - third)))
}

/** A limb as its priority sees it. The ratio is a fraction, the heights are in the unit of the tree's. */
export interface LimbToRank extends LimbHeights {
  readonly aspectRatio: number
  readonly bark: IncludedBark
}

/**
 * Subordination priority, 0 to 100 and above where the limb is thicker than its stem:
 * 100·(0.45·A + 0.30·R + 0.15·B + 0.10·T). A house rule, with editable weights. All heights are
 * in one unit.
 */
export function priority(limb: LimbToRank, tree: TreeHeights, rules: Rules = defaultRules): number {
  return priorityAt(limb.aspectRatio, limb.origin, limb.tip, limb.bark, tree, rules)
}

/** The same of plain values: a plan asks it of every limb at every cut that is looked at. */
export function priorityAt(
  aspectRatio: number,
  origin: number,
  tip: number,
  bark: IncludedBark,
  tree: TreeHeights,
  rules: Rules
): number {
  const from = rules.ratioScoredFrom
  const ratio = aspectRatio > from ? (aspectRatio - from) / (1 - from) : 0
  const high = rules.tipScoredFrom
  const top = clamp((tip / tree.height - high) / (1 - high))
  return (
    100 *
    (rules.weightRatio * ratio +
      rules.weightReach * reach(origin, tip, tree) +
      rules.weightBark * barkScore(rules, bark) +
      rules.weightTip * top)
  )
}

/** Points that included bark adds to a priority: 0, 7.5 or 15 by the default rules. */
export function barkPoints(bark: IncludedBark, rules: Rules = defaultRules): number {
  return 100 * rules.weightBark * barkScore(rules, bark)
}

/**
 * Whether a limb is settled: a ratio of 0.50 or less with 10 points or less besides its included bark, which stays a note
 * (house rule). The ratio and the priority are those expected at the next visit.
 */
export function isSettled(
  aspectRatio: number,
  priorityThen: number,
  bark: IncludedBark,
  rules: Rules = defaultRules
): boolean {
  return (
    atMost(aspectRatio, rules.settledRatio) &&
    atMost(priorityThen - barkPoints(bark, rules), rules.settledPart)
  )
}

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
    leads: atLeast(stem.height, rules.leaderReach * tallest),
    merit: leaderMerit(stem, thickest, tallest, rules)
  }))
  scored.sort((a, b) => Number(b.leads) - Number(a.leads) || inOrder(b.merit, a.merit) || a.index - b.index)
  const ranks = new Array<number>(stems.length)
  scored.forEach(({ index }, place) => (ranks[index] = place + 1))
  return ranks
}
