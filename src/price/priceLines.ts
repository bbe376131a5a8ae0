import { Money, roundMoney, sumPrinted } from '../../shared/money'
import { priceWithMargin, priceWithMarkup } from '../formulas/price'
import type { EstimateLine, PricedWork } from './estimate'
import type { Effort, LineWork } from './lineWork'
import { crewHour, noneLeft, type Rates, type RatesFor } from './rates'
import { sharesOfYears, tripsToLeast, yearsOfWork } from './yearsOfWork'

/** What a cost is charged at: contingency, overhead and profit on it, at least the minimum charge, rounded half up. */
export function priceOf(cost: Money, rates: RatesFor<'price' | 'rounding'>): Money {
  const { contingencyRate, overheadRate, profitKind, profitRate, minimumPerTree, minorDigits, ...more } =
    rates
  noneLeft(more)
  const whole = cost.times(new Money(contingencyRate).plus(1))
  const price = { margin: priceWithMargin, markup: priceWithMarkup }[profitKind]
  const charged = price(whole, new Money(overheadRate), new Money(profitRate), new Money(minimumPerTree))
  return roundMoney(charged, minorDigits)
}

/** What a visit costs by itself: the crew for its hours, and disposal where it is paid by weight. */
export function ownCosts(
  { crewHours, brush }: Pick<Effort, 'crewHours' | 'brush'>,
  rates: RatesFor<'visit' | 'disposal' | 'crew hour' | 'rounding'>,
  hour: Money = crewHour(rates)
): { crew: Money; disposal: Money } {
  const {
    disposalPerWeight,
    disposalKind,
    minorDigits,
    ...more
  }: RatesFor<'visit' | 'disposal' | 'rounding'> = rates
  noneLeft(more)
  const rate = new Money(disposalKind === 'weight' ? disposalPerWeight : 0)
  return {
    crew: roundMoney(hour.times(crewHours), minorDigits),
    disposal: roundMoney(rate.times(brush.weight), minorDigits)
  }
}

/** Tax on a sum of printed lines, rounded once. */
export function taxOn(
  subtotal: Money,
  { taxRate, minorDigits }: Pick<Rates, 'taxRate' | 'minorDigits'>
): Money {
  return roundMoney(subtotal.times(taxRate), minorDigits)
}

/** The lines without what lifts a trip to its least charge. */
function chargedLines(work: readonly LineWork[], shares: readonly Money[], rates: Rates): EstimateLine[] {
  const hour = crewHour(rates)
  const nothing = new Money(0)
  return work.map((line, index) => {
    const { crew, disposal } = ownCosts(line, rates, hour)
    const shared = shares[index] ?? nothing
    const cost = crew.plus(disposal).plus(shared)
    const charged = priceOf(cost, rates)
    return { ...line, money: { crew, disposal, shared, cost, charged, topUp: nothing }, price: charged }
  })
}

/**
 * Work priced as if nothing else were done: its own trips, shared by its own lines, each trip at its least charge at
 * least. Every printed amount is rounded half up to the currency's minor unit and sums are sums of printed amounts; the
 * shares of a trip add up to it exactly.
 */
export function priceLines(work: readonly LineWork[], rates: Rates): PricedWork {
  const { minorDigits } = rates
  const trips = yearsOfWork(work, rates)
  const charged = chargedLines(work, sharesOfYears(work, trips, minorDigits), rates)
  const years = tripsToLeast(charged, trips, rates)
  const topUps = sharesOfYears(work, years, minorDigits, ({ topUp }) => topUp)
  const lines = charged.map((line, index): EstimateLine => {
    const topUp = topUps[index]
    if (topUp === undefined || topUp.isZero()) return line
    return { ...line, money: { ...line.money, topUp }, price: line.price.plus(topUp) }
  })
  const subtotal = sumPrinted(lines, ({ price }) => price, minorDigits)
  const tax = taxOn(subtotal, rates)
  return { lines, years, subtotal, tax, total: subtotal.plus(tax) }
}
