import type { Money } from '../../shared/money'
import type { Estimate, EstimateLine, PriceBasis, PricedWork } from './estimate'
import { forecastOf, type Forecast } from './forecast'
import { priceLines } from './priceLines'

/**
 * What a client signs: these lines, priced as if nothing else were done, and their sums. Every document, the pane and the
 * command line take it as it is, so that what is signed is what is specified, ordered and priced. A value: nothing in it
 * is changed once it is made.
 */
export interface Offer extends PriceBasis, PricedWork {
  readonly kind: 'first visit' | 'whole program' | 'some trees' | 'within budget'
  /** Priority relieved by these lines, and by the first visits or, of the whole program, all visits. */
  readonly relief: number
  readonly reliefOfAll: number
  /** Later visits that are expected, apart from the sum; null where none are or all are bought. */
  readonly forecast: Forecast | null
  /** First visits that are planned and not offered, as the plan has them. */
  readonly waiting: readonly EstimateLine[]
  /** Trees without limbs: apart, and part of no sum. */
  readonly budgetFigures: Estimate['budgetFigures']
  /** Everything that is planned. */
  readonly all: Estimate
}

export interface BudgetOffer extends Offer {
  readonly kind: 'within budget'
  /** With tax. */
  readonly budget: Money
  /** No choice within the budget relieves more than this. */
  readonly mostRelief: number
  /** What the cheapest visit costs by itself, with tax, where nothing fits. */
  readonly cheapest: { readonly tree: string; readonly total: Money } | null
}

export type ChosenOffer = Offer | BudgetOffer

const reliefOf = (lines: readonly EstimateLine[]) => lines.reduce((sum, { relief }) => sum + relief, 0)

/** Lines of an estimate as an offer. `candidates` are those that it was chosen among. */
export function offerOf<Kind extends Offer['kind']>(
  kind: Kind,
  chosen: readonly EstimateLine[],
  estimate: Estimate
): Offer & { readonly kind: Kind } {
  const { budgetFigures, rates, currency, minorDigits, taxRate, validUntil, ...more } = estimate
  const { inventedRates, inventedCount, rateCount, rateProblems } = more
  const offered = new Set(chosen)
  const isWhole = kind === 'whole program'
  const waiting = estimate.lines.filter((line) => line.visit === 1 && !offered.has(line))
  const waits = new Set(waiting.map(({ tree }) => tree))
  const later = estimate.lines.filter((line) => line.visit > 1 && !offered.has(line) && !waits.has(line.tree))
  return {
    kind,
    ...priceLines(chosen, rates),
    ...{ currency, minorDigits, taxRate, rates, validUntil, inventedRates, inventedCount, rateCount },
    ...(rateProblems === undefined ? {} : { rateProblems }),
    relief: reliefOf(chosen),
    reliefOfAll: reliefOf(isWhole ? estimate.lines : firstVisits(estimate)),
    forecast: forecastOf(later, estimate),
    waiting,
    budgetFigures,
    all: estimate
  }
}

/** The first visits of an estimate: what can be measured and signed today. */
export function firstVisits({ lines }: Pick<Estimate, 'lines'>): EstimateLine[] {
  return lines.filter(({ visit }) => visit === 1)
}

/** The first visit to every tree. */
export function firstVisit(estimate: Estimate): Offer {
  return offerOf('first visit', firstVisits(estimate), estimate)
}

/** Every visit that is planned. */
export function wholeProgram(estimate: Estimate): Offer {
  return offerOf('whole program', estimate.lines, estimate)
}

/** The first visit to some of the trees, by their ids. */
export function someTrees(estimate: Estimate, trees: ReadonlySet<string>): Offer {
  const chosen = firstVisits(estimate).filter(({ tree }) => trees.has(tree))
  return offerOf('some trees', chosen, estimate)
}
