import type { Estimate } from '../price/estimate'
import { showMoney } from '../../shared/words/money'
import { ratePercent } from '../../shared/words/percent'
import { inventedRatesNotice } from '../sheets/cautions'
import { lineHeader, lineText, type EstimateColumn } from '../sheets/estimate/estimateColumns'
import { folded, row } from './textRows'

const layout: readonly (readonly [column: EstimateColumn, width: number])[] = [
  ['tree', 14],
  ['visit', -5],
  ['year', -6],
  ['cuts', -6],
  ['hours', -10],
  ['weight', -12],
  ['price', -14]
]

const widths = layout.map(([, width]) => width)

/** The estimate in columns: one line per tree and visit, then the totals. */
export function estimateLines(estimate: Estimate): string[] {
  const sum = (name: string, amount: Estimate['total']) =>
    row([name, '', '', '', '', '', showMoney(amount, estimate.minorDigits)], widths)
  return [
    '',
    'ESTIMATE',
    row(
      layout.map(([column]) => lineHeader(column, estimate)),
      widths
    ),
    ...estimate.lines.map((line) =>
      row(
        layout.map(([column]) => lineText(column, line, estimate)),
        widths
      )
    ),
    sum('Subtotal', estimate.subtotal),
    sum(`Tax ${ratePercent(estimate.taxRate)}`, estimate.tax),
    sum('Total', estimate.total),
    ...(estimate.inventedRates ? folded(inventedRatesNotice, 0) : [])
  ]
}
