import { counted } from '../../../shared/words/counts'
import { firstOf } from '../../../shared/words/some'
import { showMoney } from '../../../shared/words/money'
import { ratePercent } from '../../../shared/words/percent'
import { firstYearOf, type Plan } from '../../plan/plan'
import type { EstimateLine } from '../../price/estimate'
import { moneyFormat } from '../moneyFormat'
import { isBudget, nothingOffered, type ChosenOffer } from '../offered'
import { looks } from '../looks'
import type { PrintedDraft } from '../printedDraft'
import type { Content, Format } from '../sheet'
import { priceOf, yearsOf } from './clientReportYears'
import { columns, columnCount } from './reportGrid'

/** Trees named in a sentence at most. */
const mostNamed = 8

const treesIn = (lines: readonly Pick<EstimateLine, 'tree'>[]): string[] => [
  ...new Set(lines.map(({ tree }) => tree))
]

/** What is offered, in a sentence. */
function offeredWords(offer: ChosenOffer, plan: Plan): string {
  if (offer.lines.length === 0) return nothingOffered(offer)
  const years = yearsOf(offer)
  if (offer.kind === 'whole program') {
    const [from = 0, to = from] = [years[0], years.at(-1)]
    const span = from === to ? `in ${String(from)}` : `from ${String(from)} to ${String(to)}`
    const later =
      from === to
        ? ''
        : ` Years after ${String(firstYearOf(plan))} are at today’s rates; the trees are measured again before each visit.`
    return `This proposal covers every visit that is planned, ${span}.${later}`
  }
  if (isBudget(offer)) {
    const within = `${showMoney(offer.budget, offer.minorDigits)} ${offer.currency} with tax`
    const due = counted(offer.lines.length + offer.waiting.length, 'tree')
    return `This proposal covers what does most for the trees within a budget of ${within}: ${String(offer.lines.length)} of the ${due} that are due now.`
  }
  const trees = counted(treesIn(offer.lines).length, 'tree')
  return offer.kind === 'first visit'
    ? `This proposal covers the first visit to ${trees}.`
    : `This proposal covers the first visit to the ${trees} that were chosen, which share the trip.`
}

function amount(draft: PrintedDraft, label: string, value: Content, look: Format, format: Format): void {
  const cells = Array<Content>(columnCount).fill(null)
  cells[0] = label
  cells[columns.price] = value
  const row = draft.line(cells, { ...draft.body, ...look })
  draft.height(row, 1, 15)
  draft.format(row, columns.price, 1, 1, { align: 'right', ...format })
}

/** What each year of the offer costs, the tax, and all of it. */
function addSums(draft: PrintedDraft, offer: ChosenOffer): void {
  const { minorDigits, currency } = offer
  const money = moneyFormat(minorDigits)
  for (const year of yearsOf(offer)) {
    const lines = offer.lines.filter((line) => line.year === year)
    const trees = counted(treesIn(lines).length, 'tree')
    amount(draft, `${String(year)}, ${trees}, before tax`, priceOf(lines, minorDigits).toNumber(), {}, money)
  }
  amount(draft, `Tax, ${ratePercent(offer.taxRate)}`, offer.tax.toNumber(), {}, money)
  amount(draft, `Price with tax, ${currency}`, offer.total.toNumber(), looks.total, money)
}

type Range = Pick<NonNullable<ChosenOffer['forecast']>, 'low' | 'high'>

/** What later visits may cost, with tax and apart from what is signed. */
function addLater(draft: PrintedDraft, { forecast, currency, minorDigits }: ChosenOffer): void {
  if (forecast === null) return
  // A range is rounded outward to two figures, and so mostly to whole units.
  const rounded = ({ low, high }: Range) => (low.isInteger() && high.isInteger() ? 0 : minorDigits)
  const range = (each: Range) =>
    `${showMoney(each.low, rounded(each))} to ${showMoney(each.high, rounded(each))} ${currency}`
  const years = forecast.by.map((each) => {
    const trees = counted(treesIn(each.lines).length, 'tree')
    return `${String(each.year)} about ${range(each)} (${trees})`
  })
  const all = forecast.by.length > 1 ? `, in all about ${range(forecast)}` : ''
  draft.prose(
    `Later, not in this price: ${years.join('; ')}${all}, with tax. A forecast: the trees are measured again and each visit is offered then.`
  )
}

/** The first visits that are not offered, without a price: another choice of trees is another offer. */
function addWaiting(draft: PrintedDraft, offer: ChosenOffer): void {
  const { waiting } = offer
  if (waiting.length === 0) return
  const dead =
    isBudget(offer) && waiting.some(({ relief }) => relief === 0)
      ? ' A budget ranks dead wood last: ask for it to be looked at where people pass.'
      : ''
  draft.prose(
    `Due now and not in this price: ${counted(waiting.length, 'tree')} (${firstOf(treesIn(waiting), mostNamed)}).${dead}`
  )
}

/** Trees without limbs: a figure each, no sum, and nothing to sign. */
function addBudgetFigures(draft: PrintedDraft, { budgetFigures, currency, minorDigits }: ChosenOffer): void {
  if (budgetFigures.length === 0) return
  const figures = budgetFigures.map(({ tree, price }) => `${tree} about ${showMoney(price, minorDigits)}`)
  draft.prose(
    `Not measured yet, in no sum: ${firstOf(figures, mostNamed)} ${currency} before tax, a budget figure by the trunk alone.`
  )
}

/** What is offered and what it costs; what later visits may cost, as a range; what is in no sum. */
export function addCosts(draft: PrintedDraft, plan: Plan, offer: ChosenOffer): void {
  draft.heading('What it costs', draft.size + 2)
  draft.prose(offeredWords(offer, plan))
  if (offer.lines.length > 0) addSums(draft, offer)
  addLater(draft, offer)
  addWaiting(draft, offer)
  addBudgetFigures(draft, offer)
}
