import { firstYearOf, type Plan } from '../../plan/plan'
import type { EstimateLine } from '../../price/estimate'
import { numberColumns, wordWidths } from './clientReportTrees'
import { priceOf, yearsOf } from './clientReportYears'
import { moneyFormat } from '../moneyFormat'
import { isBudget, nothingOffered, type ChosenOffer } from '../offered'
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
function offeredWords(offer: ChosenOffer): string {
  if (offer.lines.length === 0) return nothingOffered(offer)
  if (offer.kind === 'whole program') return 'Offered is the whole program: every visit that is planned.'
  const visits = counted(offer.lines.length, 'visit')
  if (isBudget(offer)) {
    const within = `${showMoney(offer.budget, offer.minorDigits)} ${offer.currency} with tax`
    const due = counted(offer.lines.length + offer.waiting.length, 'visit')
    return `Offered is what does most for the trees within a budget of ${within}: ${String(offer.lines.length)} of the ${due} that are due now. What waits is named below and is not in this price.`
  }
  return offer.kind === 'first visit'
    ? `Offered is the first visit to each tree: ${visits}. The later visits are a forecast and are not in this price.`
    : `Offered is the first visit to the trees that were chosen: ${visits}, with the trip shared by them alone.`
}

const namesOf = (lines: readonly Pick<EstimateLine, 'tree'>[]): string =>
  firstOf([...new Set(lines.map(({ tree }) => tree))], mostNamed)

/** The first visits that are not offered, without a price: another choice of trees is another offer. */
function addWaiting(draft: PrintedDraft, offer: ChosenOffer): void {
  const { waiting } = offer
  if (waiting.length === 0) return
  draft.keepTogether()
  draft.blank()
  draft.heading('What waits, not in this price')
  draft.bullet(`Due now: ${counted(waiting.length, 'tree')} (${namesOf(waiting)}).`)
  if (isBudget(offer) && waiting.some(({ relief }) => relief === 0))
    draft.bullet('A budget ranks dead wood last: ask for it to be looked at where people pass.')
}

/** What later visits may cost, with tax and apart from what is signed. */
function addForecast(draft: PrintedDraft, { forecast, currency, minorDigits }: ChosenOffer): void {
  if (forecast === null) return
  const from = ({ low, high }: Pick<typeof forecast, 'low' | 'high'>) =>
    `${showMoney(low, minorDigits)} to ${showMoney(high, minorDigits)} ${currency}`
  draft.keepTogether()
  draft.blank()
  draft.heading('Recommended later, not in this price')
  for (const each of forecast.by) {
    const trees = counted(new Set(each.lines.map(({ tree }) => tree)).size, 'tree')
    draft.bullet(`${String(each.year)}: ${trees} (${namesOf(each.lines)}), about ${from(each)} with tax.`)
  }
  const all = forecast.by.length > 1 ? `All of them about ${from(forecast)} with tax. ` : ''
  draft.bullet(
    `${all}A forecast at today’s rates: the trees are measured again and each visit is offered then.`
  )
}

/** Trees without limbs: a figure each, no sum, and nothing to sign. */
function addBudgetFigures(draft: PrintedDraft, { budgetFigures, currency, minorDigits }: ChosenOffer): void {
  if (budgetFigures.length === 0) return
  const figures = budgetFigures.map(({ tree, price }) => `${tree} about ${showMoney(price, minorDigits)}`)
  draft.keepTogether()
  draft.blank()
  draft.heading('Budget figures, not offered and in no sum')
  draft.bullet(
    `Limbs not measured yet, so no work is specified or priced: ${firstOf(figures, mostNamed)} ${currency} before tax, judged by the trunk alone. They are surveyed first and then offered.`
  )
}

/** The price of each year as columns, below the amounts that it shows. */
function priceChart(first: number, years: readonly number[], top: number, offer: ChosenOffer): SheetChart {
  const prices = years.map((year) => {
    const price = priceOf(
      offer.lines.filter((line) => line.year === year),
      offer.minorDigits
    )
    return `${String(year)}: ${showMoney(price, offer.minorDigits)}`
  })
  const area = (column: number) => ({ row: first, column, rows: years.length, columns: 1 })
  const title = `Price of each year, ${offer.currency} before tax`
  return {
    area: { row: top, column: labelColumn, rows: chartRows, columns: numberColumns },
    title,
    alt: `${title}: ${prices.join('; ')}.`,
    labels: area(labelColumn),
    series: [{ name: 'Price', values: area(amountColumn), drawn: 'columns', color: palette.moss }],
    valueTitle: offer.currency,
    valueFormat: '#,##0'
  }
}

/** What is offered and how far its prices hold, in words; what is not offered, by year and without a price. */
export function addCostWords(draft: PrintedDraft, plan: Plan, offer: ChosenOffer): void {
  draft.prose(offeredWords(offer))
  const first = firstYearOf(plan)
  if (offer.lines.some(({ year }) => year > first))
    draft.prose(
      `Years after ${String(first)} are a forecast at today’s rates. The trees are measured again before each visit, and the work may turn out less or more.`
    )
  addWaiting(draft, offer)
  addForecast(draft, offer)
  addBudgetFigures(draft, offer)
}

/**
 * What each year costs, the tax, and all of it, with a chart of the years, in the rows from `top` on beside what stands
 * there already; nothing where nothing is offered.
 */
export function addCosts(draft: PrintedDraft, top: number, offer: ChosenOffer): SheetChart[] {
  if (offer.lines.length === 0) return []
  const money = moneyFormat(offer.minorDigits)
  const years = yearsOf(offer)
  let row = top
  const put = (label: Content[], value: Content, look: Format): void => {
    const gap = Array<null>(numberColumns - 1 - label.length).fill(null)
    beside(draft, row, [...label, ...gap, value], look)
    draft.format(row, labelColumn, 1, 1, { align: 'left' })
    draft.format(row, amountColumn, 1, 1, money)
    row += 1
  }
  put([`What it costs, in ${offer.currency}`], null, { ...looks.section, size: draft.size + 3 })
  for (const year of years) {
    const lines = offer.lines.filter((line) => line.year === year)
    const trees = new Set(lines.map(({ tree }) => tree)).size
    put([year, counted(trees, 'tree')], priceOf(lines, offer.minorDigits).toNumber(), {})
  }
  const these = offer.kind === 'whole program' ? 'All visits' : 'All that is offered'
  put([`${these} before tax`], offer.subtotal.toNumber(), { bold: true })
  put([`Tax, ${ratePercent(offer.taxRate)}`], offer.tax.toNumber(), {})
  put([`${these} with tax`], offer.total.toNumber(), looks.total)
  if (years.length < 2) return []
  const chart = priceChart(top + 1, years, row + 1, offer)
  beside(draft, row + chartRows, [], {})
  return [chart]
}
