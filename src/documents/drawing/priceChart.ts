import { Money } from '../../../shared/money'
import type { Estimate, EstimateLine } from '../../arbor/price/estimate'
import { grouped, showMoney } from '../moneyFormat'
import { emptyChart, type ChartOptions } from './chartFrame'
import { columnShapes } from './columnChart'
import type { Drawing } from './shapes'

function yearsOf(lines: readonly EstimateLine[]): string {
  const years = lines.map(({ year }) => year)
  const [first, last] = [Math.min(...years), Math.max(...years)]
  return first === last ? String(first) : `${first}–${last}`
}

/** Price by visit before tax, the sum of the printed lines; of one tree where it is named, otherwise of the job. */
export function priceChart(estimate: Estimate, options: ChartOptions & { tree?: string }): Drawing {
  const { tree, ...setting } = options
  const { currency, minorDigits } = estimate
  const whose = tree === undefined ? 'All trees' : `Tree ${tree}`
  const invented = estimate.inventedRates ? ', with invented rates' : ''
  const title = `${whose}: price by visit, ${currency} before tax${invented}`
  const lines = estimate.lines.filter((line) => tree === undefined || line.tree === tree)
  if (lines.length === 0) return emptyChart(setting, title, 'Nothing is priced here.')
  const visits = [...new Set(lines.map(({ visit }) => visit))].sort((a, b) => a - b)
  const columns = visits.map((visit) => {
    const own = lines.filter((line) => line.visit === visit)
    const sum = own.reduce((total, { price }) => total.plus(price), new Money(0))
    return {
      labels: [`Visit ${visit}`, yearsOf(own)],
      value: sum.toNumber(),
      text: showMoney(sum, minorDigits)
    }
  })
  const words = columns.map(({ labels, text }) => `${labels.join(', ').toLowerCase()}: ${text}`)
  return {
    ...setting,
    title,
    alt: `${title}. ${words.join('; ')}.`,
    shapes: columnShapes(setting, title, columns, (value) => grouped(String(Math.round(value * 100) / 100)))
  }
}
