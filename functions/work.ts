import { brushWeight } from '../src/formulas/brush'
import { crewHours } from '../src/formulas/time'
import { priceWithMargin } from '../src/formulas/price'
import type { Access } from '../shared/choices'
import { Money, roundMoney } from '../shared/money'
import { refuse } from '../shared/refusal'
import { convertLength, systems, type UnitSystem } from '../shared/units'
import { height, length, number, text, unitsArgument, word } from './argument'
import { eachCell } from './runner'
import { oneResult } from './together'
import type { Result } from './row'

const weight = eachCell(
  [length('cut_diameter'), length('length'), text('species'), unitsArgument],
  brushWeight
)

/**
 * Green weight of the part of a limb that a cut takes off, without leaves and twigs.
 * @customfunction BRUSHWEIGHT
 * @param cut_diameter Diameter where the cut is made, more than 0, in inches, or in centimeters with cm-m.
 * @param length Length of the part beyond the cut, more than 0, in feet, or in meters with cm-m.
 * @param species Common or botanical name of the species, or hardwood for the middle of the list.
 * @param [units] in-ft gives pounds, cm-m gives kilograms. in-ft unless given.
 * @returns Pounds or kilograms: a cone on the cut at the green density of the wood. Good to two figures at best.
 * @example =LIMB.BRUSHWEIGHT(12, 12, "live oak") gives 238.69
 * @source Densities from the USFS FIA reference species table; the cone is common practice, no source.
 */
export function BRUSHWEIGHT(
  cut_diameter: unknown[][],
  length: unknown[][],
  species: unknown[][],
  units?: unknown[][]
): unknown[][] {
  return weight({ cut_diameter, length, species, units })
}

type CutRow = [diameter: number, height: number, access: Access, units: UnitSystem]

function hoursOf(rows: CutRow[]): Result {
  const [, , access, units] = rows[0] as CutRow
  if (rows.some((row) => row[2] !== access || row[3] !== units))
    return refuse('The rows differ in access or units: give the cuts of one tree at a time.')
  const { diameter: across, height: up } = systems[units]
  const cuts = rows.map(([diameter, above]) => ({
    diameter: convertLength(diameter, across, 'mm'),
    height: convertLength(above, up, 'm')
  }))
  return crewHours(cuts, access)
}

const hours = oneResult(
  [length('cut_diameters'), height('heights'), word('access', 'access', 'open'), unitsArgument],
  hoursOf
)

/**
 * Crew-hours for the cuts of one tree at the invented default rates, brush not counted.
 * @customfunction CREWHOURS
 * @param cut_diameters Diameters of the cuts, more than 0, in inches, or in centimeters with cm-m.
 * @param heights Height of each cut above ground, 0 or more, in feet, or in meters with cm-m.
 * @param [access] Access for the crew: open, fenced or no machine. Open unless given.
 * @param [units] in-ft for inches and feet, cm-m for centimeters and meters. in-ft unless given.
 * @returns Hours of the whole crew: set-up by access, minutes by the size and height of each cut, times the access factor.
 * @oneresult
 * @example =LIMB.CREWHOURS({2; 3}, {8; 15}) gives 0.402
 * @source The minutes are invented defaults of this project, to be replaced by your own; the access factors are common practice, no source.
 */
export function CREWHOURS(
  cut_diameters: unknown[][],
  heights: unknown[][],
  access?: unknown[][],
  units?: unknown[][]
): unknown[][] {
  return hours({ cut_diameters, heights, access, units })
}

function priceOf(cost: number, overhead: number, margin: number, minimum: number): number {
  const price = priceWithMargin(new Money(cost), new Money(overhead), new Money(margin), new Money(minimum))
  return roundMoney(price, 2).toNumber()
}

const rate = { percent: true, advice: 'give 25 % as 0.25 or 25%' }
const prices = eachCell(
  [
    number('direct_cost', { least: 0, advice: 'give the cost of labor, equipment and disposal' }),
    number('overhead_rate', { least: 0, most: 5, ...rate }),
    number('margin_rate', { least: 0, most: 0.99, ...rate }),
    number('minimum', { least: 0, fallback: 0, advice: 'give the least charge' })
  ],
  priceOf
)

/**
 * Price from a direct cost, with overhead added and the margin taken as a share of the price.
 * @customfunction JOBPRICE
 * @param direct_cost Direct cost of the job, 0 or more, in any currency.
 * @param overhead_rate Overhead as a share of the direct cost, 0 to 5.
 * @param margin_rate Margin as a share of the price, 0 to 0.99; a margin of 0.25 is a markup of a third.
 * @param [minimum] Least charge, 0 or more. None unless given.
 * @returns An amount in the same currency, rounded half up to two decimals: cost × (1 + overhead) / (1 − margin), never below the minimum.
 * @example =LIMB.JOBPRICE(600, 0, 0.25) gives 800
 * @source Margin on price against markup on cost: bookkeeping arithmetic.
 */
export function JOBPRICE(
  direct_cost: unknown[][],
  overhead_rate: unknown[][],
  margin_rate: unknown[][],
  minimum?: unknown[][]
): unknown[][] {
  return prices({ direct_cost, overhead_rate, margin_rate, minimum })
}
