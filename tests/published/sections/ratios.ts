import { block, planOf } from '../../plan/trees'
import { removalThresholds } from '../evidence/removalThresholds'
import { pullForce } from '../evidence/pullForces'
import { isRefusal } from '../../../shared/refusal'
import { upperThird } from '../../../src/formulas/priority'
import { aspectRatio, stemAbove } from '../../../src/formulas/diameters'
import { exactly, lengthTyped, printed, type Check } from '../check'

const uf = 'University of Florida tree biomechanics lab note, 2026: two-point diameters of both members'
const kane = 'Kane 2007, Arboric. Urban For. 33(4): sections are oval, two diameters'
const eisner = 'Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99-105'
const gilman2003 = 'Gilman 2003, J. Arboric. 29(5):291-294, table of pull forces'
const pipe = 'cross-section conserved at a union (pipe model, Shinozaki et al. 1964, from memory)'
const circular853 = 'Gilman & Black, Circular 853/MG087, Fig. 15, arithmetic ours'

const surveyed = 'Tree | Height (ft) | Crown base (ft) | Limb | Role | Limb dia (in) | Stem dia (in)'
const heights = ' | Stem measured | Origin (ft) | Tip (ft)'

/** The ratio the plan uses for a 6 in limb on a 10 in stem, as measured. */
function plannedRatio(measured: string): number {
  const plan = planOf(
    block(
      surveyed + heights,
      ['T1', 40, 10, 'A', 'leader', null, null, null, null, null],
      ['T1', 40, 10, 'B', 'limb', 6, 10, measured, 12, 34]
    )
  )
  return plan.trees[0]!.visits[0]!.limbs.find(({ limb }) => limb.id === 'B')!.aspectRatio
}

function force(branch: number, ratio: number): number {
  const found = pullForce(branch, ratio)
  return isRefusal(found) ? NaN : found
}

/** The table as it is printed, the classes that have no check of their own below: intercept and slope. */
const table = [
  ['5.4', '19.2', '12.2'],
  ['6.4', '45.2', '41.0'],
  ['7.4', '47.7', '39.1'],
  ['8.4', '57.3', '43.9'],
  ['9.4', '84.6', '69.1'],
  ['11.4', '146.8', '137.8'],
  ['12.4', '165.1', '155.1'],
  ['13.4', '165.6', '158.6']
] as const

const otherClasses = table.flatMap(([branch, intercept, slope]) =>
  [0.5, 1].map((ratio): Check => ({
    what: `pull force in kg, branch of ${branch} mm at a ratio of ${ratio}`,
    got: () => force(Number(branch), ratio),
    ...exactly(Number(intercept) - Number(slope) * ratio),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  }))
)

export const ratios: Check[] = [
  {
    what: 'planned ratio of a 6 in limb with the 10 in stem measured above the union',
    got: () => plannedRatio('above'),
    ...printed('0.600'),
    source: uf,
    certainty: 'read'
  },
  {
    what: 'planned ratio of the same limb with the 10 in stem measured below the union',
    got: () => plannedRatio('below'),
    ...printed('0.75'),
    source: pipe,
    certainty: 'memory'
  },
  {
    what: 'ratio of a 12 in limb that has overtaken a 10 in stem, not clamped',
    got: () => aspectRatio(12, 10),
    ...printed('1.2'),
    source: 'common practice, no source: a branch larger than the trunk above the union is flagged',
    certainty: 'practice'
  },
  {
    what: 'stem above a whorl of 3, 4 and 5 in limbs on 13 in',
    got: () => stemAbove(13, 9 + 16 + 25),
    ...printed('10.91'),
    source: `${pipe}, arithmetic ours`,
    certainty: 'memory'
  },
  {
    what: 'diameter of an oval limb read as 6.4 x 5.6 in',
    got: () => lengthTyped('6.4 x 5.6 in'),
    ...printed('6.0'),
    source: `${kane}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'live oak ratio above which removal discolored the trunk',
    got: () => removalThresholds.find(({ species }) => species === 'live oak')!.ratio,
    ...printed('0.39'),
    source: eisner,
    certainty: 'read'
  },
  {
    what: 'start of the upper third of a 40 ft tree when it is read as of the whole tree',
    got: () => upperThird(40, 0),
    ...printed('26.7'),
    source: circular853,
    certainty: 'read'
  },
  {
    what: 'pull force in kg, branch of 14 to 20 mm at a ratio of 0.3',
    got: () => force(17, 0.3),
    ...printed('160.15'),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'pull force in kg, branch of 14 to 20 mm at a ratio of 0.5',
    got: () => force(17, 0.5),
    ...printed('122.05'),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'pull force in kg, branch of 14 to 20 mm at a ratio of 0.9',
    got: () => force(20, 0.9),
    ...printed('45.85'),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'pull force in kg, branch of 14 to 20 mm as thick as its stem',
    got: () => force(14, 1),
    ...printed('26.8'),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'pull force at a ratio of 1 as a share of that at 0.5',
    got: () => force(17, 1) / force(17, 0.5),
    ...printed('0.22'),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'pull force in kg, branch of 10 to 10.9 mm at a ratio of 0.5',
    got: () => force(10.4, 0.5),
    ...printed('56.67'),
    source: `${gilman2003}, arithmetic ours`,
    certainty: 'read'
  },
  ...otherClasses
]
