import type { BudgetOffer, ChosenOffer } from '../price/offers'
import { counted } from '../../shared/words/counts'
import { listed } from '../../shared/words/lists'
import { showMoney } from '../../shared/words/money'

export type { ChosenOffer } from '../price/offers'

export function isBudget(offer: ChosenOffer): offer is BudgetOffer {
  return 'budget' in offer
}

/** What an offer is called. */
export function offerName(offer: ChosenOffer): string {
  if (isBudget(offer))
    return `The first visits that fit a budget of ${showMoney(offer.budget, offer.minorDigits)} ${offer.currency} with tax`
  const names = {
    'first visit': 'The first visit to every tree that needs one now',
    'whole program': 'Every visit of the program',
    'some trees': 'The first visit to the trees that were chosen',
    'within budget': 'The first visits that fit a budget'
  } as const
  return names[offer.kind]
}

/** How much is offered: "12 visits to 12 trees, in 2026". */
export function offerSize({ lines }: Pick<ChosenOffer, 'lines'>): string {
  if (lines.length === 0) return 'no visit'
  const trees = new Set(lines.map(({ tree }) => tree)).size
  const years = [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b)
  return `${counted(lines.length, 'visit')} to ${counted(trees, 'tree')}, in ${listed(years.map(String))}`
}

/** Why nothing is offered, with what the cheapest visit would cost where a budget is below it. */
export function nothingOffered(offer: ChosenOffer): string {
  if (isBudget(offer) && offer.cheapest !== null) {
    const { tree, total } = offer.cheapest
    const show = (amount: typeof total) => `${showMoney(amount, offer.minorDigits)} ${offer.currency}`
    return `No visit fits a budget of ${show(offer.budget)}: the cheapest one, to tree ${tree}, comes to ${show(total)} with tax, its trip included.`
  }
  return offer.all.lines.length === 0
    ? 'No work is planned, so nothing is priced or offered.'
    : 'No work is due at the first visit, so nothing is priced or offered now.'
}

/** Tells whether a visit to a tree is offered. */
export function visitsIn({ lines }: Pick<ChosenOffer, 'lines'>): (tree: string, visit: number) => boolean {
  const offered = new Map<string, Set<number>>()
  for (const { tree, visit } of lines) {
    const own = offered.get(tree)
    if (own === undefined) offered.set(tree, new Set([visit]))
    else own.add(visit)
  }
  return (tree, visit) => offered.get(tree)?.has(visit) === true
}
