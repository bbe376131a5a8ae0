import type { Evidence } from '../../../shared/evidence'

export const logVolumeEvidence: Evidence = {
  finding:
    'Smalian’s mean of the two ends makes a strongly tapered limb too large, by more than a quarter for 6 in tapering to 1.',
  source: 'log formulas of forest mensuration; a worked example in a forestry text (its publisher not noted)',
  certainty: 'second-hand',
  range: 'logs of moderate taper; limbs taper more',
  caution: 'Wood only: twigs and leaves come on top.'
}

function section(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter
}

/** Length times the section at the middle. Diameter and length in one unit. */
export function huberVolume(middle: number, length: number): number {
  return length * section(middle)
}

/** Length times the mean of the two end sections. */
export function smalianVolume(butt: number, tip: number, length: number): number {
  return (length * (section(butt) + section(tip))) / 2
}

/** Length times the mean of the sections, the middle counted four times: exact for cone, paraboloid and cylinder. */
export function newtonVolume(butt: number, middle: number, tip: number, length: number): number {
  return (length * (section(butt) + 4 * section(middle) + section(tip))) / 6
}
