import { crownSectionSlopes, leafArea, leafAreaExponents, leafAreaTimes } from '../evidence/leafArea'
import { isRefusal } from '../../../shared/refusal'
import { sharesAmong, sharesWithStems } from '../../../src/formulas/crown'
import { cutDose } from '../../../src/formulas/cuts'
import { near, printed, type Check } from '../check'

const pipe = 'Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167'
const urban = 'USFS Urban Tree Database RDS-2016-0005, large broadleaf deciduous, n = 5,335'
const baad = 'BAAD (Falster et al. 2015, Ecology 96:1445), leaf area on section at the crown base, n = 336'

function area(trunk: number): number {
  const found = leafArea(trunk)
  return isRefusal(found) ? NaN : found
}

/** How many times the foliage our rule gives a limb twice as thick as another. */
function pipeTimes(): number {
  const [thin, thick] = sharesAmong([10, 20])
  return thick! / thin!
}

export const foliage: Check[] = [
  {
    what: 'leaf area in m² at 30 cm',
    got: () => area(30),
    ...printed('129.0'),
    source: `${urban}; fit and arithmetic ours`,
    certainty: 'data'
  },
  {
    what: 'leaf area at 60 cm over that at 30 cm',
    got: () => area(60) / area(30),
    ...printed('3.87'),
    source: `${urban}; fit and arithmetic ours`,
    certainty: 'data'
  },
  {
    what: 'foliage of a limb twice as thick by our rule, against street and park trees',
    got: pipeTimes,
    ...near(2 ** leafAreaExponents.large, 0.05),
    source: `${urban}: exponent 1.954 against the pipe model’s 2`,
    certainty: 'data'
  },
  {
    what: 'foliage of a stem twice as thick by our rule, against stems at the crown base',
    got: pipeTimes,
    ...near(leafAreaTimes(2, crownSectionSlopes.reducedAxis), 0.1),
    source: `${baad}: slope 0.95`,
    certainty: 'data'
  },
  {
    what: 'foliage of a stem twice as thick by the lower slope',
    got: () => leafAreaTimes(2, crownSectionSlopes.ordinary),
    ...printed('3.63'),
    source: `${baad}: slope 0.93, arithmetic ours`,
    certainty: 'data'
  },
  {
    what: 'sum of the shares of six bases',
    got: () => sharesAmong([7, 5, 5, 4, 4, 3]).reduce((sum, share) => sum + share, 0),
    ...printed('1.0000'),
    source: `${pipe}: shares of the total basal area`,
    certainty: 'read'
  },
  {
    what: 'dose of removing the 7 in base of six outright',
    got: () => cutDose(7, 7, sharesAmong([7, 5, 5, 4, 4, 3])[0]!),
    ...printed('0.35'),
    source: `${pipe}, arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'share of a lone 5 in limb on a 12 in stem, the other limbs left out of the survey',
    got: () => sharesWithStems([{ diameter: 5, stem: 12, origin: 10 }])[0] ?? NaN,
    ...printed('0.148'),
    source: `${pipe}: section of the limb over the stem’s and its own, arithmetic ours`,
    certainty: 'read'
  }
]
