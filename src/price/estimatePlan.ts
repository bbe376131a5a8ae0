import { Money, roundMoney, sumPrinted } from '../../shared/money'
import { dayOf, readSerial } from '../../shared/dates'
import type { Plan } from '../plan/plan'
import type { Estimate, EstimateLine } from './estimate'
import { workByTrunk, workOfVisit, type LineWork } from './lineWork'
import { priceWithMargin, priceWithMarkup } from '../formulas/price'
import { rateNames } from './rateBook'
import { crewHour, inventedRatesIn, noneLeft, type Rates, type RatesFor } from './rates'
import { sharesOfYears, yearsOfWork } from './yearsOfWork'

/** The work of every tree and visit, trees in the inventory's order. */
function workOf(plan: Plan, rates: Rates): LineWork[] {
  const year = Number(plan.date.slice(0, 4))
  return plan.trees.flatMap((tree) => {
    if (tree.tree.limbs.length === 0) return workByTrunk(tree, year, rates) ?? []
    return tree.visits.filter(({ cuts }) => cuts.length > 0).map((visit) => workOfVisit(tree, visit, rates))
  })
}

/**
 * What a cost is charged at: contingency, overhead and profit on it, at least the minimum charge, rounded half up.
 */
export function priceOf(cost: Money, rates: RatesFor<'price' | 'rounding'>): Money {
  const { contingencyRate, overheadRate, profitKind, profitRate, minimumPerTree, minorDigits, ...more } =
    rates
  noneLeft(more)
  const whole = cost.times(new Money(contingencyRate).plus(1))
  const price = { margin: priceWithMargin, markup: priceWithMarkup }[profitKind]
  const charged = price(whole, new Money(overheadRate), new Money(profitRate), new Money(minimumPerTree))
  return roundMoney(charged, minorDigits)
}

/** What a visit costs by itself: the crew for its hours, and disposal by weight. */
function ownCosts(
  { crewHours, brush }: LineWork,
  hour: Money,
  rates: RatesFor<'visit' | 'rounding'>
): { crew: Money; disposal: Money } {
  const { disposalPerWeight, minorDigits, ...more } = rates
  noneLeft(more)
  return {
    crew: roundMoney(hour.times(crewHours), minorDigits),
    disposal: roundMoney(new Money(disposalPerWeight).times(brush.weight), minorDigits)
  }
}

function priced(work: LineWork, shared: Money, hour: Money, rates: Rates): EstimateLine {
  const { crew, disposal } = ownCosts(work, hour, rates)
  const cost = crew.plus(disposal).plus(shared)
  return { ...work, money: { crew, disposal, shared, cost }, price: priceOf(cost, rates) }
}

/** The last day of an estimate that holds for so many days. */
function lastDay(date: string, days: number): string {
  const serial = readSerial(date)
  if (serial === null) return date
  const { year, month, day } = dayOf(serial + days)
  return [String(year), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-')
}

/**
 * What each visit to each tree takes and costs. Every printed amount is rounded half up to the currency's minor unit and
 * totals are sums of printed amounts; the shares of a year's mobilization, travel and loads add up to them exactly.
 */
export function estimatePlan(plan: Plan, rates: Rates = inventedRatesIn[plan.system]): Estimate {
  const { currency, taxRate, validityDays, minorDigits, ...more }: RatesFor<'estimate' | 'rounding'> = rates
  noneLeft(more)
  const work = workOf(plan, rates)
  const years = yearsOfWork(work, rates)
  const shares = sharesOfYears(work, years, minorDigits)
  const hour = crewHour(rates)
  const lines = work.map((line, index) => priced(line, shares[index] ?? new Money(0), hour, rates))
  const subtotal = sumPrinted(lines, ({ price }) => price, minorDigits)
  const tax = roundMoney(subtotal.times(taxRate), minorDigits)
  return {
    currency,
    minorDigits,
    taxRate: Number(taxRate),
    lines,
    years,
    subtotal,
    tax,
    total: subtotal.plus(tax),
    rates,
    validUntil: lastDay(plan.date, validityDays),
    inventedRates: rates.invented.length > 0,
    inventedCount: rates.invented.length,
    rateCount: rateNames.length
  }
}
