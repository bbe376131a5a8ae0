import {
  aboveGroundBiomass,
  branchRatio,
  foliageRatio,
  rootRatio,
  stemBarkRatio,
  stemWoodRatio,
  type BiomassGroup
} from '../evidence/biomass'
import { isRefusal, type Refusal } from '../../../shared/refusal'
import { near, printed, type Check } from '../check'

const jenkins = 'Jenkins, Chojnacky, Heath & Birdsey 2003, For. Sci. 49(1):12-35'
const groups = `${jenkins}, coefficients of the table of groups; arithmetic ours`
const parts = `${jenkins}, component ratios as in the USFS FIA reference species table; arithmetic ours`
const baad =
  'BAAD (Falster et al. 2015, Ecology 96:1445), deciduous medians of foliage over weight above ground'

/** kg at 10, 20, 30 and 40 cm. */
const weights: Record<BiomassGroup, readonly [string, string, string, string]> = {
  'aspen, alder, cottonwood, willow': ['26.74', '139.84', '368.06', '731.32'],
  'soft maple, birch': ['34.25', '176.43', '460.30', '908.93'],
  'mixed hardwood': ['25.49', '142.58', '390.28', '797.38'],
  'hard maple, oak, hickory, beech': ['36.32', '196.27', '526.63', '1060.79'],
  'cedar, larch': ['23.77', '113.79', '284.40', '544.74'],
  'Douglas-fir': ['29.84', '162.34', '437.22', '883.05'],
  'true fir, hemlock': ['23.93', '133.65', '365.52', '746.34'],
  pine: ['21.56', '116.60', '312.93', '630.46'],
  spruce: ['26.92', '135.59', '349.08', '682.85'],
  woodland: ['24.68', '80.34', '160.24', '261.54']
}

const read: readonly BiomassGroup[] = ['cedar, larch', 'aspen, alder, cottonwood, willow', 'mixed hardwood']

function groupRows(): Check[] {
  return (Object.keys(weights) as BiomassGroup[]).flatMap((group) =>
    weights[group].map((weight, at): Check => ({
      what: `kg dry above ground, ${group}, ${10 * (at + 1)} cm`,
      got: () => aboveGroundBiomass(group, 10 * (at + 1)),
      ...printed(weight),
      source: groups,
      certainty: read.includes(group) ? 'read' : 'second-hand'
    }))
  )
}

function times(a: number | Refusal, b: number | Refusal): number {
  return isRefusal(a) || isRefusal(b) ? NaN : a * b
}

function ratio(what: string, got: () => number | Refusal, text: string): Check {
  return { what, got, ...printed(text), source: parts, certainty: 'read' }
}

/** Jenkins at the geometric middle of a class of trunk diameters. */
function foliageInClass(from: number, to: number): number | Refusal {
  return foliageRatio('hardwood', Math.sqrt(from * to))
}

/** Medians of another data set, which forest trees of the same size should come near: a quarter off is allowed. */
function fromOtherData(from: number, to: number, median: number): Check {
  return {
    what: `foliage over weight above ground at ${from} to ${to} cm, against other trees`,
    got: () => foliageInClass(from, to),
    ...near(median, 0.25),
    because: 'other trees, other countries: the two sets are reported to agree well above 5 cm, not closely',
    source: baad,
    certainty: 'data'
  }
}

const oak = 'hard maple, oak, hickory, beech'

export const biomass: Check[] = [
  ...groupRows(),
  ratio('foliage of a 30 cm hardwood', () => foliageRatio('hardwood', 30), '.0205'),
  ratio('stem wood of a 30 cm hardwood', () => stemWoodRatio('hardwood', 30), '.6143'),
  ratio('stem bark of a 30 cm hardwood', () => stemBarkRatio('hardwood', 30), '.1263'),
  ratio('branches of a 30 cm hardwood', () => branchRatio('hardwood', 30), '.2389'),
  ratio('coarse roots of a 30 cm hardwood', () => rootRatio('hardwood', 30), '.1894'),
  ratio('branches of a 10 cm hardwood, which is poor', () => branchRatio('hardwood', 10), '.43'),
  ratio('branches of a 40 cm hardwood', () => branchRatio('hardwood', 40), '.21'),
  ratio(
    'kg of foliage on a 30 cm oak',
    () => times(aboveGroundBiomass(oak, 30), foliageRatio('hardwood', 30)),
    '10.82'
  ),
  ratio(
    'kg of branches on a 30 cm oak',
    () => times(aboveGroundBiomass(oak, 30), branchRatio('hardwood', 30)),
    '125.8'
  ),
  ratio('foliage at 2.5 to 5 cm', () => foliageInClass(2.5, 5), '.089'),
  fromOtherData(5, 10, 0.035),
  fromOtherData(10, 20, 0.024),
  fromOtherData(20, 30, 0.0211),
  fromOtherData(30, 60, 0.0158)
]
