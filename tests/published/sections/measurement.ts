import { isRefusal } from '../../../shared/refusal'
import { breastHeightMeters, convertLength, millimetersPer } from '../../../shared/units'
import { diameterFromGirth, stemsCombined } from '../../../src/formulas/diameters'
import { readInventory } from '../../../src/inventory/readInventory'
import { treeHeight } from '../../../src/formulas/heights'
import { block } from '../../plan/trees'
import { loblollyAges, loblollyHeights } from '../data/loblolly'
import { mean } from '../leastSquares'
import { exactly, printed, type Check } from '../check'

const nist = 'NIST SP 811, exact by definition, from memory'
const loblolly = 'R data set Loblolly, mean height in ft of 14 seed sources'
const spreadWay = 'common practice, no source: spread as the mean of two perpendicular readings'
const native = 'nativetreesociety.org: tops average 13 ft off the base, which errs heights by 15 to 25 ft'

const radians = (degrees: number): number => (degrees * Math.PI) / 180
const degrees = (percent: number): number => (Math.atan(percent / 100) * 180) / Math.PI

/** Mean height in feet at an age, the heights read as an inventory in feet and kept in meters. */
function meanHeight(age: (typeof loblollyAges)[number]): number {
  const at = loblollyAges.indexOf(age)
  const rows = Object.entries(loblollyHeights).map(([seed, heights]) => [seed, heights[at]!])
  const { trees } = readInventory(block('Tree | Height (ft)', ...rows))
  return convertLength(mean(trees.map(({ height }) => height ?? NaN)), 'm', 'ft')
}

function loblollyRow(age: (typeof loblollyAges)[number], text: string): Check {
  return {
    what: `mean height in ft of loblolly pine at ${age} years, read from cells in feet`,
    got: () => meanHeight(age),
    ...printed(text),
    source: loblolly,
    certainty: 'data'
  }
}

/** A top 13 ft nearer to the eye than the base, seen at 55 degrees from 50 ft; the base is level with the eye. */
function errorOfTangent(): number {
  const tangent = treeHeight(50, 55, 0)
  const slant = 37 / Math.cos(radians(55))
  return isRefusal(tangent) ? NaN : tangent - slant * Math.sin(radians(55))
}

export const measurement: Check[] = [
  {
    what: 'diameter of a girth of 31.4159',
    got: () => diameterFromGirth(31.4159),
    ...printed('10.000'),
    source: 'geometry of the circle, from memory',
    certainty: 'memory'
  },
  {
    what: 'height from 100 ft with 52 % and -6 %',
    got: () => treeHeight(100, degrees(52), degrees(-6)),
    ...printed('58'),
    source: 'common practice, no source: percent scale of a clinometer',
    certainty: 'practice'
  },
  {
    what: 'height by the tangents as by slant distances and sines, the top over the base',
    got: () => treeHeight(50, 40, -8),
    ...exactly(
      (50 / Math.cos(radians(40))) * Math.sin(radians(40)) +
        (50 / Math.cos(radians(8))) * Math.sin(radians(8))
    ),
    source: 'geometry of the triangle, from memory',
    certainty: 'memory'
  },
  {
    what: 'feet that the tangents overstate a top 13 ft off the base',
    got: errorOfTangent,
    expected: 20,
    within: 5,
    because: 'the source gives a span of 15 to 25 ft',
    source: native,
    certainty: 'read'
  },
  {
    what: 'feet by which breast height in most of the world is below the US one',
    got: () => convertLength(breastHeightMeters - 1.3, 'm', 'ft'),
    ...printed('0.23'),
    source: 'breast height 4.5 ft in the US, 1.30 m in most of the world; arithmetic ours',
    certainty: 'read'
  },
  {
    what: 'two equal stems as one, in diameters of one',
    got: () => stemsCombined([7, 7]) / 7,
    ...exactly(Math.SQRT2),
    source: 'OpenBARD (Fennell 2024): √Σd² in 1,190 of 1,190 rows, within 0.5 cm',
    certainty: 'data'
  },
  {
    what: 'spread in feet read as 30 x 40 ft',
    got: () => {
      const spread = readInventory(block('Tree | Spread (ft)', ['T1', '30 x 40'])).trees[0]?.spread
      return convertLength(spread ?? NaN, 'm', 'ft')
    },
    ...printed('35.0'),
    source: spreadWay,
    certainty: 'practice'
  },
  {
    what: 'mm in a yard',
    got: () => millimetersPer.yd,
    ...exactly(914.4),
    source: nist,
    certainty: 'memory'
  },
  {
    what: 'ft in a mile’s 1,760 yards',
    got: () => convertLength(1760, 'yd', 'ft'),
    ...exactly(5280),
    source: nist,
    certainty: 'memory'
  },
  {
    what: 'cm of 12 in trunk diameter, read from a column in inches',
    got: () => {
      const { trees } = readInventory(block('Tree | DBH (in)', ['T1', 12]))
      return (trees[0]?.trunk ?? NaN) / 10
    },
    ...exactly(30.48),
    source: nist,
    certainty: 'memory'
  },
  loblollyRow(3, '4.24'),
  loblollyRow(5, '10.21'),
  loblollyRow(10, '27.44'),
  loblollyRow(15, '40.54'),
  loblollyRow(20, '51.47'),
  loblollyRow(25, '60.29')
]
