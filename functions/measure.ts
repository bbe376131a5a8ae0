import { aspectRatio } from '../src/formulas/diameters'
import { checkCrownBase, crownBaseMax, liveCrownRatio } from '../src/formulas/crown'
import { projectedRatio } from '../src/formulas/growth'
import { height, length, number, positiveShare, word } from './argument'
import { eachCell } from './runner'

const ratio = eachCell(
  [length('limb_diameter'), length('stem_diameter'), word('measured', 'measured', 'above')],
  aspectRatio
)

/**
 * Aspect ratio of a limb: its diameter over that of its stem just above the union.
 * @customfunction ASPECTRATIO
 * @param limb_diameter Diameter of the limb just clear of the union, more than 0, any unit.
 * @param stem_diameter Diameter of the stem at the union, more than 0, the same unit.
 * @param [measured] Where the stem was measured: above or below the union. Above unless given.
 * @returns A ratio; above 1 where the limb is thicker than its stem. Measured below, the stem above is taken as √(D² − d²), cross-section conserved.
 * @example =LIMB.ASPECTRATIO(6, 10) gives 0.6
 * @example =LIMB.ASPECTRATIO(6, 10, "below") gives 0.75
 * @source Branch-to-stem diameter ratio, University of Florida tree biomechanics lab note, 2026.
 */
export function ASPECTRATIO(
  limb_diameter: unknown[][],
  stem_diameter: unknown[][],
  measured?: unknown[][]
): unknown[][] {
  return ratio({ limb_diameter, stem_diameter, measured })
}

const crown = eachCell(
  [length('tree_height'), height('crown_base_height')],
  (top: number, base: number) => checkCrownBase(top, base) ?? liveCrownRatio(top, base)
)

/**
 * Live-crown ratio of a tree, uncompacted: the share of its height that carries live crown.
 * @customfunction LIVECROWN
 * @param tree_height Height of the tree, more than 0, any unit.
 * @param crown_base_height Height of the lowest live foliage of the crown, 0 up to the tree's height, the same unit.
 * @returns A ratio from 0 to 1.
 * @example =LIMB.LIVECROWN(40, 10) gives 0.75
 * @source Toney & Reeves 2009, West. J. Appl. For. 24(2):76-82 (uncompacted against compacted).
 */
export function LIVECROWN(tree_height: unknown[][], crown_base_height: unknown[][]): unknown[][] {
  return crown({ tree_height, crown_base_height })
}

const crownBase = eachCell([length('tree_height'), positiveShare('crown_ratio', 0.6)], crownBaseMax)

/**
 * Highest crown base that keeps a live-crown ratio: how far a crown may be raised at most.
 * @customfunction CROWNBASEMAX
 * @param tree_height Height of the tree, more than 0, any unit.
 * @param [crown_ratio] Live-crown ratio to keep, more than 0 and up to 1. 0.6 unless given.
 * @returns A height in the same unit.
 * @example =LIMB.CROWNBASEMAX(40) gives 16
 * @source Gilman, EDIS EP276, UF/IFAS, strategy 6 (live-crown ratio above 60 %).
 */
export function CROWNBASEMAX(tree_height: unknown[][], crown_ratio?: unknown[][]): unknown[][] {
  return crownBase({ tree_height, crown_ratio })
}

const growth = <Name extends string>(name: Name) =>
  number(name, { least: 0, advice: 'give the growth a year' })
const projected = eachCell(
  [
    length('limb_diameter'),
    length('stem_diameter'),
    number('years', { least: 0, most: 100, advice: 'give years from now' }),
    growth('limb_growth'),
    growth('stem_growth')
  ],
  (limb, stem, years, limbGrowth, stemGrowth) =>
    projectedRatio({ diameter: limb, yearly: limbGrowth }, { diameter: stem, yearly: stemGrowth }, years)
)

/**
 * Aspect ratio expected after some years of growth.
 * @customfunction PROJECTEDRATIO
 * @param limb_diameter Diameter of the limb now, more than 0, any unit.
 * @param stem_diameter Diameter of the stem just above the union now, more than 0, the same unit.
 * @param years Years from now, 0 to 100.
 * @param limb_growth Growth of the limb's diameter a year, 0 or more, the same unit.
 * @param stem_growth Growth of the stem's diameter a year, 0 or more, the same unit.
 * @returns The ratio then: (d + years × limb growth) / (D + years × stem growth). A forecast, to be measured again.
 * @example =LIMB.PROJECTEDRATIO(4, 6, 10, 0.05, 0.4) gives 0.45
 * @source Arithmetic of growth; the growth itself is for you to measure or assume.
 */
export function PROJECTEDRATIO(
  limb_diameter: unknown[][],
  stem_diameter: unknown[][],
  years: unknown[][],
  limb_growth: unknown[][],
  stem_growth: unknown[][]
): unknown[][] {
  return projected({ limb_diameter, stem_diameter, years, limb_growth, stem_growth })
}
