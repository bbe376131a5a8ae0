import type { Access } from '../../shared/choices'
import { inventedRates, type Rates } from '../price/rates'

/** A cut of exactly the limit belongs to the smaller class, whatever the conversion of units left of it. */
const rim = 1e-6

/** Minutes of one cut by its diameter class and height band. Diameter in mm, height in m. */
export function cutMinutes(
  diameter: number,
  height: number,
  rates: Pick<Rates, 'cutClasses' | 'heightBands'> = inventedRates
): number {
  const size = rates.cutClasses.find(({ upToMillimeters }) => diameter <= upToMillimeters + rim)
  const band = rates.heightBands.find(({ upToMeters }) => height <= upToMeters + rim)
  return (size?.minutes ?? 0) * (band?.factor ?? 1)
}

/** Hours to a hundredth, as they are printed and priced. */
export function printedHours(minutes: number): number {
  return Math.round((minutes / 60) * 100 + 1e-9) / 100
}

/**
 * Crew-hours for a tree: set-up by access and the cuts by size and height, times the access factor. Diameters in mm,
 * heights in m. Brush is not in it. Rates are the business's own; the defaults are invented.
 */
export function crewHours(
  cuts: readonly { diameter: number; height: number }[],
  access: Access = 'open',
  rates: Rates = inventedRates
): number {
  let minutes = rates.setUpMinutes[access]
  for (const { diameter, height } of cuts) minutes += cutMinutes(diameter, height, rates)
  return (minutes * rates.accessFactor[access]) / 60
}
