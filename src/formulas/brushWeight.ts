import { refuse, type Refusal } from '../../shared/refusal'
import { densityOf, poundsPerCubicFootAsMetric } from './speciesDensities'
import { kilogramsPerPound } from '../../shared/units'

/**
 * Volume of a round piece that tapers evenly between two diameters: L/12·π·(d² + d·e + e²). Diameters and length in
 * one unit; a second diameter of 0 gives the cone.
 *
 * Source: solid geometry, the cone frustum; worked example in a forestry text of 10 and 12 in over 16 ft: 10.588 ft³.
 */
export function taperedVolume(butt: number, tip: number, length: number): number {
  return ((Math.PI * length) / 12) * (butt * butt + butt * tip + tip * tip)
}

/**
 * Green weight in kg of the part a cut takes off: a cone on the cut's diameter, at the green density of the species.
 * Diameter in mm, length in m. Leaves and twigs are not counted.
 *
 * Source: densities in shared/speciesDensities.ts; the cone for strongly tapered limbs is common practice, no source.
 */
export function brushKilograms(
  cutMillimeters: number,
  lengthMeters: number,
  species: string
): number | Refusal {
  const density = densityOf(species)
  if (density === null)
    return refuse(
      `No green density is listed for “${species}”: give a listed species, or hardwood for the middle of the list.`,
      'missing'
    )
  return taperedVolume(cutMillimeters / 1000, 0, lengthMeters) * poundsPerCubicFootAsMetric(density.value)
}

/** The same in lb from a diameter in inches and a length in feet, or in kg from cm and m. */
export function brushWeight(
  cut: number,
  length: number,
  species: string,
  units: 'in-ft' | 'cm-m'
): number | Refusal {
  if (units === 'cm-m') return brushKilograms(cut * 10, length, species)
  const kilograms = brushKilograms(cut * 25.4, length * 0.3048, species)
  return typeof kilograms === 'number' ? kilograms / kilogramsPerPound : kilograms
}
