import type { Estimate } from '../price/estimate'
import type { BudgetOffer, Offer } from '../price/offers'
import { showMoney } from '../../shared/words/money'

/** One of the three that a client can choose; a budget brings what belongs to it. */
export type ChosenOffer = Offer | BudgetOffer

export function isBudget(offer: ChosenOffer): offer is BudgetOffer {
  return 'budget' in offer
}

/** What an offer is called on the estimate. */
export function offerName(offer: ChosenOffer, estimate: Estimate): string {
  if (isBudget(offer))
    return `Most priority relieved within ${showMoney(offer.budget, estimate.minorDigits)} with tax`
  return offer.kind === 'this visit' ? 'The first visit to every tree only' : 'Every visit of the program'
}

/** The estimate as if nothing else had been asked for: the lines that are offered, and their sums. */
export function offeredOf(estimate: Estimate, { lines, subtotal, tax, total }: ChosenOffer): Estimate {
  return { ...estimate, lines, subtotal, tax, total }
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
