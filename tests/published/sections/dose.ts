import { meanCycle, pruningCycles } from '../evidence/pruningCycles'
import { highestNamed, strictestLimit } from '../evidence/removalLimits'
import { defaultRules, ruleBook } from '../../../shared/rules'
import { dayOf, serialOf } from '../../../shared/dates'
import { allowedRemoval, visitsNeeded } from '../../../src/formulas/removal'
import { nextVisit } from '../../../src/formulas/time'
import { isRefusal } from '../../../shared/refusal'
import { exactly, printed, type Check } from '../check'

const csu = 'Colorado State University Extension GardenNotes, Pruning Mature Shade Trees'
const ep276 = 'Gilman, EDIS EP276/ENH1022, UF/IFAS'
const city = 'Thousand Oaks CA, municipal code 5-28.04: 25 % in a calendar year'

function visits(needed: number, allowed: number): number {
  const whole = visitsNeeded(needed, allowed)
  return isRefusal(whole) ? NaN : whole
}

export const dose: Check[] = [
  {
    what: 'most that general texts allow on a young tree',
    got: () => strictestLimit('young'),
    ...printed('0.25'),
    source: `${csu}; USDA NA-FR-01-95 (from memory); Colorado State Extension, Pueblo County`,
    certainty: 'read'
  },
  {
    what: 'most that general texts allow on a medium tree',
    got: () => strictestLimit('medium'),
    ...printed('0.20'),
    source: csu,
    certainty: 'read'
  },
  {
    what: 'most that general texts allow on a mature tree',
    got: () => strictestLimit('mature'),
    ...printed('0.10'),
    source: 'Colorado State Extension, Pueblo County: 5 to 10 %',
    certainty: 'read'
  },
  {
    what: 'most that anyone names for a young tree, the end of the rule’s range',
    got: () => ruleBook.allowedYoung.high,
    ...printed('0.40'),
    source: `${ep276}: 40 % at the visit after 2 years`,
    certainty: 'read'
  },
  {
    what: 'most that anyone names for a medium tree, the end of the rule’s range',
    got: () => ruleBook.allowedMedium.high,
    ...printed('0.35'),
    source: `${ep276}: 35 % at the visit after 4 years`,
    certainty: 'read'
  },
  {
    what: 'most that anyone names for a mature tree, the end of the rule’s range',
    got: () => ruleBook.allowedMature.high,
    ...printed('0.25'),
    source: 'ANSI A300-1995, 5.3.1: a quarter of the foliage in a growing season',
    certainty: 'read'
  },
  {
    what: 'what a young tree may still lose under a city’s 25 % after 10 % this year',
    got: () => allowedRemoval('young', 'good', 0.1, 0.25),
    ...printed('0.15'),
    source: `${city}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'what a young tree may lose where under 20 % a year is the local rule',
    got: () => allowedRemoval('young', 'good', 0, 0.2),
    ...printed('0.20'),
    source: 'TreesUpstate (South Carolina): under 20 % a year in structural pruning',
    certainty: 'read'
  },
  {
    what: 'live wood off a stressed mature tree',
    got: () => allowedRemoval('mature', 'poor'),
    ...exactly(0),
    source: csu,
    certainty: 'read'
  },
  {
    what: 'share at each visit when 42 % of a medium tree is spread evenly',
    got: () => 0.42 / visits(0.42, strictestLimit('medium')),
    ...printed('0.14'),
    source: `${csu}: 20 % a visit; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'visits for 10 % and 20 % of a mature tree at 10 % each, with no visit added by floating point',
    got: () => visits(0.1 + 0.2, 0.1),
    ...exactly(3),
    source: `${csu}; arithmetic ours`,
    certainty: 'read'
  },
  {
    what: 'mean cycle in years of a city that prunes 58,000 of 200,000 trees a year',
    got: () => meanCycle(200_000, 58_000),
    ...printed('3.45'),
    source: 'Zillmer, Boeder & Genich 2000, AUF 26(2):97-105; arithmetic ours',
    certainty: 'read'
  },
  {
    what: 'years by which the plan’s interval for medium trees differs from the shortest cycle listed',
    got: () => defaultRules.intervalMedium - Math.min(...pruningCycles.map(({ years }) => years)),
    ...exactly(0),
    source: 'municipal plan, Orono MN: every 3 years below 6 in',
    certainty: 'read'
  },
  {
    what: 'year of the visit after the one at planting in 2030',
    got: () => {
      const next = nextVisit(serialOf(2030, 3, 1), 'planting')
      return isRefusal(next) ? NaN : dayOf(next).year
    },
    ...printed('2032'),
    source: `${ep276}: at planting, 2, 4 years`,
    certainty: 'read'
  },
  {
    what: 'highest share anyone names at planting',
    got: () => highestNamed('planting'),
    ...printed('0.25'),
    source: `${ep276}: 25 % at planting`,
    certainty: 'read'
  }
]
