import { Money } from '../../../shared/money'

/**
 * Price from a direct cost: overhead added, then the margin taken as a share of the price, and never below the
 * minimum charge. Rates are shares: overhead 0 or more, margin below 1. Not rounded.
 *
 * Source: margin on price, P = C / (1 − g), against markup on cost, P = C·(1 + m); common bookkeeping arithmetic.
 */
export function priceWithMargin(
  directCost: Money,
  overheadRate: Money,
  marginRate: Money,
  minimum: Money = new Money(0)
): Money {
  const price = directCost.times(overheadRate.plus(1)).div(new Money(1).minus(marginRate))
  return Money.max(price, minimum)
}
