import type { Estimate } from '../../price/estimate'
import { grouped } from '../../../shared/words/figures'
import { showMoney } from '../../../shared/words/money'
import { pricesByVisit } from '../pricesByVisit'
import { emptyChart, type ChartOptions } from '../../drawing/charts/chartFrame'
import { columnShapes } from '../../drawing/charts/columnChart'
import type { Drawing } from '../../drawing/shapes'

/** Price by visit before tax, the sum of the printed lines; of one tree where it is named, otherwise of the job. */
export function priceChart(estimate: Estimate, options: ChartOptions & { tree?: string }): Drawing {
  const { tree, ...setting } = options
  const { currency, minorDigits } = estimate
  const whose = tree === undefined ? 'All trees' : `Tree ${tree}`
  const invented = estimate.inventedRates ? ', with invented rates' : ''
  const title = `${whose}: price by visit, ${currency} before tax${invented}`
  const lines = estimate.lines.filter((line) => tree === undefined || line.tree === tree)
  if (lines.length === 0) return emptyChart(setting, title, 'Nothing is priced here.')
  const columns = pricesByVisit(lines, estimate).map(({ visit, years, price }) => ({
    labels: [`Visit ${visit}`, years],
    value: price.toNumber(),
    text: showMoney(price, minorDigits)
  }))
  const words = columns.map(({ labels, text }) => `${labels.join(', ').toLowerCase()}: ${text}`)
  return {
    ...setting,
    title,
    alt: `${title}. ${words.join('; ')}.`,
    shapes: columnShapes(setting, title, columns, grouped)
  }
}
