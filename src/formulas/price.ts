import { Money } from '../../shared/money'

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

/** The same with the profit as a markup on the cost. Rates are shares, 0 or more. Not rounded. */
export function priceWithMarkup(
  directCost: Money,
  overheadRate: Money,
  markupRate: Money,
  minimum: Money = new Money(0)
): Money {
  return Money.max(directCost.times(overheadRate.plus(1)).times(markupRate.plus(1)), minimum)
}

/** The margin on the price that a markup on the cost comes to: g = m / (1 + m). */
export function marginOfMarkup(markup: Money): Money {
  return markup.div(markup.plus(1))
}

/** The markup on the cost that a margin on the price comes to: m = g / (1 − g), for a margin below 1. */
export function markupOfMargin(margin: Money): Money {
  return margin.div(new Money(1).minus(margin))
}
