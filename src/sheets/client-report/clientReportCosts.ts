import type { Plan } from '../../plan/plan'
import type { Estimate, EstimateLine } from '../../price/estimate'
import { numberColumns, wordWidths } from './clientReportTrees'
import { priceOf, yearsOf } from './clientReportYears'
import { moneyFormat } from '../moneyFormat'
import { isBudget, type ChosenOffer } from '../offered'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import type { PrintedDraft } from '../printedDraft'
import { counted } from '../../../shared/words/counts'
import { firstOf } from '../../../shared/words/some'
import { showMoney } from '../../../shared/words/money'
import { ratePercent } from '../../../shared/words/percent'
import type { Content, Format, SheetChart } from '../sheet'

/** Beside the cover and the summary: years and labels from here on, the amounts in the last column. */
const labelColumn = wordWidths.length
const amountColumn = labelColumn + numberColumns - 1

/** Rows of the chart below the amounts. */
const chartRows = 11

/** Trees named in a sentence at most. */
const mostNamed = 12

/** Cells beside what a row already says; a row is added where the page has none. */
function beside(draft: PrintedDraft, row: number, cells: readonly Content[], look: Format): void {
  while (draft.next <= row) draft.height(draft.line([], draft.body), 1, 16)
  const line = draft.rows[row] ?? []
  while (line.length < labelColumn) line.push(null)
  draft.rows[row] = [...line.slice(0, labelColumn), ...cells]
  draft.format(row, labelColumn, 1, numberColumns, { ...draft.body, bold: false, ...look })
}

/** What is offered, in a sentence. */
function offeredWords(offer: ChosenOffer, all: Estimate): string {
  if (all.lines.length === 0) return 'No work is planned, so nothing is priced or offered.'
  if (isBudget(offer)) {
    const within = `${showMoney(offer.budget, all.minorDigits)} ${all.currency} with tax`
    const some = `${String(offer.lines.length)} of the ${counted(all.lines.length, 'visit')} that the trees need`
    return `Offered is what does most for the trees within a budget of ${within}: ${some}. What waits is named below and is not in this price.`
  }
  return offer.kind === 'this visit'
    ? 'Offered is the first visit to each tree. The later visits are recommended below and are not in this price.'
    : 'Offered is the whole program: every visit that is planned.'
}

const namesOf = (lines: readonly EstimateLine[]): string =>
  firstOf([...new Set(lines.map(({ tree }) => tree))], mostNamed)

/** The visits that are not offered, by year and without a price. */
function addLater(draft: PrintedDraft, offer: ChosenOffer, all: Estimate): void {
  const offered = new Set(offer.lines)
  const left = all.lines.filter((line) => !offered.has(line))
  if (left.length === 0) return
  draft.keepTogether()
  draft.blank()
  draft.heading(isBudget(offer) ? 'What waits, not in this price' : 'Recommended later, not in this price')
  for (const year of [...new Set(left.map((line) => line.year))].sort((a, b) => a - b)) {
    const lines = left.filter((line) => line.year === year)
    const trees = new Set(lines.map(({ tree }) => tree)).size
    draft.bullet(`${String(year)}: ${counted(trees, 'tree')} (${namesOf(lines)}).`)
  }
  if (!isBudget(offer)) return
  if (left.some(({ relief }) => relief === 0))
    draft.bullet('A budget does not rank dead wood: ask for it to be looked at where people pass.')
  if (offer.unranked.length > 0)
    draft.bullet('Trees whose limbs have not been measured cannot be ranked; they wait until they are.')
}

/** The price of each year as columns, below the amounts that it shows. */
function priceChart(first: number, years: readonly number[], top: number, estimate: Estimate): SheetChart {
  const prices = years.map((year) => {
    const price = priceOf(
      estimate.lines.filter((line) => line.year === year),
      estimate.minorDigits
    )
    return `${String(year)}: ${showMoney(price, estimate.minorDigits)}`
  })
  const area = (column: number) => ({ row: first, column, rows: years.length, columns: 1 })
  const title = `Price of each year, ${estimate.currency} before tax`
  return {
    area: { row: top, column: labelColumn, rows: chartRows, columns: numberColumns },
    title,
    alt: `${title}: ${prices.join('; ')}.`,
    labels: area(labelColumn),
    series: [{ name: 'Price', values: area(amountColumn), drawn: 'columns', color: palette.moss }],
    valueTitle: estimate.currency,
    valueFormat: '#,##0'
  }
}

/** What is offered and how far its prices hold, in words; what is not offered, by year and without a price. */
export function addCostWords(draft: PrintedDraft, plan: Plan, all: Estimate, offer: ChosenOffer): void {
  draft.prose(offeredWords(offer, all))
  const first = Number(plan.date.slice(0, 4))
  if (offer.lines.some(({ year }) => year > first))
    draft.prose(
      `Years after ${String(first)} are a forecast at today’s rates. The trees are measured again before each visit, and the work may turn out less or more.`
    )
  addLater(draft, offer, all)
}

/**
 * What each year costs, the tax, and all of it, with a chart of the years, in the rows from `top` on beside what stands
 * there already; nothing where nothing is offered. `estimate` holds what is.
 */
export function addCosts(
  draft: PrintedDraft,
  top: number,
  estimate: Estimate,
  { kind }: ChosenOffer
): SheetChart[] {
  if (estimate.lines.length === 0) return []
  const money = moneyFormat(estimate.minorDigits)
  const years = yearsOf(estimate)
  let row = top
  const put = (label: Content[], value: Content, look: Format): void => {
    const gap = Array<null>(numberColumns - 1 - label.length).fill(null)
    beside(draft, row, [...label, ...gap, value], look)
    draft.format(row, labelColumn, 1, 1, { align: 'left' })
    draft.format(row, amountColumn, 1, 1, money)
    row += 1
  }
  put([`What it costs, in ${estimate.currency}`], null, { ...looks.section, size: draft.size + 3 })
  for (const year of years) {
    const lines = estimate.lines.filter((line) => line.year === year)
    const trees = new Set(lines.map(({ tree }) => tree)).size
    put([year, counted(trees, 'tree')], priceOf(lines, estimate.minorDigits).toNumber(), {})
  }
  const these = kind === 'whole program' ? 'All visits' : 'All that is offered'
  put([`${these} before tax`], estimate.subtotal.toNumber(), { bold: true })
  put([`Tax, ${ratePercent(estimate.taxRate)}`], estimate.tax.toNumber(), {})
  put([`${these} with tax`], estimate.total.toNumber(), looks.total)
  if (years.length < 2) return []
  const chart = priceChart(top + 1, years, row + 1, estimate)
  beside(draft, row + chartRows, [], {})
  return [chart]
}
