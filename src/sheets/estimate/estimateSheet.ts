import type { Plan } from '../../plan/plan'
import type { Estimate } from '../../price/estimate'
import { wholeProgram } from '../../price/offers'
import { readSerial } from '../../../shared/dates'
import { cautions, inventedRatesNotice } from '../cautions'
import { breaksForBlock, breaksForParts } from '../chartRoom'
import { SheetDraft } from '../draft'
import { addPriceChart, type ChartBlock } from './estimateChart'
import { addChoices, chosenMark } from './estimateChoices'
import { estimateColumn, estimateColumns, estimateWidths } from './estimateColumns'
import { estimateRow } from './estimateFormulas'
import { estimateLooks, leastChargeSentence } from './estimateLooks'
import { addRates } from './estimateRates'
import { addTotals } from './estimateTotals'
import { addYears, workingOf } from './estimateYears'
import { cellFormats } from '../cellFormats'
import { moneyFormat } from '../moneyFormat'
import { offerName, type ChosenOffer } from '../offered'
import { titles } from '../ownSheets'
import { looks } from '../looks'
import { counted } from '../../../shared/words/counts'
import type { CellRule, Content, NamedCells, PageSetup, SheetDescription } from '../sheet'

/** Where the amount offered stands in the head: a column wide enough for any. */
const amountColumn = estimateColumn.basis

/** Which of the choices is offered and what it comes to, before anything else. */
function addOffered(draft: SheetDraft, estimate: Estimate, offer: ChosenOffer): void {
  const visits = `${String(offer.lines.length)} of ${counted(estimate.lines.length, 'visit')}`
  draft.labeled('Offered', `${offerName(offer, estimate)}: ${visits}`, {
    ...looks.body,
    size: 12,
    bold: true
  })
  const total: Content = { formula: '=Offer_total', value: offer.total.toNumber() }
  const label = `${estimate.currency}, with tax`
  const row = draft.line(['Its price', label, null, total], { ...looks.total, size: 14 })
  draft.format(row, 0, 1, amountColumn, { size: 12 })
  draft.format(row, amountColumn, 1, 1, { ...moneyFormat(estimate.minorDigits), align: 'left' })
  draft.height(row, 1, 24)
}

function addHead(draft: SheetDraft, estimate: Estimate, plan: Plan, offer: ChosenOffer): void {
  draft.title(titles.estimate)
  if (estimate.lines.length > 0) addOffered(draft, estimate, offer)
  draft.dated(plan.date)
  const until = draft.labeled('Holds until', { date: readSerial(estimate.validUntil) ?? 0 })
  draft.format(until, 1, 1, 1, cellFormats.date)
  draft.labeled(
    'Prices',
    `In ${estimate.currency}. Visits after the first are a forecast at the same rates.${estimate.lines.length > 0 ? ` ${leastChargeSentence}` : ''}`
  )
  if (estimate.inventedRates) {
    const left = `${String(estimate.inventedCount)} of ${String(estimate.rateCount)} rates are still invented.`
    draft.labeled('Rates', inventedRatesNotice, { ...looks.caution, bold: true })
    draft.labeled('', left, { ...looks.caution, bold: true })
  }
  for (const { cell, message, remedy } of estimate.rateProblems ?? [])
    draft.labeled('Rates', `${cell === '' ? '' : `${cell}: `}${message} ${remedy}`, looks.caution)
  for (const sentence of cautions) draft.labeled('Caution', sentence, looks.caution)
}

/** Lines of text in the headers of the table. */
const headerLines = 3

function addLines(draft: SheetDraft, estimate: Estimate, offer: ChosenOffer): number {
  const { lines } = estimate
  const first = draft.next + 1
  const { ofLines } = workingOf(estimate, first)
  const marked = isMarked(offer)
  const offered = new Set(offer.lines)
  const body = lines.map((line, index): Content[] => {
    const cells = estimateRow(line, first + index, ofLines[index] ?? { units: 0, order: 0 })
    return marked ? [...cells, offered.has(line) ? chosenMark : null] : cells
  })
  const top = draft.table(estimateColumns(estimate, marked), body, headerLines)
  draft.tables.push({
    name: 'EstimateLines',
    area: { row: top, column: 0, rows: lines.length + 1, columns: draft.widths.length }
  })
  return top
}

const workTitle = 'Work by tree and visit'

/** The row that the first line will have: the choices, whose formulas name it, take as many rows wherever it is. */
function firstLine(draft: SheetDraft, estimate: Estimate, offer: ChosenOffer): number {
  const trial = new SheetDraft(draft.widths)
  addChoices(trial, { ...estimate, lines: [] }, offer, 0)
  trial.section(workTitle)
  return draft.next + trial.next + 1
}

/** Where everything is offered, marks would say nothing. */
function isMarked({ kind }: ChosenOffer): boolean {
  return kind !== 'whole program'
}

/**
 * The estimate as a sheet: which choice is offered and its price, what can be chosen, one row per tree and visit,
 * totals, what the years share, and the rates that the formulas call by name. All formulas are native and older than
 * Excel 2016, so that it calculates without the add-in.
 */
export function describeEstimate(
  estimate: Estimate,
  plan: Plan,
  offer: ChosenOffer = wholeProgram(estimate)
): SheetDescription {
  const draft = new SheetDraft(estimateWidths(isMarked(offer)))
  const names: NamedCells[] = []
  const rules: CellRule[] = []
  addHead(draft, estimate, plan, offer)
  let titleRow: number | null = null
  let price: ChartBlock | null = null
  const parts: number[] = []
  if (estimate.lines.length === 0) {
    draft.section(workTitle)
    draft.line(['No work is planned, so there is nothing to price.'], looks.body)
  } else {
    const first = firstLine(draft, estimate, offer)
    names.push(...addChoices(draft, estimate, offer, first))
    draft.section(workTitle)
    titleRow = addLines(draft, estimate, offer)
    draft.blank()
    addTotals(draft, estimate, first, !isMarked(offer))
    price = addPriceChart(draft, estimate, first)
    parts.push(draft.next)
    names.push(...addYears(draft, estimate, first))
    parts.push(draft.next)
    const rates = addRates(draft, estimate)
    names.push(...rates.names)
    rules.push(...rates.rules)
  }
  const page: PageSetup = {
    orientation: 'landscape',
    paper: plan.system === 'in-ft' ? 'letter' : 'a4',
    titleRow,
    // The working columns are for the spreadsheet; the marks of what is offered stand after them.
    ...(isMarked(offer) ? {} : { columns: estimateColumn.price + 1 }),
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
  const breaks = breaksForParts(draft, page, breaksForBlock(draft, page, price.from, price.to), parts)
  return { ...description, names, rules, conditionalLooks, charts: [price.chart], page: { ...page, breaks } }
}
