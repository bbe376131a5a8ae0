import { asNumber, sumPrinted, type Money } from '../../../shared/money'
import type { Offer } from '../../price/offers'
import { ratePercent } from '../../../shared/words/percent'
import { shownParts } from '../../../shared/words/rounding'
import { cellFormats } from '../cellFormats'
import { looks } from '../looks'
import { moneyFormat } from '../moneyFormat'
import type { PrintedDraft } from '../printedDraft'
import type { Content, NamedCells } from '../sheet'
import {
  labeledRow,
  ofLine,
  priceCell,
  priceColumns,
  priceRange,
  type LineRows,
  type PriceColumn
} from './priceTable'

const formula = (text: string, value: number): Content => ({ formula: `=${text}`, value })

/** The price of each year, subtotal, tax and total as native formulas, each with the engine's value until it calculates. */
export function addTotals(draft: PrintedDraft, offer: Offer, lines: LineRows): NamedCells[] {
  const { minorDigits } = offer
  const start = draft.next
  const range = (column: PriceColumn) => priceRange(column, lines)
  const years = [...new Set(offer.lines.map(({ year }) => year))].sort((a, b) => a - b)
  for (const year of years.length > 1 ? years : []) {
    const own = offer.lines.filter((line) => line.year === year)
    const value = sumPrinted(own, ({ price }) => price, minorDigits)
    const sum = `SUMIF(${range('year')},${String(year)},${range('price')})`
    labeledRow(draft, `Price of ${String(year)}`, { price: formula(sum, asNumber(value)) }, {})
  }
  const hours =
    shownParts(
      offer.lines.map(({ crewHours }) => crewHours),
      100
    ).sum / 100
  const weight = offer.lines.reduce((sum, { brush }) => sum + brush.weight, 0)
  const subtotal = labeledRow(
    draft,
    'Subtotal',
    {
      cuts: formula(
        `SUM(${range('cuts')})`,
        offer.lines.reduce((sum, { cuts }) => sum + cuts, 0)
      ),
      hours: formula(`ROUND(SUM(${range('hours')}),2)`, hours),
      brush: formula(`SUM(${range('brush')})`, weight),
      price: formula(`ROUND(SUM(${range('price')}),Money_digits)`, asNumber(offer.subtotal))
    },
    { bold: true, underline: looks.total.underline }
  )
  draft.format(subtotal, priceColumns.cuts, 1, 1, cellFormats.whole)
  draft.format(subtotal, priceColumns.hours, 1, 1, cellFormats.hundredth)
  draft.format(subtotal, priceColumns.brush, 1, 1, cellFormats.whole)
  const taxOf = `ROUND(${priceCell('price', subtotal)}*Tax_rate,Money_digits)`
  const tax = labeledRow(
    draft,
    'Tax, rate shown',
    { brush: formula('Tax_rate', offer.taxRate), price: formula(taxOf, asNumber(offer.tax)) },
    {}
  )
  const sum = `${priceCell('price', subtotal)}+${priceCell('price', tax)}`
  const total = labeledRow(
    draft,
    `Total with tax (${offer.currency})`,
    { price: formula(`ROUND(${sum},Money_digits)`, asNumber(offer.total)) },
    { ...looks.total, size: 13 }
  )
  draft.height(total, 1, 22)
  draft.format(start, priceColumns.price, total - start + 1, 1, moneyFormat(minorDigits))
  draft.format(tax, priceColumns.brush, 1, 1, cellFormats.taxRate)
  return [{ name: 'Offer_total', area: { row: total, column: priceColumns.price, rows: 1, columns: 1 } }]
}

/** The visits that are expected later, each year with a range, apart from what is signed. */
export function addForecast(draft: PrintedDraft, { forecast, minorDigits, rates }: Offer): void {
  if (forecast === null) return
  draft.keepTogether()
  draft.air()
  draft.heading('Later visits, a forecast and not in the price above')
  draft.prose(
    `Every later visit is measured and offered again. What it may cost with tax at today’s rates, ${ratePercent(Number(rates.forecastSpread))} less or more, to two figures:`
  )
  const header = labeledRow(draft, 'Year', { cuts: 'Visits', brush: 'From', price: 'To' }, looks.header)
  draft.format(header, priceColumns.cuts, 1, 4, { align: 'right' })
  const top = draft.next
  const range = (at: number, low: Money, high: Money) => ({
    brush: formula(`INDEX(Forecast_from,${String(at)})`, asNumber(low)),
    price: formula(`INDEX(Forecast_to,${String(at)})`, asNumber(high))
  })
  forecast.by.forEach(({ year, lines, low, high }, index) => {
    labeledRow(draft, String(year), { cuts: lines.length, ...range(index + 1, low, high) }, {})
  })
  const { low, high } = forecast
  const all = range(forecast.by.length + 1, low, high)
  labeledRow(draft, 'All later visits', { cuts: forecast.lines.length, ...all }, { bold: true })
  draft.format(top, priceColumns.brush, draft.next - top, 2, moneyFormat(minorDigits))
}

/** Trees without limbs, each with a figure and no sum: nothing is specified for them. */
export function addBudgetFigures(draft: PrintedDraft, offer: Offer): void {
  const { budgetFigures, minorDigits, lines, forecast, currency } = offer
  if (budgetFigures.length === 0) return
  draft.keepTogether()
  draft.air()
  draft.heading('Budget figures, not offered and in no sum')
  draft.prose(
    `No limbs are listed for these trees, so no work on them is specified, ordered or priced above. By their trunks they may come to so much before tax (${currency}), done in the same trip; the trees are surveyed and then offered.`
  )
  const header = labeledRow(draft, 'Tree', { price: 'About' }, looks.header)
  draft.format(header, priceColumns.price, 1, 1, { align: 'right' })
  const top = draft.next
  const before = lines.length + (forecast?.lines.length ?? 0)
  budgetFigures.forEach(({ tree, price, outside }, index) => {
    const figure = ofLine('Line_price', before + index + 1, asNumber(price))
    const remark = outside ? { visit: 'trunk outside the published 4 to 16 in' } : {}
    labeledRow(draft, tree, { ...remark, price: figure }, {})
  })
  draft.format(top, priceColumns.price, draft.next - top, 1, moneyFormat(minorDigits))
}
