import { Money } from '../../shared/money'
import { chooseWithin } from './chooseWithin'
import type { Estimate, EstimateLine } from './estimate'
import { leastPrices, type LeastPrices } from './leastPrices'
import { firstVisits, offerOf, type BudgetOffer } from './offers'
import { priceLines, taxOn } from './priceLines'
import type { Rates } from './rates'

/** The most that can be spent before tax so that the tax still fits, in minor units; -1 where nothing can. */
function beforeTax(budget: Money, rates: Rates): number {
  const unit = new Money(10).pow(-rates.minorDigits)
  const fits = (units: number) => {
    const amount = unit.times(units)
    return amount.plus(taxOn(amount, rates)).lessThanOrEqualTo(budget)
  }
  let [low, high] = [-1, Math.max(0, budget.div(unit).floor().toNumber())]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (fits(middle)) low = middle
    else high = middle - 1
  }
  return low
}

/**
 * Worth is counted in tenths of a point of priority, so that the choice is exact; among equals, work without a priority of
 * its own, such as dead wood, is worth more than none.
 */
const tenth = 100_000
const worthOf = ({ relief, cuts }: EstimateLine): number =>
  Math.max(0, Math.round(relief * 10)) * tenth + Math.min(cuts, 9)

const reliefIn = (worth: number): number => Math.floor(worth / tenth) / 10

/** First visits among which a budget chooses. */
interface Choosing {
  readonly lines: readonly EstimateLine[]
  readonly worths: readonly number[]
  readonly rates: Rates
  readonly budget: Money
  /** What can be spent before tax, in minor units. */
  readonly units: number
}

/** Places in `lines`, rising. */
type Choice = readonly number[]

const linesOf = (choice: Choice, { lines }: Choosing) => choice.flatMap((at) => lines[at] ?? [])
const worthIn = (choice: Choice, { worths }: Choosing) =>
  choice.reduce((sum, at) => sum + (worths[at] ?? 0), 0)

/** How far a choice is over the budget at its real price, trip and tax included. */
function over(choice: Choice, choosing: Choosing): Money {
  return priceLines(linesOf(choice, choosing), choosing.rates).total.minus(choosing.budget)
}

/** The best choice at prices below the real ones, with so many minor units to spend. */
function atLeast({ lines: prices, once }: LeastPrices, { worths }: Choosing, units: number): Choice {
  const trees = prices.map((price, at) => [{ price, worth: worths[at] ?? 0 }])
  return chooseWithin(trees, units - once).flatMap((taken, at) => (taken > 0 ? [at] : []))
}

/** Choices that are priced on the way down to one that fits. */
const mostTries = 12

/** The best choice at the least prices with ever less to spend, until it fits at its real price. */
function firstThatFits(prices: LeastPrices, choosing: Choosing): Choice {
  const unit = new Money(10).pow(-choosing.rates.minorDigits)
  let units = choosing.units
  for (let tries = 0; tries < mostTries && units >= prices.once; tries++) {
    const choice = atLeast(prices, choosing, units)
    const excess = over(choice, choosing)
    if (choice.length === 0 || !excess.greaterThan(0)) return choice
    // What a whole day or load costs beyond its part is soon cut off; after some tries in longer steps.
    units -= Math.max(1, Math.ceil(excess.div(unit).toNumber())) * (tries < 6 ? 1 : tries)
  }
  return []
}

/** Lines that are priced again in all, at most, to try what still fits: each try prices the whole choice. */
const mostPriced = 4000

/** Adds whatever still fits, the most worth first; what costs more than is left at the very least is not tried. */
function filledUp(choice: Choice, prices: LeastPrices, choosing: Choosing): Choice {
  const { lines, worths, rates } = choosing
  const unit = new Money(10).pow(-rates.minorDigits)
  const chosen = new Set(choice)
  const others = lines.map((_line, at) => at).filter((at) => !chosen.has(at))
  others.sort((a, b) => (worths[b] ?? 0) - (worths[a] ?? 0) || a - b)
  let bought = choice
  let left = over(bought, choosing).negated().div(unit).toNumber()
  let priced = 0
  for (const other of others) {
    if ((prices.lines[other] ?? 0) > left) continue
    const more = [...bought, other].sort((a, b) => a - b)
    priced += more.length
    if (priced > mostPriced) break
    const excess = over(more, choosing)
    if (excess.greaterThan(0)) continue
    bought = more
    left = excess.negated().div(unit).toNumber()
  }
  return bought
}

function cheapestOf({ lines, rates }: Choosing): BudgetOffer['cheapest'] {
  let cheapest: BudgetOffer['cheapest'] = null
  for (const line of lines) {
    const { total } = priceLines([line], rates)
    if (cheapest === null || total.lessThan(cheapest.total)) cheapest = { tree: line.tree, total }
  }
  return cheapest
}

/**
 * The first visits that relieve much priority within a budget, tax included, with the trip shared by these trees alone.
 * They are chosen exactly at prices below the real ones, which also tells what no choice within the budget can exceed
 * (`mostRelief`); then with ever less to spend until the choice fits at its real price; and filled up with what still
 * fits. Where everything fits, everything is offered.
 */
export function withinBudget(estimate: Estimate, budget: Money): BudgetOffer {
  const { rates } = estimate
  const lines = firstVisits(estimate)
  const choosing = { lines, worths: lines.map(worthOf), rates, budget, units: beforeTax(budget, rates) }
  const everything = lines.map((_line, at) => at)
  const prices = leastPrices(lines, rates)
  const choices = over(everything, choosing).greaterThan(0)
    ? prices.map((each) => filledUp(firstThatFits(each, choosing), each, choosing))
    : [everything]
  const worth = (choice: Choice) => worthIn(choice, choosing)
  const best = choices.reduce((a, b) => (worth(b) > worth(a) ? b : a), [] as Choice)
  const bounds = prices.map((each) => worth(atLeast(each, choosing, choosing.units)))
  return {
    ...offerOf('within budget', linesOf(best, choosing), estimate),
    budget,
    mostRelief: reliefIn(Math.max(worth(best), Math.min(...bounds))),
    cheapest: best.length === 0 ? cheapestOf(choosing) : null
  }
}
