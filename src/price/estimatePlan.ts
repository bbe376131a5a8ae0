import { Money, roundMoney, sumPrinted } from '../../shared/money'
import { dayOf, readSerial } from '../../shared/serialDate'
import type { Plan } from '../plan/plan'
import type { Estimate, EstimateLine } from './estimate'
import { workByTrunk, workOfVisit, type LineWork } from './lineWork'
import { priceWithMargin, priceWithMarkup } from '../formulas/price'
import { rateNames } from './rateBook'
import { crewHour, inventedRatesIn, type Rates } from './rates'
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
export function priceOf(cost: Money, rates: Rates): Money {
  const whole = cost.times(new Money(rates.contingencyRate).plus(1))
  const price = rates.profitKind === 'markup' ? priceWithMarkup : priceWithMargin
  const charged = price(
    whole,
    new Money(rates.overheadRate),
    new Money(rates.profitRate),
    new Money(rates.minimumPerTree)
  )
  return roundMoney(charged, rates.minorDigits)
}

function priced(work: LineWork, shared: Money, hour: Money, rates: Rates): EstimateLine {
  const crew = roundMoney(hour.times(work.crewHours), rates.minorDigits)
  const disposal = roundMoney(new Money(rates.disposalPerWeight).times(work.brush.weight), rates.minorDigits)
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
 * totals are sums of printed amounts; the shares of a year's mobilisation, travel and loads add up to them exactly.
 */
export function estimatePlan(plan: Plan, rates: Rates = inventedRatesIn[plan.system]): Estimate {
  const work = workOf(plan, rates)
  const years = yearsOfWork(work, rates)
  const shares = sharesOfYears(work, years, rates.minorDigits)
  const hour = crewHour(rates)
  const lines = work.map((line, index) => priced(line, shares[index] ?? new Money(0), hour, rates))
  const subtotal = sumPrinted(lines, ({ price }) => price, rates.minorDigits)
  const tax = roundMoney(subtotal.times(rates.taxRate), rates.minorDigits)
  return {
    currency: rates.currency,
    minorDigits: rates.minorDigits,
    taxRate: Number(rates.taxRate),
    lines,
    years,
    subtotal,
    tax,
    total: subtotal.plus(tax),
    rates,
    validUntil: lastDay(plan.date, rates.validityDays),
    inventedRates: rates.invented.length > 0,
    inventedCount: rates.invented.length,
    rateCount: rateNames.length
  }
}
