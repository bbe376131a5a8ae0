import { Money } from '../../shared/money'
import type { EstimateLine } from './estimate'
import { priceOf } from './priceLines'
import { crewHour, type Rates } from './rates'

/** What lines cost at the very least, whatever is bought beside them, in whole minor units. */
export interface LeastPrices {
  /** Of each line, in their order. */
  readonly lines: readonly number[]
  /** Once, of any choice that is not empty. */
  readonly once: number
}

/** What a cost is charged at without a least charge, not rounded to the minor unit. */
function chargedAt(cost: Money, rates: Rates): Money {
  return priceOf(cost, { ...rates, minimumPerTree: '0', minorDigits: 15 })
}

/** Whole units below an amount, never below 0. */
const unitsBelow = (amount: Money, unit: Money): number => Math.max(0, amount.div(unit).floor().toNumber())

/**
 * Bounds from below on the price of any choice of lines that are one trip. The first lets each line bear its part of crew
 * days and loads, as if those could be had in parts, and mobilization once; the second holds each line to the least charge
 * for a tree. What rounding can take off is taken off.
 */
export function leastPrices(lines: readonly EstimateLine[], rates: Rates): [LeastPrices, LeastPrices] {
  const unit = new Money(10).pow(-rates.minorDigits)
  const aDay = crewHour(rates).times(rates.travelHours).div(rates.dayHours)
  const aLoad = new Money(rates.disposalKind === 'load' ? rates.loadCharge : 0).div(rates.loadVolume)
  const least = new Money(rates.minimumPerTree)
  const inParts: number[] = []
  const withLeast: number[] = []
  for (const { money, crewHours, brush } of lines) {
    const own = money.crew.plus(money.disposal).plus(aDay.times(crewHours))
    const all = own.plus(aLoad.times(brush.chipVolume))
    inParts.push(unitsBelow(chargedAt(all, rates).minus(unit), unit))
    const rounded = chargedAt(own.minus(unit.times(2)), rates).minus(unit)
    withLeast.push(unitsBelow(Money.max(rounded, least.minus(unit)), unit))
  }
  const trip = new Money(rates.mobilization).minus(unit.times(2))
  const once = unitsBelow(chargedAt(Money.max(0, trip), rates), unit)
  return [
    { lines: inParts, once },
    { lines: withLeast, once: 0 }
  ]
}
