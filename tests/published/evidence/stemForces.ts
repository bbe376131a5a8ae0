import type { Refusal } from '../../../shared/refusal'
import { outside, type Evidence } from '../../../shared/evidence'

export const stemForceEvidence: Evidence = {
  finding:
    'Of two stems of one size, pairs with included bark came apart at less force than pairs without, small ones the more so.',
  source: 'Smiley 2003, J. Arboric. 29(2):104-106 (84 codominant stems of 26 maples)',
  certainty: 'read',
  range: 'stems of 2.4 to 6.1 in; forces of 64 to 2,363 kg',
  caution:
    'The unit of the diameter is not in the abstract: inches fit the printed range and centimeters do not. One species; never extrapolate, and never read it as the strength of a union.'
}

/** Force in kg = slope × diameter in inches − offset. */
const lines = {
  'without included bark': { slope: 613, offset: 1388 },
  'with included bark': { slope: 537, offset: 1285 }
} as const

/** Force in kg that parted two codominant stems of this diameter in inches. */
export function stemForce(bark: keyof typeof lines, diameterInches: number): number | Refusal {
  const { slope, offset } = lines[bark]
  return outside('The stem diameter', diameterInches, 2.4, 6.1, 'in') ?? slope * diameterInches - offset
}
