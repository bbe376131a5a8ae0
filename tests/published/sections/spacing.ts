import { clearances } from '../evidence/clearances'
import { defaultRules } from '../../../shared/rules'
import { convertLength } from '../../../shared/units'
import { scaffoldSpacing } from '../../../src/plan/scaffold/spacing'
import { exactly, lengthTyped, near, printed, type Check } from '../check'

const brochure = 'ISA consumer brochure, Pruning Young Trees: 3 % of eventual height'

function spacingInches(matureFeet: number): number {
  return convertLength(scaffoldSpacing(matureFeet), 'ft', 'in')
}

export const spacing: Check[] = [
  {
    what: 'inches between permanent limbs of a 50 ft tree',
    got: () => spacingInches(50),
    ...printed('18.0'),
    source: brochure,
    certainty: 'read'
  },
  {
    what: 'inches between permanent limbs of an 80 ft tree',
    got: () => spacingInches(80),
    ...printed('28.8'),
    source: `${brochure}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'inches between permanent limbs of a 30 ft tree',
    got: () => spacingInches(30),
    ...printed('10.8'),
    source: `${brochure}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'inches within which a limb crowds a larger one',
    got: () => convertLength(defaultRules.crowdedWithin, 'mm', 'in'),
    ...near(12, 0.02),
    source: 'Gilman, EDIS EP276/ENH1022, UF/IFAS: within 12 in of the largest branches',
    certainty: 'read'
  },
  {
    what: 'a clearance typed as 6 ft 8 in, in inches',
    got: () => convertLength(lengthTyped('6\' 8"'), 'ft', 'in'),
    ...printed('80'),
    source: 'ABA standards 1016.9, as summarized: 80 in over accessible routes',
    certainty: 'read'
  },
  {
    what: 'feet over an accessible route',
    got: () => clearances.find(({ over }) => over === 'accessible route')!.feet,
    ...printed('6.67'),
    source: 'ABA standards 1016.9, as summarized: 80 in',
    certainty: 'read'
  },
  {
    what: 'feet between the highest and the lowest street clearance listed: no one value may be assumed',
    got: () => {
      const street = clearances.filter(({ over }) => over === 'street').map(({ feet }) => feet)
      return Math.max(...street) - Math.min(...street)
    },
    ...exactly(2),
    source: 'ISA consumer brochure (16 ft) against ordinances of Mt Pleasant MI and Plano TX (14 ft)',
    certainty: 'read'
  }
]
