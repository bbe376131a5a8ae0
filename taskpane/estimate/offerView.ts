import type { Estimate, EstimateLine } from '../../src/price/estimate'
import type { BudgetOffer, Offer } from '../../src/price/offers'
import { disclosure } from '../parts/disclosure'
import { el, type Child } from '../parts/elements'
import { longList } from '../parts/longList'
import { counted } from '../../shared/words/counts'
import { listed } from '../../shared/words/lists'
import { showMoney } from '../../shared/words/money'
import { fixedTenth } from '../../shared/words/figures'
import { paneRate } from '../parts/wording'
import { visitTable } from './visitTable'

/** The priced lines of an offer by visit, and its totals, which are sums of the printed lines. */
export function offerView(offer: Offer | BudgetOffer, estimate: Estimate): Child[] {
  return [
    'budget' in offer && whatFits(offer, estimate),
    ...byVisit(offer.lines).map((visit) => visitTable(visit, estimate)),
    totals(offer, estimate),
    'budget' in offer && leftOut(offer, estimate)
  ]
}

/** An offer in a sentence, for a screen reader. */
export function offerWords({ lines, total }: Offer, { currency, minorDigits }: Estimate): string {
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

const treesOf = (lines: readonly EstimateLine[]) => new Set(lines.map(({ tree }) => tree)).size

function whatFits(offer: BudgetOffer, estimate: Estimate): HTMLElement {
  const { minorDigits, currency, lines } = estimate
  const within = `${showMoney(offer.budget, minorDigits)} ${currency}`
  const fits = `${offer.lines.length} of ${counted(lines.length, 'visit')}, to ${treesOf(offer.lines)} of ${counted(treesOf(lines), 'tree')}`
  const relief = `${fixedTenth(offer.relief)} of ${fixedTenth(offer.reliefOfAll)} points of priority`
  const sentences = [
    `Within ${within}: ${fits}. They relieve ${relief}, the most that this budget buys at these prices.`,
    offer.uncovered.greaterThan(0) &&
      `At cost, ${showMoney(offer.uncovered, minorDigits)} of the mobilization, travel and loads of those years would not be covered: recalculate them when fewer trees are ordered.`,
    offer.unranked.length > 0 &&
      `No limbs are listed for ${listed([...new Set(offer.unranked)])}, so they could not be ranked and are left out.`,
    'Dead wood has no priority of its own, so no budget ranks it: decide about it on site.',
    'The Estimate, the Client report and the Work order will offer these visits.'
  ]
  return el(
    'div',
    { class: 'what-fits' },
    ...sentences.map((sentence) => sentence !== false && el('p', {}, sentence))
  )
}

function leftOut(offer: BudgetOffer, { lines, minorDigits }: Estimate): Child {
  const bought = new Set(offer.lines)
  const left = lines.filter((line) => !bought.has(line))
  if (left.length === 0) return null
  return disclosure('more', [`${counted(left.length, 'visit')} left out`], () => [
    longList(el('ul'), left, 'visits', ({ tree, visit, year, price }) =>
      el('li', {}, el('strong', {}, tree), `: visit ${visit}, ${year}, ${showMoney(price, minorDigits)}`)
    )
  ]).element
}

function totals({ subtotal, tax, total }: Offer, { taxRate, currency, minorDigits }: Estimate): HTMLElement {
  const row = (term: string, amount: Offer['total'], look = ''): HTMLElement =>
    el('div', { class: look || null }, el('dt', {}, term), el('dd', {}, showMoney(amount, minorDigits)))
  return el(
    'dl',
    { class: 'totals' },
    row('Subtotal', subtotal),
    row(`Tax, ${paneRate(taxRate)}`, tax),
    row(`Total, ${currency}`, total, 'totals-last')
  )
}
