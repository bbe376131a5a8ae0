import type { Estimate } from '../../price/estimate'
import { thisVisit, wholeProgram, type BudgetOffer } from '../../price/offers'
import type { SheetDraft } from '../draft'
import { estimateColumn, type EstimateColumn } from './estimateColumns'
import { cell, down } from './estimateFormulas'
import { formulaRow } from './estimateTotals'
import { fixedTenth } from '../../../shared/words/figures'
import { showMoney } from '../../../shared/words/money'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { isBudget, offerName, type ChosenOffer } from '../offered'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import type { Content, NamedCells } from '../sheet'

/** What stands in the last column of a line that is offered, and beside the choice that is made. */
export const chosenMark = '✓'

const headers: Partial<Record<EstimateColumn, string>> = {
  tree: 'Choice',
  cuts: 'Offered',
  hours: 'Crew hours',
  shared: 'Before tax',
  cost: 'Tax',
  price: 'With tax'
}

/** How the sheet adds up a column for a choice, so that it follows a change. */
function sumOf(
  offer: ChosenOffer,
  range: (column: EstimateColumn) => string,
  column: EstimateColumn
): string {
  if (isBudget(offer)) return `SUMIF(${range('chosen')},"${chosenMark}",${range(column)})`
  return offer.kind === 'this visit' ? `SUMIF(${range('visit')},1,${range(column)})` : `SUM(${range(column)})`
}

function addChoice(
  draft: SheetDraft,
  offer: ChosenOffer,
  estimate: Estimate,
  range: (column: EstimateColumn) => string
): number {
  const place = draft.next
  const hours = offer.lines.reduce((sum, line) => sum + line.crewHours, 0)
  const taxed = `ROUND(${cell('shared', place)}*Tax_rate,Money_digits)`
  return formulaRow(
    draft,
    offerName(offer, estimate),
    [
      ['hours', sumOf(offer, range, 'hours'), hours],
      ['shared', sumOf(offer, range, 'price'), offer.subtotal.toNumber()],
      ['cost', taxed, offer.tax.toNumber()],
      ['price', `${cell('shared', place)}+${cell('cost', place)}`, offer.total.toNumber()]
    ],
    looks.body
  )
}

/** What the client can choose among, each the sum of lines printed below, the choice that is offered marked and named. */
export function addChoices(
  draft: SheetDraft,
  estimate: Estimate,
  chosen: ChosenOffer,
  first: number
): NamedCells[] {
  draft.section('What can be chosen')
  const head = Array.from({ length: draft.widths.length }, (): Content => null)
  for (const [column, text] of Object.entries(headers)) head[estimateColumn[column as EstimateColumn]] = text
  const header = draft.line(head, looks.header)
  draft.format(header, estimateColumn.hours, 1, estimateColumn.price - estimateColumn.hours + 1, {
    align: 'right'
  })
  draft.format(header, estimateColumn.cuts, 1, 1, { align: 'center' })
  const range = (column: EstimateColumn) => down(column, first, estimate.lines.length)
  const start = draft.next
  const choices: ChosenOffer[] = [
    chosen.kind === 'this visit' ? chosen : thisVisit(estimate),
    chosen.kind === 'whole program' ? chosen : wholeProgram(estimate),
    ...(isBudget(chosen) ? [chosen] : [])
  ]
  for (const choice of choices) addChoice(draft, choice, estimate, range)
  const rows = draft.next - start
  draft.format(start, estimateColumn.hours, rows, 1, cellFormats.hundredth)
  draft.format(start, estimateColumn.shared, rows, 3, moneyFormat(estimate.minorDigits))
  const offered = start + choices.indexOf(chosen)
  markOffered(draft, offered)
  draft.line(
    ['Shared costs are those of all the work: recalculate them when fewer trees are ordered.'],
    looks.lead
  )
  if (isBudget(chosen))
    for (const sentence of aboutBudget(chosen, estimate)) draft.line([sentence], looks.lead)
  return [{ name: 'Offer_total', area: { row: offered, column: estimateColumn.price, rows: 1, columns: 1 } }]
}

function markOffered(draft: SheetDraft, row: number): void {
  const cells = draft.rows[row] ?? []
  cells[estimateColumn.cuts] = chosenMark
  draft.format(row, 0, 1, draft.widths.length, { bold: true, size: 12, fill: palette.headerFill })
  draft.format(row, estimateColumn.cuts, 1, 1, { align: 'center' })
  draft.height(row, 1, 20)
}

function aboutBudget(offer: BudgetOffer, estimate: Estimate): string[] {
  const uncovered = showMoney(offer.uncovered, estimate.minorDigits)
  const sentences = [
    `Marked ${chosenMark} in the last column: ${String(offer.lines.length)} of ${String(estimate.lines.length)} visits, which relieve ${fixedTenth(offer.relief)} of ${fixedTenth(offer.reliefOfAll)} points of priority, the most that this budget buys at these prices. The visits of a tree are bought in order. The marks were set when the sheet was written and do not follow a change; their sum does.`,
    `At cost, ${uncovered} ${estimate.currency} of the mobilization, travel and loads of those years would not be covered by these lines.`,
    'Dead wood has no priority of its own, so no budget ranks it: decide about it on site.'
  ]
  if (offer.unranked.length > 0)
    sentences.push(
      `Without limbs listed, so that they could not be ranked: ${offer.unranked.slice(0, 12).join(', ')}${offer.unranked.length > 12 ? ' and others' : ''}.`
    )
  return sentences
}
