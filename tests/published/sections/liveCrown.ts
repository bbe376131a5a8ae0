import { crownRatios } from '../evidence/crownRatios'
import { defaultRules } from '../../../shared/rules'
import { crownBaseMax, heightForClearance, liveCrownRatio, shareBelow } from '../../../src/formulas/crown'
import { exactly, printed, type Check } from '../check'

const ep276 = 'Gilman, EDIS EP276/ENH1022, UF/IFAS, strategy 6: live-crown ratio above 60 %'
const naFr = 'USDA Forest Service, How to Prune Trees, NA-FR-01-95, crown raising: two-thirds, from memory'
const a300 = 'ANSI A300-1995, 5.3.1: half of the foliage in the lower two-thirds'

export const liveCrown: Check[] = [
  {
    what: 'height a tree needs before 16 ft of clearance leave a live-crown ratio of 0.60',
    got: () => heightForClearance(16),
    ...printed('40'),
    source: `${ep276}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'height a tree needs before 16 ft of clearance leave two-thirds of live crown',
    got: () => heightForClearance(16, 2 / 3),
    ...printed('48'),
    source: `${naFr}; arithmetic ours`,
    certainty: 'memory'
  },
  {
    what: 'clearance that a 25 ft tree can give now and keep 0.60, short of the 14 ft asked for',
    got: () => crownBaseMax(25),
    ...printed('10.0'),
    source: `${ep276}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'live-crown ratio kept by the plan',
    got: () => defaultRules.crownRatioGoal,
    ...printed('0.60'),
    source: ep276,
    certainty: 'read'
  },
  {
    what: 'median live-crown ratio of broadleaves over 2 m, which shows the goal is one of landscapes',
    got: () => crownRatios.find(({ kind }) => kind === 'found')!.ratio,
    ...printed('0.527'),
    source: 'BAAD (Falster et al. 2015, Ecology 96:1445), n = 602',
    certainty: 'data'
  },
  {
    what: 'crown base of a 40 ft tree with that median ratio, back to the ratio',
    got: () => {
      const found = crownRatios.find(({ kind }) => kind === 'found')!.ratio
      const ratio = liveCrownRatio(40, crownBaseMax(40, found))
      return ratio
    },
    ...printed('0.527'),
    source: 'BAAD (Falster et al. 2015, Ecology 96:1445), n = 602; round trip ours',
    certainty: 'data'
  },
  {
    what: 'share of the foliage to stay in the lower two-thirds',
    got: () => defaultRules.lowerFoliageGoal,
    ...exactly(0.5),
    source: a300,
    certainty: 'read'
  },
  {
    what: 'share of an evenly filled crown from 10 to 40 ft that lies in its lower two-thirds',
    got: () => shareBelow(10, 40, 30),
    ...printed('0.67'),
    source: `${a300}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'share in the lower two-thirds once a limb from 10 to 40 ft is stripped up to 25 ft',
    got: () => shareBelow(25, 40, 30),
    ...printed('0.33'),
    source: `${a300}, which stripping the inside breaks; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'share in the lower two-thirds of a limb that ends below them',
    got: () => shareBelow(12, 28, 30),
    ...exactly(1),
    source: `${a300}; arithmetic ours`,
    certainty: 'read'
  }
]
