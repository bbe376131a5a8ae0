import { breakingStress } from '../evidence/breakingStress'
import { stemForce } from '../evidence/stemForces'
import { isRefusal } from '../../../shared/refusal'
import { defaultRules } from '../../../shared/rules'
import type { IncludedBark } from '../../../shared/choices'
import { priority } from '../../../src/formulas/priority'
import { printed, type Check } from '../check'

const smiley = 'Smiley 2003, J. Arboric. 29(2):104-106'
const kane = 'Kane 2007, Arboric. Urban For. 33(4), Table 3 (n = 26), MOR 69.9 MPa; arithmetic ours'

function force(bark: 'with included bark' | 'without included bark', inches: number): number {
  const found = stemForce(bark, inches)
  return isRefusal(found) ? NaN : found
}

/** The line’s diameters are printed to a tenth of an inch: its end forces can be off by half of that on the slope. */
const endOfLine = 0.05 * 613

/** Points of a limb at 0.6 of its stem from 5 to 20 ft on a tree of 40 ft with its crown from 10 ft. */
function pointsWith(included: IncludedBark): number {
  return priority({ aspectRatio: 0.6, origin: 5, tip: 20, bark: included }, { height: 40, crownBase: 10 })
}

export const bark: Check[] = [
  {
    what: 'kg that parted 4 in codominant stems without included bark',
    got: () => force('without included bark', 4),
    ...printed('1064'),
    source: `${smiley}, arithmetic ours; inches inferred`,
    certainty: 'read'
  },
  {
    what: 'kg that parted 4 in codominant stems with included bark',
    got: () => force('with included bark', 4),
    ...printed('863'),
    source: `${smiley}, arithmetic ours; inches inferred`,
    certainty: 'read'
  },
  {
    what: 'percent less with included bark at 4 in',
    got: () => 100 * (force('with included bark', 4) / force('without included bark', 4) - 1),
    ...printed('-18.9'),
    source: `${smiley}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'kg at the thick end of the range, against the largest force measured: inches fit',
    got: () => force('without included bark', 6.1),
    expected: 2363,
    within: endOfLine,
    because: 'the ends of the range are inferred from the forces, to a tenth of an inch',
    source: smiley,
    certainty: 'read'
  },
  {
    what: 'kg at the thin end of the range, against the least force measured: inches fit',
    got: () => force('without included bark', 2.4),
    expected: 64,
    within: endOfLine,
    because: 'the ends of the range are inferred from the forces, to a tenth of an inch',
    source: smiley,
    certainty: 'read'
  },
  {
    what: 'MPa at breaking with the oval inside the bark',
    got: () => breakingStress('ellipse inside bark'),
    ...printed('50.3'),
    source: kane,
    certainty: 'read'
  },
  {
    what: 'breaking stress by the circle as a share of that by the oval inside the bark',
    got: () => breakingStress('circle') / breakingStress('ellipse inside bark'),
    ...printed('0.56'),
    source: kane,
    certainty: 'read'
  },
  {
    what: 'ratio from which included bark makes a union codominant',
    got: () => defaultRules.codominantIncludedFrom,
    ...printed('0.70'),
    source: 'earlier work quoted in Dahle et al. 2022, Forests 13(7):1007',
    certainty: 'second-hand'
  },
  {
    what: 'points of priority that full included bark adds',
    got: () => pointsWith('full') - pointsWith('none'),
    ...printed('15'),
    source:
      'common practice, no source: included bark counts against a union; the 15 points are a house rule',
    certainty: 'practice'
  }
]
