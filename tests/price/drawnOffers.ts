/** Inventories, rates and offers drawn for the checks of money; all invented. */
import * as fc from 'fast-check'
import type { Cell } from '../../shared/cells'
import { Money } from '../../shared/money'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit, firstVisits, someTrees, wholeProgram, type ChosenOffer } from '../../src/price/offers'
import { ratesFrom, type Rates } from '../../src/price/rates'
import { startValues, type RateName } from '../../src/price/rateBook'
import { withinBudget } from '../../src/price/withinBudget'
import type { Plan } from '../../src/plan/plan'
import { planOf } from '../sheets/samplePlan'

const headers =
  'Tree | Species | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Access | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Status'

const share = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((each) => each / 100)

const limb = fc.record({
  thick: share(0.15, 0.95),
  from: share(0.15, 0.7),
  to: share(0.5, 1),
  dead: fc.nat(4).map((each) => each === 0)
})

const tree = fc.record({
  species: fc.constantFrom('red maple', 'white oak', 'Linden (invented)'),
  trunk: fc.integer({ min: 2, max: 22 }),
  tall: fc.integer({ min: 14, max: 60 }),
  stage: fc.constantFrom('young', 'medium', 'mature'),
  vigor: fc.constantFrom('good', 'fair'),
  access: fc.constantFrom('open', 'fenced', 'no machine'),
  limbs: fc.array(limb, { maxLength: 5 })
})

type Drawn = typeof tree extends fc.Arbitrary<infer T> ? T : never

function rowsOf(each: Drawn, at: number): Cell[][] {
  const { species, trunk, tall, stage, vigor, access, limbs } = each
  const id = `D${String(at + 1)}`
  const base = Math.round(tall / 5)
  const own: Cell[] = [id, species, trunk, tall, base, stage, vigor, access]
  if (limbs.length === 0) return [[...own, ...Array<null>(7).fill(null)]]
  const tenth = (value: number) => Math.round(value * 10) / 10
  return [
    [...own, 'A', 'leader', trunk, null, base, tall, null],
    ...limbs.map(({ thick, from, to, dead }, index): Cell[] => [
      id,
      ...Array<null>(7).fill(null),
      'BCDEF'[index]!,
      null,
      tenth(Math.max(0.4, thick * trunk)),
      trunk,
      tenth(Math.max(base, from * tall)),
      tenth(Math.max(base + 1, from * tall + 1, to * tall)),
      dead ? 'dead' : null
    ])
  ]
}

export const drawnPlan: fc.Arbitrary<Plan> = fc
  .array(tree, { minLength: 1, maxLength: 6 })
  .map((trees) => planOf([headers.split(' | '), ...trees.flatMap(rowsOf)]))

const amount = (max: number) =>
  fc.integer({ min: 0, max: max * 100 }).map((cents) => (cents / 100).toFixed(2))
const percents = (max: number) =>
  fc.integer({ min: 0, max: max * 10_000 }).map((each) => (each / 10_000).toFixed(4))

/** Currencies with two decimals, none and three, with rates of any size and both ways of profit and of disposal. */
export const drawnRates: fc.Arbitrary<Rates> = fc
  .record({
    money: fc.constantFrom(['USD', '2'], ['JPY', '0'], ['KWD', '3']),
    wage: amount(90),
    burdenRate: percents(1),
    equipmentHour: amount(120),
    disposalPerWeight: amount(1),
    loadCharge: amount(150),
    disposalKind: fc.constantFrom('weight', 'load'),
    mobilization: amount(300),
    travelHours: fc.constantFrom('0', '0.75', '1.1'),
    minimumPerTree: amount(120),
    minimumPerTrip: amount(1500),
    contingencyRate: percents(0.3),
    overheadRate: percents(0.6),
    profitKind: fc.constantFrom('margin', 'markup'),
    profitRate: percents(0.6),
    taxRate: percents(0.25),
    crewPersons: fc.constantFrom('1', '2', '3', '4'),
    dayHours: fc.constantFrom('6.5', '7', '8'),
    loadVolume: fc.constantFrom('2', '14')
  })
  .map(({ money: [currency = 'USD', minorDigits = '2'], ...values }) => {
    const drawn: Partial<Record<RateName, string>> = { ...values, currency, minorDigits }
    return ratesFrom({ ...startValues('in-ft'), ...drawn }, 'in-ft', [])
  })

/** Each kind of offer of a plan: the first visit, the program, every other tree, and a part of the first visit's price. */
export function offersOf(plan: Plan, rates: Rates): ChosenOffer[] {
  const estimate = estimatePlan(plan, rates)
  const now = firstVisit(estimate)
  const every = new Set(firstVisits(estimate).flatMap(({ tree: id }, at) => (at % 2 === 0 ? [id] : [])))
  const budgets = ['0.9', '0.5', '1'].map((part) =>
    withinBudget(estimate, now.total.times(part).toDecimalPlaces(rates.minorDigits).plus(new Money(0)))
  )
  return [now, wholeProgram(estimate), someTrees(estimate, every), ...budgets]
}
