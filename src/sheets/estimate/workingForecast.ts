import type { Forecast } from '../../price/forecast'
import { asNumber, type Money } from '../../../shared/money'
import type { SheetDraft } from '../draft'
import { estimateColumn, type EstimateColumn } from './estimateColumns'
import { cell } from './estimateFormulas'
import type { WorkingLines } from './workingLines'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import type { Content, NamedCells } from '../sheet'

const headers: Partial<Record<EstimateColumn, string>> = {
  tree: 'Forecast',
  year: 'Year',
  crew: 'Before tax',
  disposal: 'Tax',
  shared: 'With tax',
  cost: 'Less',
  charged: 'More',
  topUp: 'From',
  price: 'To'
}

/** To two figures, down or up, as the engine rounds a range. */
const outward = (rounding: 'ROUNDDOWN' | 'ROUNDUP', of: string): string =>
  `IF(${of}>0,${rounding}(${of},MIN(Money_digits,1-INT(LOG10(${of})))),0)`

/** What a row of the forecast sums: one of its years, or all. */
interface Summed {
  readonly subtotal: Money
  readonly tax: Money
  readonly total: Money
  readonly low: Money
  readonly high: Money
}

function forecastRow(
  label: string,
  year: number | null,
  sum: string,
  summed: Summed,
  row: number,
  spread: Money
): Content[] {
  const of = (column: EstimateColumn) => cell(column, row)
  const { subtotal, tax, total, low, high } = summed
  const entries: [EstimateColumn, string, number][] = [
    ['crew', `ROUND(${sum},Money_digits)`, asNumber(subtotal)],
    ['disposal', `ROUND(${of('crew')}*Tax_rate,Money_digits)`, asNumber(tax)],
    ['shared', `ROUND(${of('crew')}+${of('disposal')},Money_digits)`, asNumber(total)],
    [
      'cost',
      `ROUND(${of('shared')}*(1-Forecast_spread),Money_digits+2)`,
      asNumber(total.minus(total.times(spread)))
    ],
    [
      'charged',
      `ROUND(${of('shared')}*(1+Forecast_spread),Money_digits+2)`,
      asNumber(total.plus(total.times(spread)))
    ],
    ['topUp', outward('ROUNDDOWN', of('cost')), asNumber(low)],
    ['price', outward('ROUNDUP', of('charged')), asNumber(high)]
  ]
  const cells = Array.from({ length: estimateColumn.price + 1 }, (): Content => null)
  cells[estimateColumn.tree] = label
  cells[estimateColumn.year] = year
  for (const [column, formula, value] of entries)
    cells[estimateColumn[column]] = { formula: `=${formula}`, value }
  return cells
}

/** The range of each year that is forecast and of all of them, the last row; nothing where nothing is. */
export function addForecastWorking(
  draft: SheetDraft,
  forecast: Forecast | null,
  { trips }: WorkingLines,
  { spread, minorDigits }: { spread: Money; minorDigits: number }
): NamedCells[] {
  if (forecast === null) return []
  draft.section('Later visits: how far a forecast may be off')
  const head = Array.from({ length: draft.widths.length }, (): Content => null)
  for (const [column, text] of Object.entries(headers)) head[estimateColumn[column as EstimateColumn]] = text
  draft.line(head, looks.header)
  const top = draft.next
  const numbers = trips.filter(({ name }) => name === 'Forecast').map(({ number }) => number)
  const priceOf = (number: number) => `INDEX(Trip_price,${String(number)})`
  forecast.by.forEach((each, index) => {
    const sum = priceOf(numbers[index] ?? 0)
    draft.line(forecastRow('Year', each.year, sum, each, draft.next, spread), looks.body)
  })
  const all = numbers.map(priceOf).join('+')
  draft.line(forecastRow('All years', null, all, forecast, draft.next, spread), looks.body)
  const rows = draft.next - top
  draft.format(top, estimateColumn.crew, rows, 7, moneyFormat(minorDigits))
  return (['topUp', 'price'] as const).map((column) => ({
    name: column === 'topUp' ? 'Forecast_from' : 'Forecast_to',
    area: { row: top, column: estimateColumn[column], rows, columns: 1 }
  }))
}
