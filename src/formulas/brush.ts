import type { Evidence } from '../../shared/evidence'
import { refuse, type Refusal } from '../../shared/refusal'
import { kilogramsPerPound, type UnitSystem } from '../../shared/units'
import { densityOf, poundsPerCubicFootAsMetric } from './speciesDensities'

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
 * Source: densities in speciesDensities.ts; the cone for strongly tapered limbs is common practice, no source.
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

export const brushVolumeEvidence: Evidence = {
  finding: 'Agencies put a cubic yard of loose brush at 250 to 600 lb, and of green chips at about 475.',
  source:
    'Oregon DEQ conversion factors (loose 250, compacted 640, green chips 473, dry chips 243); US EPA 2016 (yard trimmings 250); Massachusetts (brush 500); CalRecycle (loose yard waste 600)',
  certainty: 'read',
  range: 'mixed yard debris as collected',
  caution: 'A pile of untidied brush is bulkier than any of these. Weigh a load of your own.'
}

/** Pounds in a cubic yard. As Oregon DEQ prints them; others go up to 600 for loose brush. */
export const poundsPerCubicYard = {
  'loose brush': 250,
  'compacted brush': 640,
  'green chips': 473,
  'dry chips': 243
} as const

/** Exact by definition (NIST SP 811, from memory). */
export const cubicMetersPerCubicYard = 0.764554857984

/** The agency whose figures are used; what others print stands with the evidence. */
export const brushVolumeSource = brushVolumeEvidence.source.split(' (')[0] ?? ''

/** Weight of brush as it lies, and of green chips: lb in a yd³, or kg in a m³. */
export function brushDensity(system: UnitSystem): { loose: number; chips: number } {
  const perUnit = system === 'in-ft' ? 1 : kilogramsPerPound / cubicMetersPerCubicYard
  return {
    loose: poundsPerCubicYard['loose brush'] * perUnit,
    chips: poundsPerCubicYard['green chips'] * perUnit
  }
}

/** What a weight of brush fills as it lies and as green chips: lb to yd³, or kg to m³. */
export function brushVolumes(weight: number, system: UnitSystem): { loose: number; chips: number } {
  const density = brushDensity(system)
  return { loose: weight / density.loose, chips: weight / density.chips }
}
