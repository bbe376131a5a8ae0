import { showMoney } from '../../../shared/words/money'
import type { Estimate } from '../../price/estimate'
import { chartRows } from '../chartRoom'
import type { SheetDraft } from '../draft'
import { estimateColumn } from './estimateColumns'
import { down } from './estimateFormulas'
import { formulaRow } from './estimateTotals'
import { moneyFormat } from '../moneyFormat'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { pricesByVisit } from '../pricesByVisit'
import type { SheetChart } from '../sheet'

/** A chart and the rows that belong to it, heading included. */
export interface ChartBlock {
  chart: SheetChart
  from: number
  to: number
}

/**
 * The price of each visit as native formulas, and a chart of these cells, so that both follow the rates. `first` is the
 * sheet's row of the first line.
 */
export function addPriceChart(draft: SheetDraft, estimate: Estimate, first: number): ChartBlock {
  const { lines, currency, minorDigits, inventedRates } = estimate
  const from = draft.next
  const range = (column: 'visit' | 'price') => down(column, first, lines.length)
  draft.section('Price by visit')
  const top = draft.next
  const prices = pricesByVisit(lines, estimate).map(({ visit, years, price }) => {
    return { visit, label: `Visit ${String(visit)}, ${years}`, price }
  })
  for (const { visit, label, price } of prices) {
    const formula = `SUMIF(${range('visit')},${String(visit)},${range('price')})`
    formulaRow(draft, label, [['price', formula, price.toNumber()]], looks.body)
  }
  const rows = prices.length
  draft.format(top, estimateColumn.price, rows, 1, moneyFormat(minorDigits))
  draft.blank()
  const title = `Price by visit, ${currency} before tax${inventedRates ? ', with invented rates' : ''}`
  const words = prices.map(({ label, price }) => `${label}: ${showMoney(price, minorDigits)}`)
  const chart: SheetChart = {
    area: { ...chartRows(draft, 240), column: estimateColumn.tree, columns: estimateColumn.hours },
    title,
    alt: `${title}, one column per visit. When it was written: ${words.join('; ')}.`,
    labels: { row: top, column: estimateColumn.tree, rows, columns: 1 },
    series: [
      {
        name: 'Price before tax',
        values: { row: top, column: estimateColumn.price, rows, columns: 1 },
        drawn: 'columns',
        color: palette.moss
      }
    ],
    valueTitle: currency,
    valueFormat: '#,##0'
  }
  return { chart, from, to: draft.next }
}
