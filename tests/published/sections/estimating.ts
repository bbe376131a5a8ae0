import { costOfWaiting } from '../evidence/earlyPruning'
import { kilogramsPerPound } from '../../../shared/units'
import type { EstimateLine } from '../../../src/price/estimate'
import { estimatePlan } from '../../../src/price/estimatePlan'
import { block, planOf } from '../../plan/trees'
import { exactly, printed, type Check } from '../check'

const churack =
  'Churack, Miller, Ottman & Koval 1994, J. Arboric. 20(4):231-236: slopes for trunks of 4 to 16 in'
const ryder = 'Ryder & Moore 2013, AUF 39(1):17-24; quotient ours'

/** What a tree without limbs is budgeted at, by its trunk in inches. */
function budget(inches: number): EstimateLine {
  const headers = 'Tree | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor'
  const plan = planOf(block(headers, ['T1', inches, 40, 10, 'young', 'good']))
  return estimatePlan(plan).budgetFigures[0]!.work
}

/** Minutes of one person: those of the line are the crew's. */
function persons(inches: number, part: 'cutting' | 'brush'): number {
  const { minutes, persons: crew } = budget(inches)
  return minutes[part] * crew
}

export const estimating: Check[] = [
  {
    what: 'minutes of pruning that a 14 in trunk takes more than an 8 in one',
    got: () => persons(14, 'cutting') - persons(8, 'cutting'),
    ...exactly(36),
    source: `${churack}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'minutes of stacking that a 14 in trunk takes more than an 8 in one',
    got: () => persons(14, 'brush') - persons(8, 'brush'),
    ...exactly(9),
    source: `${churack}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'minutes of pruning of a 12 in trunk, the slope taken through zero',
    got: () => persons(12, 'cutting'),
    ...exactly(72),
    source: `${churack}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'minutes of stacking of a 12 in trunk, the slope taken through zero',
    got: () => persons(12, 'brush'),
    ...exactly(18),
    source: `${churack}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'lb of brush off a 12 in trunk at 3 lb a minute',
    got: () => budget(12).brushKilograms / kilogramsPerPound,
    expected: 216,
    // The estimate prints whole kilograms: half of one is 1.1 lb.
    within: 0.5 / kilogramsPerPound,
    source: `${churack}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'times the early cost of a plane tree that structural pruning at 20 years cost',
    got: () => costOfWaiting('plane tree'),
    ...printed('10.8'),
    source: ryder,
    certainty: 'read'
  },
  {
    what: 'times the early cost of a lemon gum',
    got: () => costOfWaiting('lemon gum'),
    ...printed('45'),
    source: ryder,
    certainty: 'read'
  }
]
