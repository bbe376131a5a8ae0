import type { ChosenOffer } from '../price/offers'
import { listed } from '../../shared/words/lists'
import { nothingOffered, offerName, offerSize } from '../sheets/offered'
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
export function estimateLines(offer: ChosenOffer): string[] {
  const sum = (name: string, amount: ChosenOffer['total']) =>
    row([name, '', '', '', '', '', showMoney(amount, offer.minorDigits)], widths)
  return [
    '',
    'ESTIMATE',
    ...(offer.lines.length === 0 ? folded(nothingOffered(offer), 0) : offeredLines(offer, sum)),
    ...apartLines(offer),
    ...(offer.inventedRates ? folded(inventedRatesNotice, 0) : [])
  ]
}

function offeredLines(
  offer: ChosenOffer,
  sum: (name: string, amount: ChosenOffer['total']) => string
): string[] {
  return [
    ...folded(`${offerName(offer)}: ${offerSize(offer)}.`, 0),
    row(
      layout.map(([column]) => lineHeader(column, offer)),
      widths
    ),
    ...offer.lines.map((line) =>
      row(
        layout.map(([column]) => lineText(column, line, offer)),
        widths
      )
    ),
    sum('Subtotal', offer.subtotal),
    sum(`Tax ${ratePercent(offer.taxRate)}`, offer.tax),
    sum('Total', offer.total)
  ]
}

/** What belongs to the offer and is part of no sum. */
function apartLines({ forecast, budgetFigures, waiting, currency, minorDigits }: ChosenOffer): string[] {
  const lines: string[] = []
  if (waiting.length > 0) lines.push(`Due now and not offered: ${listed(waiting.map(({ tree }) => tree))}.`)
  if (forecast !== null) {
    const years = listed(forecast.by.map(({ year }) => String(year)))
    const range = `${showMoney(forecast.low, minorDigits)} to ${showMoney(forecast.high, minorDigits)} ${currency}`
    lines.push(`Later visits (${years}), a forecast and in no sum: about ${range} with tax.`)
  }
  if (budgetFigures.length > 0) {
    const figures = budgetFigures.map(({ tree, price }) => `${tree} ${showMoney(price, minorDigits)}`)
    lines.push(
      `Budget figures of trees without limbs, in no sum, ${currency} before tax: ${listed(figures)}.`
    )
  }
  return lines.flatMap((line) => folded(line, 0))
}
