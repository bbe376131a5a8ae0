import {
  cubicMetersPerCubicYard,
  brushVolumes,
  brushKilograms,
  brushWeight,
  taperedVolume
} from '../../../src/formulas/brush'
import { huberVolume, newtonVolume, smalianVolume } from '../evidence/logVolume'
import { logWeights } from '../evidence/logWeights'
import { densityOf } from '../../../src/formulas/speciesDensities'
import { kilogramsPerPound } from '../../../shared/units'
import { exactly, printed, type Check } from '../check'

const fia = 'USFS FIA reference species table, specific gravity × 62.4 × (1 + moisture); arithmetic ours'
const worked = 'worked example of log volume formulas in a forestry text (publisher not noted)'
const nps = 'National Park Service, Safety for Tree Workers, log weights as reprinted in an equipment manual'
const deq = 'Oregon DEQ conversion factors, lb/yd³; arithmetic ours'
const geometry = 'solid geometry, from memory; arithmetic ours'

function density(species: string, text: string): Check {
  return {
    what: `lb/ft³ of green ${species}`,
    got: () => densityOf(species)?.value ?? NaN,
    ...printed(text),
    source: fia,
    certainty: 'read'
  }
}

/** Whole pounds from other logs: 2.2 lb/ft³ off is under 5 %, as wood varies by more from tree to tree. */
function logWeight(species: keyof typeof logWeights): Check {
  return {
    what: `lb/ft³ of ${species} logs by another table`,
    got: () => densityOf(species)?.value ?? NaN,
    expected: logWeights[species],
    within: 2.2,
    source: nps,
    certainty: 'second-hand'
  }
}

const inch = 1 / 12

export const weights: Check[] = [
  density('white oak', '63.0'),
  density('pin oak', '64.0'),
  density('willow oak', '64.0'),
  density('American elm', '55.7'),
  density('white ash', '50.0'),
  density('green ash', '52.0'),
  density('sycamore', '52.0'),
  density('sweetgum', '50.0'),
  density('tulip tree', '48.7'),
  density('basswood', '41.0'),
  density('black cherry', '45.0'),
  density('beech', '54.0'),
  density('hackberry', '50.0'),
  density('black walnut', '57.0'),
  density('cottonwood', '50.0'),
  logWeight('honeylocust'),
  logWeight('hackberry'),
  logWeight('black cherry'),
  logWeight('beech'),
  logWeight('white ash'),
  {
    what: 'ft³ of a 16 ft log of 10 and 12 in by the mean of its ends',
    got: () => smalianVolume(10 * inch, 12 * inch, 16),
    ...printed('10.647'),
    source: worked,
    certainty: 'second-hand'
  },
  {
    what: 'ft³ of that log by its middle',
    got: () => huberVolume(11 * inch, 16),
    ...printed('10.559'),
    source: `${worked}; this value is arithmetic ours`,
    certainty: 'second-hand'
  },
  {
    what: 'ft³ of a limb from 6 to 1 in over 20 ft by the mean of its ends',
    got: () => smalianVolume(6 * inch, inch, 20),
    ...printed('2.018'),
    source: geometry,
    certainty: 'memory'
  },
  {
    what: 'percent that the mean of the ends overstates that limb',
    got: () => 100 * (smalianVolume(6 * inch, inch, 20) / taperedVolume(6 * inch, inch, 20) - 1),
    ...printed('29'),
    source: geometry,
    certainty: 'memory'
  },
  {
    what: 'our frustum of that limb in ft³ by the formula that counts the middle four times',
    got: () => newtonVolume(6 * inch, 3.5 * inch, inch, 20) - taperedVolume(6 * inch, inch, 20),
    ...exactly(0),
    source: geometry,
    certainty: 'memory'
  },
  {
    what: 'lb of a red maple limb of 6 in over 20 ft as a cone, and the same limb in cm and m',
    got: () => {
      const pounds = brushWeight(6, 20, 'red maple', 'in-ft')
      const kilograms = brushKilograms(152.4, 6.096, 'Acer rubrum')
      return typeof pounds === 'number' && typeof kilograms === 'number'
        ? pounds - kilograms / kilogramsPerPound
        : NaN
    },
    ...printed('0.000000'),
    source: 'NIST SP 811, exact factors, from memory',
    certainty: 'memory'
  },
  {
    what: 'yd³ of 600 lb as green chips',
    got: () => brushVolumes(600, 'in-ft').chips,
    ...printed('1.268'),
    source: deq,
    certainty: 'read'
  },
  {
    what: 'yd³ of 600 lb as loose brush',
    got: () => brushVolumes(600, 'in-ft').loose,
    ...printed('2.400'),
    source: deq,
    certainty: 'read'
  },
  {
    what: 'times that chipping shrinks loose brush',
    got: () => brushVolumes(600, 'cm-m').loose / brushVolumes(600, 'cm-m').chips,
    ...printed('1.9'),
    source: deq,
    certainty: 'read'
  },
  {
    what: 'm³ of one cubic yard’s weight of loose brush',
    got: () => brushVolumes(250 * kilogramsPerPound, 'cm-m').loose,
    ...exactly(cubicMetersPerCubicYard),
    source: 'NIST SP 811, exact by definition, from memory',
    certainty: 'memory'
  }
]
