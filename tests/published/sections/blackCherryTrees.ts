import { convertLength } from '../../../shared/units'
import { diameterFromGirth } from '../../../src/formulas/diameters'
import { readInventory } from '../../../src/inventory/readInventory'
import { taperedVolume } from '../../../src/formulas/brush'
import { block } from '../../plan/trees'
import { blackCherry } from '../data/blackCherry'
import { deviation, leastSquares, mean } from '../leastSquares'
import { printed, type Check } from '../check'

const source = 'R data set trees (Ryan, Joiner & Ryan 1976, Minitab Student Handbook), 31 black cherry trees'

interface Stem {
  /** Inches and feet, back from the millimeters and meters that the inventory keeps. */
  inches: number
  feet: number
  cubicFeet: number
  millimeters: number
  meters: number
}

/** The trees as the inventory reads them from cells in inches and feet. */
export function stems(): Stem[] {
  const rows = blackCherry.map(([diameter, height], at) => [`tree ${at + 1}`, diameter, height])
  const { trees } = readInventory(block('Tree | Trunk diameter (in) | Height (ft)', ...rows))
  return trees.map(({ trunk, height }, at) => {
    const millimeters = trunk ?? NaN
    const meters = height ?? NaN
    return {
      inches: convertLength(millimeters, 'mm', 'in'),
      feet: convertLength(meters, 'm', 'ft'),
      cubicFeet: blackCherry[at]![2],
      millimeters,
      meters
    }
  })
}

function logFit(size: (stem: Stem) => readonly [diameter: number, height: number]): number[] {
  const all = stems()
  const columns = all.map((stem) => {
    const [diameter, height] = size(stem)
    return [1, Math.log(diameter), Math.log(height)]
  })
  return leastSquares(
    columns,
    all.map(({ cubicFeet }) => Math.log(cubicFeet))
  )
}

const imperial = ({ inches, feet }: Stem) => [inches, feet] as const

function linearFit(): number[] {
  const all = stems()
  return leastSquares(
    all.map(({ inches, feet }) => [1, inches * inches * feet]),
    all.map(({ cubicFeet }) => cubicFeet)
  )
}

/** Volume over that of the cylinder on the same diameter and height. */
export function formFactors(diameter: (inches: number) => number = (inches) => inches): number[] {
  return stems().map(({ inches, feet, cubicFeet }) => {
    const across = convertLength(diameter(inches), 'in', 'ft')
    return cubicFeet / taperedVolume(across, across, feet)
  })
}

function row(what: string, got: () => number, text: string, how = source): Check {
  return { what, got, ...printed(text), source: how, certainty: 'data' }
}

export const blackCherryTrees: Check[] = [
  row('intercept of ln V on ln D (in) and ln H (ft)', () => logFit(imperial)[0]!, '-6.63162'),
  row('slope of ln V on ln D', () => logFit(imperial)[1]!, '1.98265'),
  row('slope of ln V on ln H', () => logFit(imperial)[2]!, '1.11712'),
  row(
    'slope of ln V on ln D in mm and m, the same as in inches and feet',
    () => logFit(({ millimeters, meters }) => [millimeters, meters])[1]!,
    '1.98265'
  ),
  row('intercept of V on D²H', () => linearFit()[0]!, '-0.2977'),
  row('slope of V on D²H', () => linearFit()[1]!, '.002124'),
  row('mean form factor against the cylinder', () => mean(formFactors()), '.3849'),
  row('standard deviation of the form factors', () => deviation(formFactors()), '.030'),
  row('least form factor', () => Math.min(...formFactors()), '.324'),
  row('largest form factor', () => Math.max(...formFactors()), '.440'),
  row(
    'form factor of our cone',
    () => taperedVolume(1, 0, 80) / taperedVolume(1, 1, 80),
    '.333',
    'solid geometry; arithmetic ours, beside the R data set trees'
  ),
  row(
    'mean form factor if the column called girth were taken for one: a stem above its cylinder cannot be',
    () => mean(formFactors(diameterFromGirth)),
    '3.80',
    `${source}; arithmetic ours`
  )
]
