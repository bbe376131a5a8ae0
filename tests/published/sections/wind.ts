import {
  bendingStress,
  metersPerSecondPerMileAnHour,
  momentLeft,
  newtonsPerPoundForce,
  windDrag
} from '../evidence/windLoad'
import { exactly, printed, type Check } from '../check'

const cullen = 'Cullen 2005, J. Arboric. 31(3):101-113, form of the law; arithmetic ours'
const mechanics = 'standard mechanics, bending of a round section; arithmetic ours, from memory'
const nist = 'NIST SP 811, exact by definition, from memory'

export const wind: Check[] = [
  {
    what: 'N of drag at Cd 0.25, 20 m² and 20 m/s',
    got: () => windDrag(0.25, 20, 20),
    ...printed('1225.0'),
    source: cullen,
    certainty: 'read'
  },
  {
    what: 'the same in lbf',
    got: () => windDrag(0.25, 20, 20) / newtonsPerPoundForce,
    ...printed('275.4'),
    source: cullen,
    certainty: 'read'
  },
  {
    what: 'drag at twice the speed over drag at the speed',
    got: () => windDrag(0.25, 20, 20) / windDrag(0.25, 20, 10),
    ...exactly(4),
    source: cullen,
    certainty: 'read'
  },
  {
    what: 'MPa at a 0.20 m section under 7350 N·m',
    got: () => bendingStress(windDrag(0.25, 20, 20) * 6, 0.2) / 1e6,
    ...printed('9.358'),
    source: mechanics,
    certainty: 'memory'
  },
  {
    what: 'share of the moment left where area and arm are both four fifths',
    got: () => momentLeft(0.8, 0.8),
    ...printed('0.64'),
    source: mechanics,
    certainty: 'memory'
  },
  {
    what: 'the same share from drag on the area times the arm, before and after',
    got: () => (windDrag(0.25, 16, 20) * 4.8) / (windDrag(0.25, 20, 20) * 6),
    ...exactly(momentLeft(0.8, 0.8)),
    source: cullen,
    certainty: 'read'
  },
  {
    what: 'm/s of 45 mph',
    got: () => 45 * metersPerSecondPerMileAnHour,
    ...printed('20.117'),
    source: nist,
    certainty: 'memory'
  }
]
