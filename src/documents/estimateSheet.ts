import type { Plan } from '../arbor/plan/plan'
import type { Estimate } from '../arbor/price/estimate'
import type { BudgetOffer } from '../arbor/price/offers'
import { readSerial } from '../../shared/serialDate'
import { cautions, inventedRatesNotice } from './cautions'
import { breaksForBlock } from './chartRoom'
import { SheetDraft } from './draft'
import { addPriceChart, type ChartBlock } from './estimateChart'
import { addChoices, chosenMark } from './estimateChoices'
import { estimateColumns, estimateRow, estimateWidths } from './estimateColumns'
import { estimateLooks, leastChargeSentence } from './estimateLooks'
import { addRates } from './estimateRates'
import { addTotals } from './estimateTotals'
import { addYears, workingOf } from './estimateYears'
import { titles } from './ownSheets'
import { looks } from './palette'
import type { Content, NamedCells, PageSetup, SheetDescription } from './sheet'

function addHead(draft: SheetDraft, estimate: Estimate, plan: Plan): void {
  draft.title(titles.estimate)
  draft.dated(plan.date)
  const until = draft.labelled('Holds until', { date: readSerial(estimate.validUntil) ?? 0 })
  draft.format(until, 1, 1, 1, { numberFormat: 'yyyy-mm-dd', align: 'left' })
  draft.labelled(
    'Prices',
    `In ${estimate.currency}. Visits after the first are a forecast at the same rates.${estimate.lines.length > 0 ? ` ${leastChargeSentence}` : ''}`
  )
  if (estimate.inventedRates) {
    const counted = `${String(estimate.inventedCount)} of ${String(estimate.rateCount)} rates are still invented.`
    draft.labelled('Rates', inventedRatesNotice, { ...looks.caution, bold: true })
    draft.labelled('', counted, { ...looks.caution, bold: true })
  }
  for (const sentence of cautions) draft.labelled('Caution', sentence, looks.caution)
}

/** Lines of text in the headers of the table. */
const headerLines = 3

function addLines(draft: SheetDraft, estimate: Estimate, budget: BudgetOffer | null): number {
  const { lines } = estimate
  const first = draft.next + 1
  const { ofLines } = workingOf(estimate, first)
  const bought = new Set(budget?.lines)
  const body = lines.map((line, index): Content[] => {
    const cells = estimateRow(line, first + index, ofLines[index] ?? { units: 0, order: 0 })
    return budget === null ? cells : [...cells, bought.has(line) ? chosenMark : null]
  })
  const top = draft.table(estimateColumns(estimate, budget !== null), body, headerLines)
  draft.tables.push({
    name: 'EstimateLines',
    area: { row: top, column: 0, rows: lines.length + 1, columns: draft.widths.length }
  })
  return top
}

/**
 * The estimate as a sheet: one row a tree and visit, what the years share, totals, what can be chosen, and the rates that
 * the formulas call by name. All formulas are native and older than Excel 2016, so that it reckons without the add-in.
 */
export function describeEstimate(
  estimate: Estimate,
  plan: Plan,
  budget: BudgetOffer | null = null
): SheetDescription {
  const draft = new SheetDraft(budget === null ? estimateWidths : [...estimateWidths, 11])
  const names: NamedCells[] = []
  addHead(draft, estimate, plan)
  draft.section('Work by tree and visit')
  let titleRow: number | null = null
  let price: ChartBlock | null = null
  if (estimate.lines.length === 0)
    draft.line(['No work is planned, so there is nothing to price.'], looks.body)
  else {
    titleRow = addLines(draft, estimate, budget)
    draft.blank()
    addTotals(draft, estimate, titleRow + 1)
    addChoices(draft, estimate, budget, titleRow + 1)
    price = addPriceChart(draft, estimate, titleRow + 1)
    names.push(...addYears(draft, estimate, titleRow + 1), ...addRates(draft, estimate))
  }
  const page: PageSetup = {
    orientation: 'landscape',
    paper: plan.system === 'in-ft' ? 'letter' : 'a4',
    titleRow,
    footer: `Estimate, ${plan.date}.${estimate.inventedRates ? ' Invented default rates.' : ''}`
  }
  const description = draft.finish({
    kind: 'estimate',
    name: titles.estimate,
    freezeRows: 0,
    freezeColumns: 0,
    page
  })
  if (titleRow === null || price === null) return description
  const conditionalLooks = estimateLooks(titleRow + 1, estimate.lines.length, names)
  const breaks = breaksForBlock(draft, page, price.from, price.to)
  return { ...description, names, conditionalLooks, charts: [price.chart], page: { ...page, breaks } }
}
