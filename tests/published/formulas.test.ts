/**
 * The formulas against numbers that others published. `printed` is the number as it stands in the source, or as its rule works out by hand; half a
 * unit of its last digit is the tolerance, unless a wider one is given with its reason. `certainty` says how the
 * number came here: read in the source, quoted by another (second-hand), recalled (from memory), or common practice.
 */
import { convertLength, kilogramsPerPound, breastHeightMeters } from '../../shared/units'
import { densityOf, poundsPerCubicFootAsMetric } from '../../src/formulas/speciesDensities'
import { Money } from '../../shared/money'
import { defaultRules, visitInterval } from '../../shared/rules'
import { allowedRemoval, visitsNeeded } from '../../src/formulas/removal'
import { sharesAmong, crownBaseMax, liveCrownRatio } from '../../src/formulas/crown'
import { lowAndHigh, upperThird, standing, type Standing } from '../../src/formulas/priority'
import { wireDistance } from '../../src/formulas/wires'
import { aspectRatio, stemAbove, stemsCombined } from '../../src/formulas/diameters'
import { cutDiameter, cutDose, cutShare, lateralMin } from '../../src/formulas/cuts'
import { treeHeight } from '../../src/formulas/heights'
import { effectLeft } from '../../src/formulas/growth'
import { brushWeight, taperedVolume } from '../../src/formulas/brush'
import { priceWithMargin } from '../../src/formulas/price'
import { ALLOWEDREMOVAL } from '../../functions/visits'
import { LIVECROWN } from '../../functions/measure'
import { WIREDISTANCE } from '../../functions/site'
import '../functions/spreadsheet'

type Certainty = 'read' | 'second-hand' | 'from memory' | 'common practice, no source'

interface Published {
  what: string
  printed: string
  of: () => unknown
  source: string
  certainty: Certainty
  /** A wider tolerance than the printed precision, and why. */
  wider?: { within: number; because: string }
}

const degrees = (slope: number): number => (Math.atan(slope) * 180) / Math.PI
const bases = [7, 5, 5, 4, 4, 3]
const density = (species: string) => (): unknown => densityOf(species)?.value

const uf = 'University of Florida tree biomechanics lab note, 2026: mean branch over mean stem diameter'
const ep276 = 'Gilman, EDIS EP276/ENH1022, Pruning Shade Trees in Landscapes, UF/IFAS'
const circular853 = 'Gilman & Black, Circular 853/MG087, Fig. 15'
const toney = 'Toney & Reeves 2009, West. J. Appl. For. 24(2):76-82: uncompacted live-crown ratio'
const naFr = 'USDA Forest Service, How to Prune Trees, NA-FR-01-95'
const csu = 'Colorado State University Extension GardenNotes, Pruning Mature Shade Trees'
const lateral = 'Grabosky & Gilman 2007, AUF 33(5):360-366'
const pipe =
  'Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159-167: leaf mass linear in basal area'
const loyd = 'Loyd, Smiley & Fite 2024, AUF 50(6):414-426, with area taken as the square of the diameter'
const growth2009 = 'Gilman & Grabosky 2009, AUF 35(6):281-286, with area taken as the square of the diameter'
const osha = '29 CFR 1910.269, definition of line-clearance tree trimming'
const fia = 'USFS FIA reference species table (specific gravity and moisture content), as lb/ft³'
const nps = 'National Park Service, Safety for Tree Workers, log weights as reprinted in an equipment manual'
const otherTable = {
  within: 2,
  because: 'an independent table of other samples, printed to whole pounds: 2 lb/ft³ is under 4 %'
}
const nist = 'NIST SP 811, exact by definition'

const numbers: Published[] = [
  {
    what: 'a 6 in limb on a 10 in stem',
    printed: '0.600',
    of: () => aspectRatio(6, 10),
    source: uf,
    certainty: 'read'
  },
  {
    what: 'the stem above a union of 10 in below and a 6 in limb',
    printed: '8.0',
    of: () => stemAbove(10, 36),
    source: 'cross-section conserved at a union: Shinozaki et al. 1964, Jpn. J. Ecol. 14 (pipe model)',
    certainty: 'from memory'
  },
  {
    what: 'start of the canopy’s upper third at 40 ft with the base at 10 ft',
    printed: '30',
    of: () => upperThird(40, 10),
    source: circular853,
    certainty: 'read'
  },
  {
    what: 'a limb from half the height never counts as starting low',
    printed: '0',
    of: () => lowAndHigh({ origin: 20, tip: 40 }, { height: 40, crownBase: 10 }),
    source: circular853,
    certainty: 'read'
  },
  {
    what: 'a limb whose tip ends at the upper third is not yet in it',
    printed: '0',
    of: () => lowAndHigh({ origin: 8, tip: 30 }, { height: 40, crownBase: 10 }),
    source: circular853,
    certainty: 'read'
  },
  {
    what: 'crown from 10 ft of 40',
    printed: '0.75',
    of: () => liveCrownRatio(40, 10),
    source: toney,
    certainty: 'read'
  },
  {
    what: 'crown from 14 ft of 40',
    printed: '0.65',
    of: () => LIVECROWN([[40]], [[14]])[0]?.[0],
    source: toney,
    certainty: 'read'
  },
  {
    what: 'a 25 ft tree cleared to 14 ft',
    printed: '0.44',
    of: () => liveCrownRatio(25, 14),
    source: toney,
    certainty: 'read'
  },
  {
    what: 'highest base that keeps 60 % of 40 ft',
    printed: '16.0',
    of: () => crownBaseMax(40),
    source: `${ep276}, strategy 6`,
    certainty: 'read'
  },
  {
    what: 'highest base that keeps two-thirds of 36 ft',
    printed: '12.0',
    of: () => crownBaseMax(36, 2 / 3),
    source: `${naFr}, crown raising`,
    certainty: 'from memory'
  },
  {
    what: 'allowed at planting',
    printed: '0.25',
    of: () => allowedRemoval('planting', 'good'),
    source: ep276,
    certainty: 'read'
  },
  {
    what: 'allowed on a young tree',
    printed: '0.25',
    of: () => allowedRemoval('young', 'good'),
    source: csu,
    certainty: 'read'
  },
  {
    what: 'allowed on a medium tree',
    printed: '0.20',
    of: () => ALLOWEDREMOVAL([['medium']], [['good']])[0]?.[0],
    source: csu,
    certainty: 'read'
  },
  {
    what: 'allowed on a mature tree',
    printed: '0.10',
    of: () => allowedRemoval('mature', 'good'),
    source: csu,
    certainty: 'read'
  },
  {
    what: 'allowed on a stressed tree',
    printed: '0',
    of: () => allowedRemoval('young', 'poor'),
    source: csu,
    certainty: 'read'
  },
  {
    what: 'least lateral of a 3 in cut',
    printed: '1.00',
    of: () => lateralMin(3),
    source: lateral,
    certainty: 'read'
  },
  {
    what: 'least lateral of a 3 in cut at one half',
    printed: '1.50',
    of: () => lateralMin(3, 1 / 2),
    source: 'ISA best management practices, older and larger stems',
    certainty: 'from memory'
  },
  {
    what: 'share of the 7 in base of six',
    printed: '.35',
    of: () => sharesAmong(bases)[0],
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'share of a 5 in base of six',
    printed: '.1786',
    of: () => sharesAmong(bases)[1],
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'share of a 4 in base of six',
    printed: '.1143',
    of: () => sharesAmong(bases)[3],
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'share of the 3 in base of six',
    printed: '.0643',
    of: () => sharesAmong(bases)[5],
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'share of a 7 in limb cut at 5 in',
    printed: '.510',
    of: () => cutShare(5, 7),
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'dose of that cut',
    printed: '.1786',
    of: () => cutDose(5, 7, 0.35),
    source: pipe,
    certainty: 'read'
  },
  {
    what: 'foliage taken at half of the diameter',
    printed: '.25',
    of: () => cutShare(0.5, 1),
    source: loyd,
    certainty: 'read'
  },
  {
    what: 'foliage taken at three quarters of the diameter',
    printed: '.56',
    of: () => cutShare(0.75, 1),
    source: loyd,
    certainty: 'read'
  },
  {
    what: 'diameter of a cut that takes half of the foliage',
    printed: '.71',
    of: () => cutDiameter(1, 0.5),
    source: growth2009,
    certainty: 'read'
  },
  {
    what: 'diameter of a cut that takes three quarters',
    printed: '.87',
    of: () => cutDiameter(1, 0.75),
    source: growth2009,
    certainty: 'read'
  },
  {
    what: 'effect of a subordination after three growing seasons',
    printed: '0',
    of: () => effectLeft(3),
    source: 'Loyd, Smiley & Fite 2024, AUF 50(6):414-426: no difference after three',
    certainty: 'read'
  },
  {
    what: 'stems of 5, 6 and 8 in as one',
    printed: '11.180',
    of: () => stemsCombined([5, 6, 8]),
    source: 'forestry and valuation use; OpenBARD (Fennell 2024), combined stem diameter',
    certainty: 'read'
  },
  {
    what: 'height from 100 ft with slopes of 52 % and -6 %',
    printed: '58',
    of: () => treeHeight(100, degrees(0.52), degrees(-0.06)),
    source: 'percent scale of a clinometer, D(p top - p base)/100',
    certainty: 'common practice, no source'
  },
  {
    what: 'height from 50 ft with 17 degrees and an eye at 5.5 ft',
    printed: '20.8',
    of: () => treeHeight(50, 17, degrees(-5.5 / 50)),
    source: 'worked example of the tangent method; its publisher was not noted down',
    certainty: 'second-hand'
  },
  {
    what: 'feet from a line of 50 kV',
    printed: '10',
    of: () => wireDistance(50),
    source: osha,
    certainty: 'read'
  },
  {
    what: 'the same in meters',
    printed: '3.05',
    of: () => convertLength(wireDistance(50), 'ft', 'm'),
    source: osha,
    certainty: 'read'
  },
  {
    what: 'feet from a line of 138 kV between phases, 79.67 kV to ground',
    printed: '10.99',
    of: () => WIREDISTANCE([[138 / Math.sqrt(3)]])[0]?.[0],
    source: osha,
    certainty: 'read'
  },
  { what: 'red maple', printed: '50.0', of: density('red maple'), source: fia, certainty: 'read' },
  { what: 'sugar maple', printed: '55.0', of: density('sugar maple'), source: fia, certainty: 'read' },
  { what: 'silver maple', printed: '46.0', of: density('silver maple'), source: fia, certainty: 'read' },
  { what: 'Norway maple', printed: '49.9', of: density('Norway maple'), source: fia, certainty: 'read' },
  { what: 'northern red oak', printed: '64.0', of: density('Quercus rubra'), source: fia, certainty: 'read' },
  { what: 'live oak', printed: '76.0', of: density('live oak'), source: fia, certainty: 'read' },
  { what: 'honeylocust', printed: '60.0', of: density('Honey locust'), source: fia, certainty: 'read' },
  { what: 'eastern white pine', printed: '35.0', of: density('Pine, white'), source: fia, certainty: 'read' },
  {
    what: 'red maple logs',
    printed: '50',
    of: density('red maple'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'red oak logs',
    printed: '63',
    of: density('red oak'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'white oak logs',
    printed: '62',
    of: density('white oak'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'live oak logs',
    printed: '76',
    of: density('live oak'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'elm logs',
    printed: '54',
    of: density('american elm'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'black walnut logs',
    printed: '58',
    of: density('black walnut'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'cottonwood logs',
    printed: '49',
    of: density('cottonwood'),
    source: nps,
    certainty: 'second-hand',
    wider: otherTable
  },
  {
    what: 'cubic feet of a log of 10 and 12 in over 16 ft, cone frustum',
    printed: '10.588',
    of: () => taperedVolume(10 / 12, 1, 16),
    source: 'worked example of log volume formulas; its publisher was not noted down',
    certainty: 'second-hand'
  },
  {
    what: 'price of a cost of 40 at a margin of 33.33 %',
    printed: '60.00',
    of: () => priceWithMargin(new Money(40), new Money(0), new Money('0.3333')).toNumber(),
    source: 'bookkeeping example: cost 40, markup 50 %, price 60, margin 33.33 %',
    certainty: 'second-hand',
    wider: { within: 0.006, because: 'the margin itself is printed to two decimals' }
  },
  {
    what: 'price of a cost of 600 at a margin of 25 %',
    printed: '800.00',
    of: () => priceWithMargin(new Money(600), new Money(0), new Money('0.25')).toNumber(),
    source: 'margin on price, P = C/(1 - g)',
    certainty: 'common practice, no source'
  },
  {
    what: 'visits for 42 % of a medium tree at 20 %',
    printed: '3',
    of: () => visitsNeeded(0.42, allowedRemoval('medium', 'good')),
    source: csu,
    certainty: 'read'
  },
  {
    what: 'years between visits of a young tree',
    printed: '2',
    of: () => visitInterval(defaultRules, 'young'),
    source: `${ep276}: at planting, 2, 4 years`,
    certainty: 'read'
  },
  {
    what: 'years between visits of a medium tree',
    printed: '3',
    of: () => visitInterval(defaultRules, 'medium'),
    source: 'municipal plan, Orono MN: every 3 years under 6 in',
    certainty: 'read'
  },
  {
    what: 'years between visits of a mature tree',
    printed: '5',
    of: () => visitInterval(defaultRules, 'mature'),
    source: 'Miller & Sylvester 1981, J. Arboric. 7(4):109-112, as quoted in the Orono plan',
    certainty: 'second-hand'
  },
  {
    what: 'centimeters in an inch',
    printed: '2.54',
    of: () => convertLength(1, 'in', 'cm'),
    source: nist,
    certainty: 'from memory'
  },
  {
    what: 'meters in a foot',
    printed: '0.3048',
    of: () => convertLength(1, 'ft', 'm'),
    source: nist,
    certainty: 'from memory'
  },
  {
    what: 'kilograms in a pound',
    printed: '0.45359237',
    of: () => kilogramsPerPound,
    source: nist,
    certainty: 'from memory'
  },
  {
    what: 'breast height in meters',
    printed: '1.3716',
    of: () => breastHeightMeters,
    source: 'diameter at breast height at 4.5 ft, US forestry use',
    certainty: 'read'
  },
  {
    what: 'kg/m³ in 62.4 lb/ft³, the density of water',
    printed: '1000',
    of: () => poundsPerCubicFootAsMetric(62.4),
    source: 'water in the USFS FIA density formula, SG × 62.4',
    certainty: 'read'
  }
]

function tolerance({ printed, wider }: Published): number {
  return wider?.within ?? 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)
}

describe('published numbers', () => {
  test.each(numbers.map((row) => [row.what, row.printed, row.source, row] as const))(
    '%s is %s (%s)',
    (_, printed, _source, row) => {
      const actual = row.of()
      expect(typeof actual).toBe('number')
      expect(Math.abs((actual as number) - Number(printed)) <= tolerance(row) + 1e-12).toBe(true)
    }
  )
  test('at least 25 of them have a named source', () => {
    const sourced = numbers.filter(({ certainty }) => certainty !== 'common practice, no source')
    expect(sourced.length).toBeGreaterThanOrEqual(25)
    for (const { source, certainty } of numbers) {
      expect(source.length).toBeGreaterThan(10)
      expect(certainty).not.toBe('')
    }
  })
})

const bands: [ratio: number, bark: 'none' | 'partial' | 'full', stands: Standing, source: string][] = [
  [0.5, 'none', 'subordinate', `${ep276}, strategy 5: smaller than half the trunk`],
  [0.6, 'none', 'gaining', 'Dahle et al. 2022, Forests 13(7):1007: keep under 0.60'],
  [
    0.71,
    'full',
    'codominant',
    'Dahle et al. 2022, quoting earlier work: over 0.70 with included bark, second-hand'
  ],
  [
    0.71,
    'none',
    'competing',
    'Dahle et al. 2022: 0.70 without included bark is to be considered, not codominant'
  ],
  [0.83, 'none', 'codominant', 'Dahle et al. 2022: about 0.83 without included bark']
]

test.each(bands)('a ratio of %d with included bark %s is %s (%s)', (ratio, bark, stands) => {
  expect(standing(ratio, bark)).toBe(stands)
})

test('the weight of a limb of 6 in over 20 ft, to two figures, is that of a cone a little lighter than the frustum to 1 in', () => {
  // 1.564 ft³ × 50 lb/ft³ = 78.2 lb for the frustum: solid geometry and the FIA density of red maple.
  const frustum = taperedVolume(0.5, 1 / 12, 20)
  expect(frustum).toBeCloseTo(1.564, 3)
  expect(frustum * 50).toBeCloseTo(78.2, 1)
  expect(brushWeight(6, 20, 'red maple', 'in-ft')).toBeLessThan(frustum * 50)
})
