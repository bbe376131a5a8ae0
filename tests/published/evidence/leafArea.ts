import type { Refusal } from '../../../shared/refusal'
import { outside, type Evidence } from '../../../shared/evidence'

export const leafAreaEvidence: Evidence = {
  finding: 'Leaf area of street and park trees grows nearly with the square of the trunk diameter.',
  source: 'USFS Urban Tree Database RDS-2016-0005, large broadleaf deciduous trees, n = 5,335, r² = .815',
  certainty: 'data',
  range: 'trunks of 10 to 60 cm here (house choice: the fit’s own range was not noted)',
  caution: 'An average over many trees. A single tree, and more so a single limb, departs far from it.'
}

/** How leaf area goes with trunk diameter, by mature size; 2 would be the pipe model exactly. */
export const leafAreaExponents = { large: 1.954, medium: 1.921, small: 1.858 } as const

export const crownSectionEvidence: Evidence = {
  finding: 'Leaf area goes nearly with the cross-section of the stem at the crown base.',
  source: 'BAAD (Falster et al. 2015, Ecology 96:1445), deciduous broadleaves, n = 336, r² = .958',
  certainty: 'data',
  range: '5 studies, 55 species, mostly Asian and tropical',
  caution: 'Whole stems. Dead, shaded or suppressed limbs carry less leaf than their section says.'
}

/** Slope of ln leaf area on ln cross-section at the crown base: ordinary and reduced-axis fit. */
export const crownSectionSlopes = { ordinary: 0.93, reducedAxis: 0.95 } as const

/** Leaf area in m² of a large broadleaf deciduous tree: exp(−1.786)·dbh^1.954, diameter in cm. */
export function leafArea(trunkCentimeters: number): number | Refusal {
  return (
    outside('The trunk diameter', trunkCentimeters, 10, 60, 'cm') ??
    Math.exp(-1.786) * trunkCentimeters ** leafAreaExponents.large
  )
}

/** How many times the leaf area at a diameter that is `times` as large, by a slope on cross-section. */
export function leafAreaTimes(times: number, slope: number): number {
  return times ** (2 * slope)
}
