import { Money } from '../../shared/money'
import type { EstimateLine, PriceBasis } from '../../src/price/estimate'
import { lineHeader, lineText, type EstimateColumn } from '../../src/sheets/estimate/estimateColumns'
import { disclosure } from '../parts/disclosure'
import { el, type Child } from '../parts/elements'
import { longList, shownAtOnce } from '../parts/longList'
import { counted } from '../../shared/words/counts'
import { grouped, hours } from '../../shared/words/figures'
import { shownParts } from '../../shared/words/rounding'
import { showMoney } from '../../shared/words/money'

/** The lines of one visit as a table with their sums, and how they came about. */
export function visitTable(lines: readonly EstimateLine[], estimate: PriceBasis): HTMLElement {
  const years = [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b)
  const allHours =
    shownParts(
      lines.map(({ crewHours }) => crewHours),
      100
    ).sum / 100
  const price = lines.reduce((sum, line) => sum.plus(line.price), new Money(0))
  const body = el('tbody')
  const more = el('button', { type: 'button', class: 'button button-plain' })
  let shown = 0
  const showNext = (): void => {
    for (const line of lines.slice(shown, shown + shownAtOnce)) body.append(lineRow(line, estimate))
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
      el('thead', {}, headRow(estimate)),
      body,
      el(
        'tfoot',
        {},
        el(
          'tr',
          {},
          el('th', { scope: 'row' }, counted(lines.length, 'tree')),
          el('td', { class: 'number' }, grouped(lines.reduce((sum, line) => sum + line.cuts, 0))),
          el('td', { class: 'number' }, hours(allHours)),
          el('td', { class: 'number' }, showMoney(price, estimate.minorDigits))
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

function yearsText(years: readonly number[]): string {
  const [first] = years
  const last = years.at(-1)
  if (first === undefined || last === undefined) return ''
  return first === last ? String(first) : `${first} to ${last}`
}

/** The columns of figures beside the tree. */
const figures = ['cuts', 'hours', 'price'] as const satisfies EstimateColumn[]

function headRow(estimate: PriceBasis): Child {
  const head = (name: EstimateColumn, look: string | null) =>
    el('th', { scope: 'col', class: look }, lineHeader(name, estimate))
  return el('tr', {}, head('tree', null), ...figures.map((name) => head(name, 'number')))
}

function lineRow(line: EstimateLine, estimate: PriceBasis): HTMLElement {
  return el(
    'tr',
    {},
    el('th', { scope: 'row' }, lineText('tree', line, estimate)),
    ...figures.map((name) => el('td', { class: 'number' }, lineText(name, line, estimate)))
  )
}
