import { convertLength } from '../../../shared/units'
import { wireDistance } from '../../../src/formulas/wires'
import { exactly, printed, type Check } from '../check'

const osha = '29 CFR 1910.269, definition of line-clearance tree trimming'

export const wires: Check[] = [
  {
    what: 'feet from a line of 7.2 kV to ground: lower voltage does not bring anyone nearer',
    got: () => wireDistance(7.2),
    ...printed('10'),
    source: osha,
    certainty: 'read'
  },
  {
    what: 'inches that 10 kV more than 50 add',
    got: () => convertLength(wireDistance(60) - wireDistance(50), 'ft', 'in'),
    ...exactly(4),
    source: osha,
    certainty: 'read'
  },
  {
    what: 'the same in meters',
    got: () => convertLength(wireDistance(60) - wireDistance(50), 'ft', 'm'),
    ...printed('0.10'),
    source: osha,
    certainty: 'read'
  },
  {
    what: 'inches over 10 ft from a line of 79.67 kV to ground',
    got: () => convertLength(wireDistance(79.67) - 10, 'ft', 'in'),
    ...printed('11.9'),
    source: `${osha}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'feet from a 138 kV line where only the voltage between lines is known, which is farther',
    got: () => wireDistance(138),
    ...printed('12.93'),
    source: `${osha}; arithmetic ours`,
    certainty: 'read'
  }
]
