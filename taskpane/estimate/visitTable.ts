import { Money } from '../../shared/money'
import type { Estimate, EstimateLine } from '../../src/price/estimate'
import { disclosure } from '../parts/disclosure'
import { el, type Child } from '../parts/elements'
import { longList, shownAtOnce } from '../parts/longList'
import { count, grouped, money } from '../parts/wording'

/** The lines of one visit as a table with their sums, and how they came about. */
export function visitTable(lines: readonly EstimateLine[], { currency, minorDigits }: Estimate): HTMLElement {
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
