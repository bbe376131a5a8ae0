/** The hand-worked estimate of docs/estimate.md: its arithmetic stands there; here the engine is held against it. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { printMoney } from '../../shared/money'
import { cutMinutes } from '../../src/formulas/time'
import { estimatePlan } from '../../src/price/estimatePlan'
import { crewHour, inventedRatesIn } from '../../src/price/rates'
import { planOf } from './samplePlan'

const page = readFileSync(join(__dirname, '../../docs/estimate.md'), 'utf8')
const rates = { ...inventedRatesIn['in-ft'], taxRate: '0.0825' }
const plan = planOf([
  ['Tree', 'Trunk dia (in)', 'Height (ft)', 'Crown base (ft)', 'Life stage', 'Vigor', 'Access'],
  ['A', 12, 40, 10, 'young', 'good', 'open'],
  ['B', 8, 30, 8, 'young', 'good', 'fenced']
])
const estimate = estimatePlan(plan, rates)
const [a, b] = [estimate.lines[0]!, estimate.lines[1]!]
const cents = (amount: typeof estimate.total) => printMoney(amount, 2)

/** A figure of the page, which has to say it. */
function said(text: string): string {
  expect(page).toContain(text)
  return text
}

test('hours and brush', () => {
  expect([a.crewHours, b.crewHours].map((hours) => `${String(hours)} h`)).toEqual([
    said('1.63 h'),
    said('1.38 h')
  ])
  expect([a, b].map(({ brush }) => `${String(brush.weight)} lb`)).toEqual([said('216 lb'), said('144 lb')])
  expect([a, b].map(({ brush }) => `${brush.looseVolume.toFixed(2)} yd³ loose`)).toEqual([
    said('0.86 yd³ loose'),
    said('0.58 yd³ loose')
  ])
  expect([a, b].map(({ brush }) => `${brush.chipVolume.toFixed(2)} yd³ of chips`)).toEqual([
    said('0.46 yd³ of chips'),
    said('0.30 yd³ of chips')
  ])
})

test('a cut of 3 in at 15 ft takes 9.1 minutes', () => {
  expect(`${cutMinutes(76.2, 4.572, rates).toFixed(1)} min`).toBe(said('9.1 min'))
})

test('costs, with the shared costs to the cent', () => {
  expect(cents(crewHour(rates))).toBe(said('151.60'))
  const year = estimate.years[0]!
  expect([year.crewHours, year.crewDays, year.loads]).toEqual([3.01, 1, 1])
  expect([year.mobilization, year.travel, year.loadCharges, year.shared].map(cents)).toEqual(
    ['90.00', '113.70', '40.00', '243.70'].map(said)
  )
  const parts = ({ money }: typeof a) => [money.crew, money.disposal, money.shared, money.cost].map(cents)
  expect(parts(a)).toEqual(['247.11', '6.48', '131.97', '385.56'].map(said))
  expect(parts(b)).toEqual(['209.21', '4.32', '111.73', '325.26'].map(said))
})

test('prices and totals', () => {
  expect([a.price, b.price].map(cents)).toEqual(['562.01', '474.11'].map(said))
  expect([estimate.subtotal, estimate.tax, estimate.total].map(cents)).toEqual(
    ['1036.12', '85.48', '1121.60'].map(said)
  )
})
