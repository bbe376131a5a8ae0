import { defaultRules } from '../../../shared/rules'
import { convertLength } from '../../../shared/units'
import { aspectRatio } from '../../../src/formulas/diameters'
import { cutDiameter, cutDose, cutShare, lateralFraction, lateralMin } from '../../../src/formulas/cuts'
import { exactly, near, printed, type Check } from '../check'

const grabosky2007 = 'Grabosky & Gilman 2007, AUF 33(5):360-366: laterals as small as a third'
const csu = 'Colorado State University Extension GardenNotes, Pruning Cuts'
const pipe = 'Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167; arithmetic ours'

export const cuts: Check[] = [
  {
    what: 'a lateral of 1.0 in on a parent of 3.1 in',
    got: () => aspectRatio(1, 3.1),
    ...printed('0.3226'),
    source: `${grabosky2007}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'least lateral for that parent in inches, so that 1.0 in falls short',
    got: () => lateralMin(3.1),
    ...printed('1.033'),
    source: `${grabosky2007}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'least lateral of a 6 in parent, which a 2 in lateral meets exactly',
    got: () => lateralMin(6),
    ...exactly(2),
    source: 'county extension slide: 6 in at a 2 in lateral',
    certainty: 'read'
  },
  {
    what: 'share that the lateral must have of a cut of 2 in and less',
    got: () => lateralFraction(50),
    ...printed('0.333'),
    source: grabosky2007,
    certainty: 'read'
  },
  {
    what: 'share that the lateral must have of larger cuts',
    got: () => lateralFraction(51),
    ...exactly(0.5),
    source: 'ISA best management practices: prefer a half on larger and older stems, from memory',
    certainty: 'memory'
  },
  {
    what: 'inches above which a cut is marked',
    got: () => convertLength(defaultRules.markedCut, 'mm', 'in'),
    ...near(2, 0.02),
    source: `${csu}: ideal cut up to 2 in`,
    certainty: 'read'
  },
  {
    what: 'inches above which a cut needs a written reason',
    got: () => convertLength(defaultRules.reasonedCut, 'mm', 'in'),
    ...near(4, 0.02),
    source: `${csu}: over 4 in must be justified`,
    certainty: 'read'
  },
  {
    what: 'half of a 7 in limb by diameter, in the scale of cross-section and foliage',
    got: () => cutShare(3.5, 7),
    ...printed('0.25'),
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'inches at which half of a 7 in limb by foliage is cut',
    got: () => cutDiameter(7, 0.5),
    ...printed('4.95'),
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'half of that limb’s foliage in the scale of the tree’s foliage',
    got: () => cutDose(cutDiameter(7, 0.5), 7, 0.35),
    ...printed('0.175'),
    source: pipe,
    certainty: 'read'
  }
]
