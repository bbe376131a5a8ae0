import type { Evidence } from '../../shared/evidence'
import { refuse, type Refusal } from '../../shared/refusal'
import { kilogramsPerPound, type UnitSystem } from '../../shared/units'
import type { Sourced } from '../../shared/sourced'
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
 * Diameter in mm, length in m. Leaves and twigs are not counted: `cutKilograms` adds them.
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

/** Side branches and twigs beside the wood of the limb's own axis, which alone is a cone. */
export const twigShare: Sourced = {
  value: 0.5,
  unit: 'of the axis',
  source:
    'house rule: side branches that carry the foliage passed on the way out, half as long as the limb beyond them, add half the cone',
  certainty: 'house'
}

/** Leaf area in m² behind a cross-section: exp(−1.786)·cm^1.954. A limb is taken to carry what a trunk as thick does. */
export const leafAreaBehind = {
  factor: Math.exp(-1.786),
  exponent: 1.954,
  source:
    'USFS Urban Tree Database RDS-2016-0005, large broadleaf deciduous street and park trees, n = 5,335',
  certainty: 'data'
} as const

/** What fresh leaves weigh. */
export const leafWeight: Sourced = {
  value: 0.2,
  unit: 'kg/m²',
  source: 'broad leaves of 60 to 80 g of dry matter in a square meter, two thirds water (from memory)',
  certainty: 'memory'
}

/** Green weight in kg of the leaves behind a cut. Diameter in mm. */
export function leafKilograms(cutMillimeters: number): number {
  return leafAreaBehind.factor * (cutMillimeters / 10) ** leafAreaBehind.exponent * leafWeight.value
}

/**
 * Green weight in kg of all that a cut takes off: the cone of the limb's axis, its side branches and twigs, and its leaves;
 * of dead wood the cone alone. Diameter in mm, length in m.
 *
 * Source: `brushKilograms`, `twigShare`, `leafAreaBehind`, `leafWeight`. An average; a single limb departs far from it.
 */
export function cutKilograms(
  cutMillimeters: number,
  lengthMeters: number,
  species: string,
  live: boolean
): number | Refusal {
  const axis = brushKilograms(cutMillimeters, lengthMeters, species)
  if (typeof axis !== 'number' || !live) return axis
  return axis * (1 + twigShare.value) + leafKilograms(cutMillimeters)
}

/** The wood of the axis in lb from a diameter in inches and a length in feet, or in kg from cm and m. */
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
