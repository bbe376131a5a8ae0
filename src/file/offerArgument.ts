import { refuse, type Refusal } from '../../shared/refusal'
import type { Estimate } from '../price/estimate'
import { firstVisit, wholeProgram, type ChosenOffer } from '../price/offers'
import { readBudget } from '../price/readBudget'
import { withinBudget } from '../price/withinBudget'

/** What is to be offered, as it was asked for: a budget is read once the currency is known. */
export type WantedOffer = 'first' | 'whole' | { readonly budget: string }

/** Reads --offer; a sentence where it says nothing that is known. */
export function readOfferArgument(text: string): WantedOffer | Refusal {
  const typed = text.trim()
  if (typed === 'first' || typed === 'whole') return typed
  const budget = /^budget\s*=(.*)$/s.exec(typed)?.[1]
  return budget === undefined
    ? refuse(
        `--offer ${text} is not known: write first, whole, or budget= and an amount such as budget=2500.`
      )
    : { budget }
}

/** The offer that was asked for, or why the budget cannot be used. */
export function offerAsked(wanted: WantedOffer, estimate: Estimate): ChosenOffer | Refusal {
  if (wanted === 'first') return firstVisit(estimate)
  if (wanted === 'whole') return wholeProgram(estimate)
  const budget = readBudget(wanted.budget, estimate)
  return typeof budget === 'string'
    ? refuse(`--offer budget=${wanted.budget}: ${budget}`)
    : withinBudget(estimate, budget)
}
