import { Money, roundMoney, sumPrinted } from '../../shared/money'
import { chooseWithin } from './chooseWithin'
import type { Estimate, EstimateLine } from './estimate'

/** What a client can choose: some of the lines as they are printed, their sum, tax on it and the total. */
export interface Offer {
  kind: 'this visit' | 'whole program' | 'within budget'
  lines: EstimateLine[]
  subtotal: Money
  tax: Money
  total: Money
  /** Priority relieved by these lines, and by all of them. */
  relief: number
  reliefOfAll: number
  /**
   * What the lines do not bring in of the mobilization, travel and loads of the years they fall in. The loads and crew
   * days are those of all the work, so it is an upper estimate.
   */
  uncovered: Money
}

export interface BudgetOffer extends Offer {
  kind: 'within budget'
  /** With tax. */
  budget: Money
  /** Trees that could not be ranked because no limbs are listed. */
  unranked: string[]
}

const reliefOf = (lines: readonly EstimateLine[]) => lines.reduce((sum, { relief }) => sum + (relief ?? 0), 0)

/** Tax on a sum of printed lines, rounded once. */
export function taxOn(subtotal: Money, { rates, minorDigits }: Estimate): Money {
  return roundMoney(subtotal.times(rates.taxRate), minorDigits)
}

function offer<Kind extends Offer['kind']>(
  kind: Kind,
  lines: EstimateLine[],
  estimate: Estimate
): Offer & { kind: Kind } {
  const subtotal = sumPrinted(lines, ({ price }) => price, estimate.minorDigits)
  const tax = taxOn(subtotal, estimate)
  const years = new Set(lines.map(({ year }) => year))
  const pools = estimate.years.filter(({ year }) => years.has(year))
  const due = pools.reduce((sum, { shared }) => sum.plus(shared), new Money(0))
  const borne = sumPrinted(lines, ({ money }) => money.shared, estimate.minorDigits)
  return {
    kind,
    lines,
    subtotal,
    tax,
    total: subtotal.plus(tax),
    relief: reliefOf(lines),
    reliefOfAll: reliefOf(estimate.lines),
    uncovered: due.minus(borne)
  }
}

/** The first visit to every tree. */
export function thisVisit(estimate: Estimate): Offer {
  return offer(
    'this visit',
    estimate.lines.filter(({ visit }) => visit === 1),
    estimate
  )
}

/** Every visit that is planned. */
export function wholeProgram(estimate: Estimate): Offer {
  return offer('whole program', [...estimate.lines], estimate)
}

/** The most that can be spent before tax so that the tax still fits, in minor units. */
function beforeTax(budget: Money, estimate: Estimate): number {
  const unit = new Money(10).pow(-estimate.minorDigits)
  const fits = (units: number) => {
    const amount = unit.times(units)
    return amount.plus(taxOn(amount, estimate)).lessThanOrEqualTo(budget)
  }
  let [low, high] = [-1, Math.max(0, budget.div(unit).floor().toNumber())]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (fits(middle)) low = middle
    else high = middle - 1
  }
  return low
}

/** Worth is counted in tenths of a point of priority, so that the choice is exact. */
const tenths = (relief: number | null) => Math.max(0, Math.round((relief ?? 0) * 10))

/** The lines of each tree in the order of its visits, the most urgent tree first, then the inventory's order. */
function byTree(lines: readonly EstimateLine[]): EstimateLine[][] {
  const trees = new Map<string, EstimateLine[]>()
  for (const line of lines) {
    if (line.relief === null) continue
    const own = trees.get(line.tree)
    if (own === undefined) trees.set(line.tree, [line])
    else own.push(line)
  }
  const groups = [...trees.values()]
  for (const own of groups) own.sort((a, b) => a.visit - b.visit)
  return groups.sort((a, b) => perPrice(b[0]) - perPrice(a[0]))
}

function perPrice(line: EstimateLine | undefined): number {
  const price = line?.price.toNumber() ?? 0
  return price > 0 ? (line?.relief ?? 0) / price : Infinity
}

/**
 * The trees and visits, visits of a tree in order, that relieve the most priority within a budget, tax included, at the
 * prices printed. Exact for priority in tenths of a point; of equal choices the cheaper one, then the one that takes more
 * of the trees whose first visit relieves more for its price. Trees without limbs cannot be ranked and are named.
 */
export function withinBudget(estimate: Estimate, budget: Money): BudgetOffer {
  const unit = new Money(10).pow(-estimate.minorDigits)
  const trees = byTree(estimate.lines)
  const offered = trees.map((own) =>
    own.map(({ price, relief }) => ({ price: price.div(unit).toNumber(), worth: tenths(relief) }))
  )
  const choice = chooseWithin(offered, beforeTax(budget, estimate))
  const bought = new Set(trees.flatMap((own, index) => own.slice(0, choice[index] ?? 0)))
  const lines = estimate.lines.filter((line) => bought.has(line))
  const unranked = estimate.lines.filter(({ relief }) => relief === null).map(({ tree }) => tree)
  return { ...offer('within budget', lines, estimate), budget, unranked }
}
