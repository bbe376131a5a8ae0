import { leaderRank, priority, standing } from '../src/formulas/priority'
import { checkHeights } from '../src/formulas/heights'
import type { IncludedBark } from '../shared/choices'
import { height, length, number, word } from './argument'
import { eachCell } from './runner'
import { allCells } from './together'

const aspect = number('aspect_ratio', { over: 0, advice: 'compute it with ASPECTRATIO' })
const bark = word('included_bark', 'includedBark', 'none')

const stands = eachCell([aspect, bark], (ratio: number, included: IncludedBark) => standing(ratio, included))

/**
 * Where a limb stands against its stem: subordinate, gaining, competing or codominant.
 * @customfunction STANDING
 * @param aspect_ratio Aspect ratio of the limb, more than 0.
 * @param [included_bark] Included bark in the union: none, partial or full. None unless given.
 * @returns subordinate up to 0.50, gaining up to 0.60, then competing; codominant from 0.80, or from 0.70 with included bark.
 * @example =LIMB.STANDING(0.65) gives competing
 * @example =LIMB.STANDING(0.72, "partial") gives codominant
 * @source Bands chosen by this project between Gilman, EDIS EP276 (0.50) and Dahle et al. 2022, Forests 13(7):1007 (0.60, 0.70 with included bark, 0.83 without).
 */
export function STANDING(aspect_ratio: unknown[][], included_bark?: unknown[][]): unknown[][] {
  return stands({ aspect_ratio, included_bark })
}

const urgent = eachCell(
  [
    aspect,
    height('origin_height'),
    height('tip_height'),
    length('tree_height'),
    height('crown_base_height'),
    bark
  ],
  (aspectRatio: number, origin: number, tip: number, top: number, base: number, included: IncludedBark) => {
    const limb = { aspectRatio, origin, tip, bark: included }
    const tree = { height: top, crownBase: base }
    return checkHeights(limb, tree) ?? priority(limb, tree)
  }
)

/**
 * Priority of a limb for subordination, 0 to 100, and above 100 where it is much thicker than its stem.
 * @customfunction PRIORITY
 * @param aspect_ratio Aspect ratio of the limb, more than 0.
 * @param origin_height Height where the limb starts on the trunk, 0 or more, any unit.
 * @param tip_height Height of the limb's tip, up to the tree's height, the same unit.
 * @param tree_height Height of the tree, more than 0, the same unit.
 * @param crown_base_height Height of the crown base, below the tree's height, the same unit.
 * @param [included_bark] Included bark in the union: none, partial or full. None unless given.
 * @returns Points: 45 for the ratio above 0.5, 30 for starting low and reaching high, 15 for included bark, 10 for a tip near the top. It orders work; it says nothing of failure.
 * @example =LIMB.PRIORITY(0.75, 0, 40, 40, 10, "full") gives 77.5
 * @source House rule of this project. Starting low and reaching high: Gilman & Black, Circular 853/MG087, Fig. 15.
 */
export function PRIORITY(
  aspect_ratio: unknown[][],
  origin_height: unknown[][],
  tip_height: unknown[][],
  tree_height: unknown[][],
  crown_base_height: unknown[][],
  included_bark?: unknown[][]
): unknown[][] {
  return urgent({ aspect_ratio, origin_height, tip_height, tree_height, crown_base_height, included_bark })
}

const ranks = allCells(
  [
    length('diameters'),
    number('lean_angles', { least: 0, most: 90, advice: 'give degrees from vertical' }),
    length('heights'),
    bark
  ],
  (rows: [number, number, number, IncludedBark][]) =>
    leaderRank(
      rows.map(([diameter, lean, top, included]) => ({ diameter, lean, height: top, bark: included }))
    )
)

/**
 * Rank of each stem as the leader to keep, 1 the best; confirm it on site.
 * @customfunction LEADERRANK
 * @param diameters Diameters of the stems, more than 0, all in one unit.
 * @param lean_angles Lean of each stem in degrees from vertical, 0 to 90.
 * @param heights Height each stem reaches, more than 0, all in one unit.
 * @param [included_bark] Included bark at each stem's union: none, partial or full. None unless given.
 * @returns A rank for each stem. Stems that reach the top quarter of the tallest come first; then upright, diameter, height and no included bark count 4, 3, 2 and 1.
 * @example =LIMB.LEADERRANK({10; 9; 6}, {30; 5; 10}, {40; 41; 25}) gives {2; 1; 3}
 * @source Criteria: common practice, no source. Their weights are a house rule; no published weights exist.
 */
export function LEADERRANK(
  diameters: unknown[][],
  lean_angles: unknown[][],
  heights: unknown[][],
  included_bark?: unknown[][]
): unknown[][] {
  return ranks({ diameters, lean_angles, heights, included_bark })
}
