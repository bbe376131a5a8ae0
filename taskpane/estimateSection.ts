import { Money } from '../shared/money'
import type { Estimate, EstimateLine } from '../src/arbor/price/estimate'
import { howToRead, inventedRatesNotice } from '../src/documents/cautions'
import { disclosure } from './disclosure'
import { el, type Child } from './elements'
import type { Drawings } from './engine'
import { figure } from './figure'
import { longList, shownAtOnce } from './longList'
import { count, grouped, money, percent } from './wording'

/** The priced lines by visit, and the totals, which are sums of the printed lines. */
export function estimateSection(estimate: Estimate, drawings: () => Promise<Drawings>): HTMLElement {
  const { lines, inventedRates } = estimate
  return el(
    'div',
    {},
    inventedRates && el('p', { class: 'notice' }, inventedRatesNotice),
    lines.some(({ visit }) => visit > 1) && priceFigure(estimate, drawings),
    lines.length === 0
      ? el('p', {}, 'There is nothing to price: the plan holds no visits.')
      : el('div', {}, ...byVisit(lines).map((visit) => visitTable(visit, estimate))),
    lines.length > 0 && totals(estimate),
    lines.some(({ visit }) => visit > 1) && el('p', { class: 'aside' }, howToRead[1])
  )
}

/** Where there is one visit only, its total says as much as a column. */
function priceFigure(estimate: Estimate, drawings: () => Promise<Drawings>): HTMLElement {
  return figure(drawings, ({ priceChart }, width) =>
    priceChart(estimate, { width, height: 220, palette: 'color' })
  ).element
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

function visitTable(lines: readonly EstimateLine[], { currency, minorDigits }: Estimate): HTMLElement {
  const years = [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b)
  const hours = lines.reduce((sum, line) => sum + printedHours(line), 0)
  const price = lines.reduce((sum, line) => sum.plus(line.price), new Money(0))
  const body = el('tbody')
  const more = el('button', { type: 'button', class: 'button button-plain' })
  let shown = 0
  const showNext = (): void => {
    for (const line of lines.slice(shown, shown + shownAtOnce)) body.append(lineRow(line, minorDigits))
    shown = Math.min(lines.length, shown + shownAtOnce)
    more.hidden = shown === lines.length
    more.textContent = `Show more lines (${grouped(lines.length - shown)} left)`
  }
  more.addEventListener('click', showNext)
  showNext()
  return el(
    'div',
    { class: 'visit-estimate' },
    el(
      'table',
      { class: 'lines' },
      el(
        'caption',
        {},
        `Visit ${lines[0]?.visit ?? ''}`,
        el('span', { class: 'caption-years' }, yearsText(years))
      ),
      el(
        'thead',
        {},
        headRow([
          ['Tree', ''],
          ['Cuts', 'number'],
          ['Crew hours', 'number'],
          [`Price (${currency})`, 'number']
        ])
      ),
      body,
      el(
        'tfoot',
        {},
        el(
          'tr',
          {},
          el('th', { scope: 'row' }, count(lines.length, 'tree')),
          el('td', { class: 'number' }, grouped(lines.reduce((sum, line) => sum + line.cuts, 0))),
          el('td', { class: 'number' }, hours.toFixed(2)),
          el('td', { class: 'number' }, money(price, minorDigits))
        )
      )
    ),
    more,
    disclosure('more', [`How the lines of visit ${lines[0]?.visit ?? ''} came about`], () => [
      longList(el('ul'), lines, 'lines', (line) =>
        el('li', {}, el('strong', {}, line.tree), `: ${line.basis}`)
      )
    ]).element
  )
}

/** Hours as they are printed; their total is the sum of what is printed. */
function printedHours({ crewHours }: EstimateLine): number {
  return Math.round(crewHours * 100) / 100
}

function yearsText(years: readonly number[]): string {
  const [first] = years
  const last = years.at(-1)
  if (first === undefined || last === undefined) return ''
  return first === last ? String(first) : `${first} to ${last}`
}

function headRow(heads: readonly (readonly [string, string])[]): Child {
  return el('tr', {}, ...heads.map(([text, look]) => el('th', { scope: 'col', class: look || null }, text)))
}

function lineRow(line: EstimateLine, minorDigits: number): HTMLElement {
  return el(
    'tr',
    {},
    el('th', { scope: 'row' }, line.tree),
    el('td', { class: 'number' }, line.cuts),
    el('td', { class: 'number' }, printedHours(line).toFixed(2)),
    el('td', { class: 'number' }, money(line.price, minorDigits))
  )
}

function totals({ subtotal, tax, taxRate, total, currency, minorDigits }: Estimate): HTMLElement {
  const row = (term: string, amount: Money, look = ''): HTMLElement =>
    el('div', { class: look || null }, el('dt', {}, term), el('dd', {}, money(amount, minorDigits)))
  return el(
    'dl',
    { class: 'totals' },
    row('Subtotal', subtotal),
    row(`Tax, ${percent(taxRate)}`, tax),
    row(`Total, ${currency}`, total, 'totals-last')
  )
}
