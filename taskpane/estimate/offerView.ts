import type { EstimateLine } from '../../src/price/estimate'
import type { BudgetOffer, ChosenOffer } from '../../src/price/offers'
import { nothingOffered } from '../../src/sheets/offered'
import { disclosure } from '../parts/disclosure'
import { el, type Child } from '../parts/elements'
import { longList } from '../parts/longList'
import { counted } from '../../shared/words/counts'
import { listed } from '../../shared/words/lists'
import { showMoney } from '../../shared/words/money'
import { fixedTenth } from '../../shared/words/figures'
import { paneRate } from '../parts/wording'
import { visitTable } from './visitTable'

/** The priced lines of an offer by visit, its totals, and what is apart from them. */
export function offerView(offer: ChosenOffer): Child[] {
  return [
    offer.lines.length === 0 && el('p', {}, nothingOffered(offer)),
    'budget' in offer && offer.lines.length > 0 && whatFits(offer),
    ...byVisit(offer.lines).map((visit) => visitTable(visit, offer)),
    offer.lines.length > 0 && totals(offer),
    waits(offer),
    later(offer),
    figures(offer)
  ]
}

/** An offer in a sentence, for a screen reader. */
export function offerWords(offer: ChosenOffer): string {
  if (offer.lines.length === 0) return nothingOffered(offer)
  const { lines, total, minorDigits, currency } = offer
  return `${counted(lines.length, 'visit')}, in all ${showMoney(total, minorDigits)} ${currency} with tax.`
}

function byVisit(lines: readonly EstimateLine[]): EstimateLine[][] {
  const visits = new Map<number, EstimateLine[]>()
  for (const line of lines) {
    const same = visits.get(line.visit)
    if (same === undefined) visits.set(line.visit, [line])
    else same.push(line)
  }
  return [...visits.entries()].sort(([a], [b]) => a - b).map(([, same]) => same)
}

function whatFits(offer: BudgetOffer): HTMLElement {
  const { minorDigits, currency, lines, waiting } = offer
  const within = `${showMoney(offer.budget, minorDigits)} ${currency}`
  const due = counted(lines.length + waiting.length, 'first visit')
  const relief = `${fixedTenth(offer.relief)} of ${fixedTenth(offer.reliefOfAll)} points of priority`
  const sentences = [
    `Within ${within}: ${String(lines.length)} of ${due}, with the trip shared by these trees alone. They relieve ${relief}; no choice within the budget relieves more than ${fixedTenth(offer.mostRelief)}.`,
    waiting.some((line) => line.relief === 0) &&
      'Dead wood has no priority of its own and comes last: decide about it on site.',
    'The documents will offer these visits.'
  ]
  return el(
    'div',
    { class: 'what-fits' },
    ...sentences.map((sentence) => sentence !== false && el('p', {}, sentence))
  )
}

/** First visits that are due and not offered. */
function waits({ waiting }: ChosenOffer): Child {
  if (waiting.length === 0) return null
  return disclosure('more', [`${counted(waiting.length, 'visit')} left out`], () => [
    longList(el('ul'), waiting, 'visits', ({ tree, visit, year }) =>
      el('li', {}, el('strong', {}, tree), `: visit ${visit}, ${year}`)
    )
  ]).element
}

/** What later visits may cost: a forecast, part of no sum. */
function later({ forecast, minorDigits, currency }: ChosenOffer): Child {
  if (forecast === null) return null
  const { by, low, high } = forecast
  const range = (from: typeof low, to: typeof high) =>
    `${showMoney(from, minorDigits)} to ${showMoney(to, minorDigits)} ${currency} with tax`
  return el(
    'div',
    { class: 'what-fits' },
    el('p', {}, `Later visits, a forecast and not in the price: about ${range(low, high)}.`),
    el(
      'ul',
      {},
      ...by.map((each) =>
        el(
          'li',
          {},
          `${String(each.year)}: ${counted(each.lines.length, 'visit')}, about ${range(each.low, each.high)}`
        )
      )
    )
  )
}

/** Trees without limbs: a figure each, part of no sum. */
function figures({ budgetFigures, minorDigits, currency }: ChosenOffer): Child {
  if (budgetFigures.length === 0) return null
  const shown = budgetFigures.map(({ tree, price }) => `${tree} ${showMoney(price, minorDigits)}`)
  return el(
    'p',
    { class: 'aside' },
    `Budget figures of trees without limbs listed, ${currency} before tax, offered to nobody and in no sum: ${listed(shown)}. Survey them, then plan again.`
  )
}

function totals({ subtotal, tax, total, taxRate, currency, minorDigits }: ChosenOffer): HTMLElement {
  const row = (term: string, amount: typeof total, look = ''): HTMLElement =>
    el('div', { class: look || null }, el('dt', {}, term), el('dd', {}, showMoney(amount, minorDigits)))
  return el(
    'dl',
    { class: 'totals' },
    row('Subtotal', subtotal),
    row(`Tax, ${paneRate(taxRate)}`, tax),
    row(`Total, ${currency}`, total, 'totals-last')
  )
}
