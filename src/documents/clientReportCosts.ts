import type { Plan } from '../arbor/plan/plan'
import type { Estimate } from '../arbor/price/estimate'
import { inventedRatesNotice } from './cautions'
import { moneyFormat } from './estimateTotals'
import { looks } from './palette'
import type { PrintedDraft } from './printedDraft'
import { counted } from './sentences'
import type { Format } from './sheet'
import { priceOf, yearsOf } from './clientReportYears'

/** The amounts stand in the fourth column, their labels run over those before. */
const amountColumn = 3

function amount(draft: PrintedDraft, label: string, value: number, estimate: Estimate, look: Format): void {
  const row = draft.line([label, null, null, value], {})
  draft.format(row, 0, 1, amountColumn + 1, { ...draft.body, ...look })
  draft.format(row, amountColumn, 1, 1, moneyFormat(estimate.minorDigits))
}

/** The rate as people write it: 0.0825 gives "8.25 %". */
function rate(share: number): string {
  return `${String(Math.round(share * 10000) / 100)} %`
}

/** What each year costs, the tax, and all of it. */
export function addCosts(draft: PrintedDraft, plan: Plan, estimate: Estimate): void {
  draft.heading(`What it costs, in ${estimate.currency}`)
  if (estimate.inventedRates) draft.prose(inventedRatesNotice, { ...looks.caution, size: 10, bold: true })
  for (const year of yearsOf(estimate)) {
    const lines = estimate.lines.filter((line) => line.year === year)
    const trees = new Set(lines.map(({ tree }) => tree)).size
    amount(draft, `${String(year)}: ${counted(trees, 'tree')}`, priceOf(lines).toNumber(), estimate, {})
  }
  const rest = estimate.subtotal.minus(priceOf(estimate.lines))
  if (!rest.isZero()) amount(draft, 'For the job as a whole', rest.toNumber(), estimate, {})
  amount(draft, 'All visits before tax', estimate.subtotal.toNumber(), estimate, { bold: true })
  amount(draft, `Tax, ${rate(estimate.taxRate)}`, estimate.tax.toNumber(), estimate, {})
  amount(draft, 'All visits with tax', estimate.total.toNumber(), estimate, looks.total)
  const first = Number(plan.date.slice(0, 4))
  if (yearsOf(estimate).some((year) => year > first))
    draft.prose(
      `Years after ${String(first)} are a forecast at today’s rates. The trees are measured again before each visit, and the work may turn out less or more.`
    )
}
