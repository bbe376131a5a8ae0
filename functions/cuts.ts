import { cutDiameter, cutDose, lateralMin } from '../src/formulas/cuts'
import { refuse, type Refusal } from '../shared/refusal'
import { length, positiveShare, share } from './argument'
import { eachCell } from './runner'

const where = eachCell([length('limb_diameter'), positiveShare('share_of_limb')], cutDiameter)

/**
 * Diameter at which to cut a limb so that the cut takes a given share of its foliage.
 * @customfunction CUTDIAMETER
 * @param limb_diameter Diameter of the limb at its base, more than 0, any unit.
 * @param share_of_limb Share of the limb's foliage to take off, more than 0 and up to 1.
 * @returns A diameter in the same unit: d × √share.
 * @example =LIMB.CUTDIAMETER(6, 0.25) gives 3
 * @source Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167 (leaf mass linear in basal area).
 */
export function CUTDIAMETER(limb_diameter: unknown[][], share_of_limb: unknown[][]): unknown[][] {
  return where({ limb_diameter, share_of_limb })
}

function doseOf(cut: number, limb: number, limbShare: number): number | Refusal {
  return cut > limb
    ? refuse(`cut_diameter is ${cut}, more than the limb's ${limb}: check both diameters.`)
    : cutDose(cut, limb, limbShare)
}

const dose = eachCell([length('cut_diameter'), length('limb_diameter'), share('limb_share')], doseOf)

/**
 * Share of the whole tree's foliage that one cut takes off.
 * @customfunction CUTDOSE
 * @param cut_diameter Diameter where the cut is made, more than 0 and up to the limb's, any unit.
 * @param limb_diameter Diameter of the limb at its base, more than 0, the same unit.
 * @param limb_share Share of the tree's foliage on the limb, 0 to 1, as FOLIAGESHARE gives it.
 * @returns A share from 0 to 1: (c/d)² × the limb's share.
 * @example =LIMB.CUTDOSE(3, 6, 0.2) gives 0.05
 * @source Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167 (used to define pruning dose).
 */
export function CUTDOSE(
  cut_diameter: unknown[][],
  limb_diameter: unknown[][],
  limb_share: unknown[][]
): unknown[][] {
  return dose({ cut_diameter, limb_diameter, limb_share })
}

const lateral = eachCell([length('cut_diameter'), positiveShare('fraction', 1 / 3)], lateralMin)

/**
 * Least diameter of the live lateral to leave at a reduction cut.
 * @customfunction LATERALMIN
 * @param cut_diameter Diameter of the limb where it is cut, more than 0, any unit.
 * @param [fraction] Least share of the cut's diameter, more than 0 and up to 1. One third unless given; larger cuts often take one half.
 * @returns A diameter in the same unit.
 * @example =LIMB.LATERALMIN(3) gives 1
 * @source At least a third, Grabosky & Gilman 2007, AUF 33(5):360-366; a half on larger cuts, ISA best management practices, from memory.
 */
export function LATERALMIN(cut_diameter: unknown[][], fraction?: unknown[][]): unknown[][] {
  return lateral({ cut_diameter, fraction })
}
