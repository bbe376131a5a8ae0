import { dayOf, readSerial } from '../../shared/dates'
import type { Plan } from '../plan/plan'
import { budgetFiguresOf } from './budgetFigures'
import type { Estimate } from './estimate'
import { workOfVisit, type LineWork } from './lineWork'
import { priceLines } from './priceLines'
import { rateNames } from './rateBook'
import { inventedRatesIn, noneLeft, type Rates, type RatesFor } from './rates'

/** The work of every tree and visit with cuts, trees in the inventory's order. */
function workOf({ trees }: Plan, rates: Rates): LineWork[] {
  return trees.flatMap((tree) =>
    tree.visits.filter(({ cuts }) => cuts.length > 0).map((visit) => workOfVisit(tree, visit, rates))
  )
}

/** The last day of an estimate that holds for so many days. */
function lastDay(date: string, days: number): string {
  const serial = readSerial(date)
  if (serial === null) return date
  const { year, month, day } = dayOf(serial + days)
  return [String(year), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-')
}

/** What each visit to each tree takes and costs where every visit is made, and budget figures of trees without limbs. */
export function estimatePlan(plan: Plan, rates: Rates = inventedRatesIn[plan.system]): Estimate {
  const { currency, taxRate, validityDays, minorDigits, ...more }: RatesFor<'estimate' | 'rounding'> = rates
  noneLeft(more)
  return {
    currency,
    minorDigits,
    taxRate: Number(taxRate),
    ...priceLines(workOf(plan, rates), rates),
    budgetFigures: budgetFiguresOf(plan, rates),
    rates,
    validUntil: lastDay(plan.date, validityDays),
    inventedRates: rates.invented.length > 0,
    inventedCount: rates.invented.length,
    rateCount: rateNames.length
  }
}
