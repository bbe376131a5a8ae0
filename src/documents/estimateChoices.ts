import type { Estimate } from '../arbor/price/estimate'
import { thisVisit, wholeProgramme, type BudgetOffer, type Offer } from '../arbor/price/offers'
import { printMoney } from '../../shared/money'
import type { SheetDraft } from './draft'
import { at, cell, down, type EstimateColumn } from './estimateColumns'
import { formulaRow } from './estimateTotals'
import { moneyFormat } from './moneyFormat'
import { looks } from './palette'
import type { Content } from './sheet'

/** What stands in the last column of a line that the budget buys. */
export const chosenMark = '✓'

const headers: Partial<Record<EstimateColumn, string>> = {
  tree: 'Choice',
  hours: 'Crew hours',
  shared: 'Before tax',
  cost: 'Tax',
  price: 'With tax'
}

/** What the client can choose among, each the sum of lines printed above. */
export function addChoices(
  draft: SheetDraft,
  estimate: Estimate,
  budget: BudgetOffer | null,
  first: number
): void {
  draft.section('What can be chosen')
  const head = Array.from({ length: draft.widths.length }, (): Content => null)
  for (const [column, text] of Object.entries(headers)) head[at[column as EstimateColumn]] = text
  const header = draft.line(head, looks.header)
  draft.format(header, at.hours, 1, at.price - at.hours + 1, { align: 'right' })
  const range = (column: EstimateColumn) => down(column, first, estimate.lines.length)
  const start = draft.next
  const row = (label: string, offer: Offer, sumOf: (column: EstimateColumn) => string) => {
    const place = draft.next
    const hours = offer.lines.reduce((sum, line) => sum + line.crewHours, 0)
    const taxed = `ROUND(${cell('shared', place)}*Tax_rate,Money_digits)`
    formulaRow(
      draft,
      label,
      [
        ['hours', sumOf('hours'), hours],
        ['shared', sumOf('price'), offer.subtotal.toNumber()],
        ['cost', taxed, offer.tax.toNumber()],
        ['price', `${cell('shared', place)}+${cell('cost', place)}`, offer.total.toNumber()]
      ],
      looks.body
    )
  }
  row(
    'The first visit to every tree only',
    thisVisit(estimate),
    (column) => `SUMIF(${range('visit')},1,${range(column)})`
  )
  row('Every visit of the programme', wholeProgramme(estimate), (column) => `SUM(${range(column)})`)
  if (budget !== null)
    row(
      `Most priority relieved within ${printMoney(budget.budget, estimate.minorDigits)} with tax`,
      budget,
      (column) => `SUMIF(${range('chosen')},"${chosenMark}",${range(column)})`
    )
  const rows = draft.next - start
  draft.format(start, at.hours, rows, 1, { numberFormat: '0.00', align: 'right' })
  draft.format(start, at.shared, rows, 3, moneyFormat(estimate.minorDigits))
  draft.format(start, at.price, rows, 1, { bold: true })
  draft.format(start, at.tree, rows, 1, { bold: true })
  draft.line(
    ['Shared costs are those of all the work: reckon them anew when fewer trees are ordered.'],
    looks.lead
  )
  if (budget !== null)
    for (const sentence of aboutBudget(budget, estimate)) draft.line([sentence], looks.lead)
}

function aboutBudget(offer: BudgetOffer, estimate: Estimate): string[] {
  const points = (value: number) => value.toFixed(1)
  const uncovered = printMoney(offer.uncovered, estimate.minorDigits)
  const sentences = [
    `Marked ${chosenMark} in the last column: ${String(offer.lines.length)} of ${String(estimate.lines.length)} visits, which relieve ${points(offer.relief)} of ${points(offer.reliefOfAll)} points of priority, the most that this budget buys at these prices. The visits of a tree are bought in order. The marks were set when the sheet was written and do not follow a change; their sum does.`,
    `At cost, ${uncovered} ${estimate.currency} of the mobilisation, travel and loads of those years would not be brought in by these lines.`,
    'Dead wood has no priority of its own, so no budget ranks it: decide about it on site.'
  ]
  if (offer.unranked.length > 0)
    sentences.push(
      `Without limbs listed, so that they could not be ranked: ${offer.unranked.slice(0, 12).join(', ')}${offer.unranked.length > 12 ? ' and others' : ''}.`
    )
  return sentences
}
