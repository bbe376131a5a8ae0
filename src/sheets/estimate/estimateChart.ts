import { asNumber } from '../../../shared/money'
import { showMoney } from '../../../shared/words/money'
import { palette } from '../../../shared/palette'
import type { Offer } from '../../price/offers'
import { chartRows } from '../chartRoom'
import { moneyFormat } from '../moneyFormat'
import { pricesByVisit } from '../pricesByVisit'
import type { PrintedDraft } from '../printedDraft'
import type { SheetChart } from '../sheet'
import { labeledRow, priceColumns, priceRange, type LineRows } from './priceTable'

/**
 * The price of each visit as native formulas, and a chart of these cells, so that both follow the rates; nothing where all
 * is one visit.
 */
export function addPriceChart(draft: PrintedDraft, offer: Offer, lines: LineRows): SheetChart[] {
  const { currency, minorDigits, inventedRates } = offer
  const prices = pricesByVisit(offer.lines, offer).map(({ visit, years, price }) => {
    return { visit, label: `Visit ${String(visit)}, ${years}`, price }
  })
  if (prices.length < 2) return []
  draft.keepTogether()
  draft.air()
  draft.heading('Price by visit')
  const top = draft.next
  for (const { visit, label, price } of prices) {
    const formula = `=SUMIF(${priceRange('visit', lines)},${String(visit)},${priceRange('price', lines)})`
    labeledRow(draft, label, { price: { formula, value: asNumber(price) } }, {})
  }
  const rows = prices.length
  draft.format(top, priceColumns.price, rows, 1, moneyFormat(minorDigits))
  draft.air()
  const title = `Price by visit, ${currency} before tax${inventedRates ? ', with invented rates' : ''}`
  const words = prices.map(({ label, price }) => `${label}: ${showMoney(price, minorDigits)}`)
  const column = (at: number) => ({ row: top, column: at, rows, columns: 1 })
  return [
    {
      area: { ...chartRows(draft, 240), column: 0, columns: priceColumns.price },
      title,
      alt: `${title}, one column per visit. When it was written: ${words.join('; ')}.`,
      labels: column(priceColumns.tree),
      series: [
        {
          name: 'Price before tax',
          values: column(priceColumns.price),
          drawn: 'columns',
          color: palette.moss
        }
      ],
      valueTitle: currency,
      valueFormat: '#,##0'
    }
  ]
}
