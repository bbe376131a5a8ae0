import type { Plan } from '../plan/plan'
import { Money } from '../../shared/money'
import { kilogramsPerPound } from '../../shared/units'
import { publishedSlopes } from './budgetFigures'
import type { EstimateLine } from './estimate'
import type { Offer } from './offers'

/** A figure of an estimate beside what is published of the same thing. */
export interface Comparison {
  readonly what: string
  readonly here: number
  readonly published: string
  readonly unit: string
  readonly source: string
}

const slopes = `${publishedSlopes.source}: slopes for trunks of 4 to 16 in, taken through zero, as minutes of one person (house reading)`

const contract = 'Piedmont, California, 2022: 811 trees for 145,370 USD; quotient ours'

const minutesOf = ({ persons, minutes }: EstimateLine) => persons * minutes.cutting
const brushOf = ({ minutes }: EstimateLine, crew: number) => crew * minutes.brush

const tenths = (value: number) => Math.round(value * 10) / 10

/**
 * What first visits that are offered take and cost on average, beside published figures; empty where none has a trunk. They
 * are orders of size, not goals: other trees, other work, other years.
 */
export function comparisonOf(plan: Pick<Plan, 'trees'>, offer: Offer): Comparison[] {
  const trunks = new Map(plan.trees.map(({ tree }) => [tree.id, tree.trunk]))
  const lines = offer.lines.filter(({ visit, tree }) => visit === 1 && (trunks.get(tree) ?? null) !== null)
  const inches = lines.reduce((sum, { tree }) => sum + (trunks.get(tree) ?? 0) / 25.4, 0)
  const sum = (of: (line: EstimateLine) => number) => lines.reduce((all, line) => all + of(line), 0)
  const pruning = sum(minutesOf)
  if (inches === 0 || pruning === 0) return []
  const { crewPersons, currency, minorDigits } = { ...offer.rates, ...offer }
  const pounds = sum(({ brushKilograms }) => brushKilograms) / kilogramsPerPound
  const price = lines.reduce((all, line) => all.plus(line.price), new Money(0)).div(lines.length)
  const found: Comparison[] = [
    {
      what: 'Cutting for each inch of trunk',
      here: tenths(pruning / inches),
      published: String(publishedSlopes.pruningPerInch),
      unit: 'person-minutes',
      source: slopes
    },
    {
      what: 'Handling brush for each inch of trunk',
      here: tenths(sum((line) => brushOf(line, crewPersons)) / inches),
      published: String(publishedSlopes.stackingPerInch),
      unit: 'person-minutes',
      source: slopes
    },
    {
      what: 'Brush for each minute of cutting',
      here: tenths(pounds / pruning),
      published: String(publishedSlopes.poundsPerMinute),
      unit: 'lb',
      source: publishedSlopes.source
    }
  ]
  if (currency !== 'USD') return found
  const average = price.toDecimalPlaces(minorDigits).toNumber()
  return [
    ...found,
    {
      what: 'A first visit, on average',
      here: average,
      published: '179.25',
      unit: 'USD a tree',
      source: contract
    }
  ]
}
