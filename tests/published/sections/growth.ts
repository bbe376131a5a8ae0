import { growthTimes } from '../evidence/trunkGrowth'
import { defaultRules } from '../../../shared/rules'
import { convertLength } from '../../../shared/units'
import { diameterFromGirth } from '../../../src/formulas/diameters'
import { growthAfterLoss, projectedRatio } from '../../../src/formulas/growth'
import { orangeDays, orangeGirths } from '../data/orange'
import { exactly, printed, type Check } from '../check'

const arithmetic = 'arithmetic of even increments, ours, from memory'
const growth2009 =
  'Gilman & Grabosky 2009, AUF 35(6):281-286: growth fell in proportion to the foliage removed'
const loyd = 'Loyd, Smiley & Fite 2024, AUF 50(6):414-426: no difference after three seasons'
const bracketed =
  'common practice, no source; bracketed by Mailloux et al. 2024 (NYC) and the USFS Urban Tree Database'
const orange = 'Draper & Smith 1998, R data set Orange (girth in mm, days)'
const cities =
  'Mailloux et al. 2024, PLOS ONE 19(7):e0304447, against USFS Urban Tree Database; quotient ours'

/** Inches of diameter a year from the first to the last girth of a tree. */
export function orangeInchesAYear(girths: readonly number[]): number {
  const grown = diameterFromGirth(girths.at(-1)!) - diameterFromGirth(girths[0]!)
  const years = (orangeDays[6] - orangeDays[0]) / 365.25
  return convertLength(grown, 'mm', 'in') / years
}

const orangeGrowth = (): number[] => Object.values(orangeGirths).map(orangeInchesAYear)

function rate(name: 'growthSlow' | 'growthMedium' | 'growthFast', text: string): Check {
  return {
    what: `inches a year of ${name.slice(6).toLowerCase()} trunks`,
    got: () => convertLength(defaultRules[name], 'mm', 'in'),
    ...printed(text),
    source: bracketed,
    certainty: 'practice'
  }
}

export const growth: Check[] = [
  {
    what: 'ratio of 4 on 6 in after 3 years of 0.35 in each: equal increments push it up',
    got: () => projectedRatio({ diameter: 4, yearly: 0.35 }, { diameter: 6, yearly: 0.35 }, 3),
    ...printed('.7163'),
    source: arithmetic,
    certainty: 'memory'
  },
  {
    what: 'ratio of 4 on 6 in after 5 years of 0.35 in each',
    got: () => projectedRatio({ diameter: 4, yearly: 0.35 }, { diameter: 6, yearly: 0.35 }, 5),
    ...printed('.7419'),
    source: arithmetic,
    certainty: 'memory'
  },
  {
    what: 'ratio of 4 on 6 in after the 6 2/3 years, (4 - 0.5 x 6) / (0.5 x 0.40 - 0.05), that bring it to 0.5',
    got: () =>
      projectedRatio(
        { diameter: 4, yearly: 0.05 },
        { diameter: 6, yearly: 0.4 },
        (4 - 0.5 * 6) / (0.5 * 0.4 - 0.05)
      ),
    ...exactly(0.5),
    source: arithmetic,
    certainty: 'memory'
  },
  {
    what: 'mm gained in the year after half of the foliage went, of 10 mm unpruned',
    got: () => growthAfterLoss(10, 0.5, 1),
    ...exactly(5),
    source: growth2009,
    certainty: 'read'
  },
  {
    what: 'mm gained in the fourth year after a cut at three quarters of the diameter, of 10 mm unpruned',
    got: () => growthAfterLoss(10, 0.5625, 4) - growthAfterLoss(10, 0.5625, 3),
    ...exactly(10),
    source: loyd,
    certainty: 'read'
  },
  rate('growthSlow', '.25'),
  rate('growthMedium', '.40'),
  rate('growthFast', '.60'),
  {
    what: 'slowest of five orange trees in inches a year, from girths in mm',
    got: () => Math.min(...orangeGrowth()),
    ...printed('0.34'),
    source: orange,
    certainty: 'data'
  },
  {
    what: 'fastest of five orange trees in inches a year, from girths in mm',
    got: () => Math.max(...orangeGrowth()),
    ...printed('0.57'),
    source: orange,
    certainty: 'data'
  },
  {
    what: 'times faster London plane grew by diameter over age in 17 cities than measured twice in New York',
    got: () => growthTimes('London plane'),
    ...printed('3.8'),
    source: cities,
    certainty: 'data'
  },
  {
    what: 'times faster honeylocust grew by the same comparison',
    got: () => growthTimes('honeylocust'),
    ...printed('1.5'),
    source: cities,
    certainty: 'data'
  }
]
