import { Money, roundMoney } from '../../shared/money'
import type { Estimate, EstimateLine, PricedWork } from './estimate'
import { priceLines, taxOn } from './priceLines'
import { noneLeft, type RatesFor } from './rates'

/** A price that is not known better than so: from, to, with tax. */
export interface PriceRange {
  readonly low: Money
  readonly high: Money
}

/** The visits of a year that are expected, and what they may cost. */
export interface ForecastYear extends PriceRange, Omit<PricedWork, 'years'> {
  readonly year: number
}

/** Visits that are expected after what is offered. They are measured and priced again before they are offered. */
export interface Forecast extends PricedWork, PriceRange {
  readonly by: readonly ForecastYear[]
}

const figures = 2

/** To two figures, outward: nobody knows more of a visit that is years away. */
function outward(exact: Money, minorDigits: number, direction: 'down' | 'up'): Money {
  const amount = roundMoney(exact, minorDigits + 2)
  if (amount.isZero()) return amount
  const digits = Math.max(-minorDigits, amount.e - (figures - 1))
  const unit = new Money(10).pow(digits)
  const units = amount.div(unit)
  return (direction === 'down' ? units.floor() : units.ceil()).times(unit)
}

function rangeOf(total: Money, rates: RatesFor<'forecast' | 'rounding'>): PriceRange {
  const { forecastSpread, minorDigits, ...more }: RatesFor<'forecast' | 'rounding'> = rates
  noneLeft(more)
  const spread = new Money(forecastSpread)
  return {
    low: outward(total.times(new Money(1).minus(spread)), minorDigits, 'down'),
    high: outward(total.times(spread.plus(1)), minorDigits, 'up')
  }
}

/** What is expected of these lines, each year a trip of its own; null where there are none. */
export function forecastOf(
  lines: readonly EstimateLine[],
  { rates }: Pick<Estimate, 'rates'>
): Forecast | null {
  if (lines.length === 0) return null
  const priced = priceLines(lines, rates)
  const by = priced.years.map(({ year, charged, topUp }): ForecastYear => {
    const subtotal = charged.plus(topUp)
    const tax = taxOn(subtotal, rates)
    const own = priced.lines.filter((line) => line.year === year)
    const total = subtotal.plus(tax)
    return { year, lines: own, subtotal, tax, total, ...rangeOf(total, rates) }
  })
  return { ...priced, by, ...rangeOf(priced.total, rates) }
}
