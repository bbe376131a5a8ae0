/** The hand-worked estimate of docs/estimate.md: its arithmetic stands there; here the engine is held against it. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { printMoney } from '../../shared/money'
import { cutMinutes } from '../../src/formulas/time'
import { estimatePlan } from '../../src/price/estimatePlan'
import { comparisonOf } from '../../src/price/comparison'
import { firstVisit } from '../../src/price/offers'
import { crewHour, inventedRatesIn } from '../../src/price/rates'
import { planOf, samplePlan } from './samplePlan'

const page = readFileSync(join(__dirname, '../../docs/estimate.md'), 'utf8')
const rates = { ...inventedRatesIn['in-ft'], taxRate: '0.0825' }
const headers =
  'Tree | Species | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Access | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Status'
const rest = Array<null>(7).fill(null)
const plan = planOf([
  headers.split(' | '),
  ['A', 'red maple', 12, 40, 10, 'young', 'good', 'open', 'L', 'leader', 12, null, 10, 40, null],
  ['A', ...rest, 'D1', null, 3, 11, 20, 32, 'dead'],
  ['A', ...rest, 'D2', null, 1.5, 11, 22, 30, 'dead'],
  ['B', 'red maple', 3, 16, 5, 'young', 'good', 'fenced', 'L', 'leader', 3, null, 5, 16, null],
  ['B', ...rest, 'D1', null, 1, 2.8, 8, 12, 'dead'],
  ['C', 'red maple', 12, 40, 10, 'young', 'good', 'open', ...rest],
  ['D', 'red maple', 8, 30, 8, 'young', 'good', 'fenced', ...rest]
])
const estimate = estimatePlan(plan, rates)
const [a, b] = [estimate.lines[0]!, estimate.lines[1]!]
const [c, d] = [estimate.budgetFigures[0]!, estimate.budgetFigures[1]!]
const cents = (amount: typeof estimate.total) => printMoney(amount, 2)

/** A figure of the page, which has to say it. */
function said(text: string): string {
  expect(page).toContain(text)
  return text
}

test('hours and brush', () => {
  expect([a, b, c.work, d.work].map(({ crewHours }) => `${String(crewHours)} h`)).toEqual(
    ['0.38 h', '0.03 h', '0.63 h', '0.61 h'].map(said)
  )
  expect([a.byPole, b.byPole]).toEqual([false, true])
  expect([a, b, c.work, d.work].map(({ brush }) => `${String(brush.weight)} lb`)).toEqual(
    ['11 lb', '0 lb', '216 lb', '144 lb'].map(said)
  )
  expect(`${a.brush.looseVolume.toFixed(2)} yd³ loose`).toBe(said('0.04 yd³ loose'))
  expect(`${a.brush.chipVolume.toFixed(2)} yd³ of chips`).toBe(said('0.02 yd³ of chips'))
})

test('minutes of the cuts', () => {
  const [, thin] = [cutMinutes(76.2, 6.096, rates), cutMinutes(38.1, 6.7056, rates)]
  expect(cutMinutes(76.2, 6.096, rates)).toBeCloseTo(9.1, 9)
  expect(thin).toBeCloseTo(5.1, 9)
  expect(`${a.minutes.cutting.toFixed(1)} min`).toBe(said('14.2 min'))
})

test('costs, with the shared costs to the cent', () => {
  expect(cents(crewHour(rates))).toBe(said('151.60'))
  const year = estimate.years[0]!
  expect([year.crewHours, year.crewDays]).toEqual([0.41, 1])
  expect([year.mobilization, year.travel, year.shared].map(cents)).toEqual(
    ['90.00', '113.70', '203.70'].map(said)
  )
  const parts = ({ money }: typeof a) => [money.crew, money.disposal, money.shared, money.cost].map(cents)
  expect(parts(a)).toEqual(['57.61', '0.33', '188.80', '246.74'].map(said))
  expect(parts(b)).toEqual(['4.55', '0.00', '14.90', '19.45'].map(said))
})

test('prices and totals, budget figures apart', () => {
  expect([a.price, b.price].map(cents)).toEqual(['359.66', '28.35'].map(said))
  expect([estimate.subtotal, estimate.tax, estimate.total].map(cents)).toEqual(
    ['388.01', '32.01', '420.02'].map(said)
  )
  expect([c.price, d.price].map(cents)).toEqual(['148.67', '141.10'].map(said))
})

test('the averages of the sample beside published ones', () => {
  const sample = samplePlan()
  const found = comparisonOf(sample, firstVisit(estimatePlan(sample)))
  expect(found.map(({ here }) => here)).toEqual([4.8, 0.5, 0.6, 145.1])
  said('4.8 and 0.5 minutes of one')
  said('0.6 lb per minute (3) and 145.10 USD a tree')
})
