import { totalStands } from '../totalStands'
import { noDetails, type JobDetails } from '../../details/detailsBook'
import type { Plan } from '../../plan/plan'
import type { ChosenOffer } from '../../price/offers'
import { asNumber } from '../../../shared/money'
import { readSerial } from '../../../shared/dates'
import { showDate } from '../../../shared/words/dates'
import { fixedTenth } from '../../../shared/words/figures'
import { firstOf } from '../../../shared/words/some'
import { showMoney } from '../../../shared/words/money'
import { cautions, inventedRatesNotice } from '../cautions'
import { isBudget, nothingOffered, offerName, offerSize } from '../offered'
import { addLetterhead, footerOf, paperOf } from '../details/letterhead'
import { titles } from '../ownSheets'
import { palette } from '../../../shared/palette'
import { looks } from '../looks'
import { moneyFormat } from '../moneyFormat'
import { PrintedDraft } from '../printedDraft'
import type { NamedCells, PageSetup, SheetChart, SheetDescription } from '../sheet'
import { comparisonBlock } from './comparisonBlock'
import { addPriceChart } from './estimateChart'
import { rateWidths, ratesBlock } from './estimateRates'
import { describeEstimateWorking } from './estimateWorking'
import { addBudgetFigures, addForecast, addTotals } from './priceRows'
import { addPriceLines, priceColumns, priceWidths } from './priceTable'
import { withSideBlocks } from './sideBlock'

/** Points of the body text. */
const textSize = 10

/** Between the prices and the rates, so that neither runs into the other. */
const gap = 3

/** Trees named in one sentence; of more, how many there are. */
const mostNamed = 12

/** Price first, then what it buys, from whom and for whom, for when, and by which rates. */
function addHead(draft: PrintedDraft, offer: ChosenOffer, plan: Plan, details: JobDetails): void {
  const { currency, minorDigits, total } = offer
  const validUntil = details.validUntil === '' ? offer.validUntil : details.validUntil
  draft.title(titles.estimate)
  if (offer.lines.length > 0) {
    draft.prose(`Price in ${currency}, with tax`, { bold: true, size: 11 })
    const price = { formula: '=Offer_total', value: asNumber(total) }
    const row = draft.line([price], { ...draft.body, bold: true, size: 18 })
    draft.format(row, 0, 1, 1, { ...moneyFormat(minorDigits), align: 'left' })
    draft.height(row, 1, 26)
    draft.prose(`${offerName(offer)}: ${offerSize(offer)}.`, { bold: true })
    addAge(draft, offer)
  } else draft.prose(nothingOffered(offer), { bold: true })
  addLetterhead(draft, details, plan.date)
  for (const [label, day] of [
    ['Made for', plan.date],
    ['Holds until', validUntil]
  ] as const) {
    // As a text, since a date does not run over into the next of these narrow columns.
    draft.entry(label, showDate(readSerial(day) ?? 0), 1)
  }
  addRateNotes(draft, offer)
}

/** Tells as soon as a rate is changed here that the documents written with this sheet are older. */
function addAge(draft: PrintedDraft, offer: ChosenOffer): void {
  const { total, minorDigits, currency } = offer
  const said = `${showMoney(total, minorDigits)} ${currency}`
  const older = `Rates were changed here after writing. The other documents are older: they still say ${said}. Write them again.`
  const same = 'No price was changed here since it was written.'
  const formula = `=IF(${totalStands(offer)},"${same}","${older}")`
  draft.line([{ formula, value: same }], { ...draft.body, color: palette.umber })
}

function addRateNotes(draft: PrintedDraft, offer: ChosenOffer): void {
  const caution = { ...looks.caution, size: textSize, bold: true }
  if (offer.inventedRates) {
    draft.prose(inventedRatesNotice, caution)
    const left = `${String(offer.inventedCount)} of ${String(offer.rateCount)} rates are still invented.`
    draft.prose(left, caution)
  }
  for (const { cell, message, remedy } of offer.rateProblems ?? [])
    draft.prose(`${cell === '' ? '' : `${cell}: `}${message} ${remedy}`, { ...caution, bold: false })
}

/** First visits that are planned and not in the price. */
function addWaiting(draft: PrintedDraft, offer: ChosenOffer): void {
  if (offer.waiting.length === 0) return
  draft.air()
  draft.heading('Not in this price')
  const trees = firstOf(
    offer.waiting.map(({ tree }) => tree),
    mostNamed
  )
  draft.prose(
    `Planned now and not offered: ${trees}. Another choice of trees is another offer, as they share the trip.`
  )
  if (!isBudget(offer)) return
  const { relief, mostRelief, reliefOfAll } = offer
  draft.prose(
    `What is offered relieves ${fixedTenth(relief)} of ${fixedTenth(reliefOfAll)} points of priority; no choice within the budget relieves more than ${fixedTenth(mostRelief)}.`
  )
}

/**
 * The estimate as a sheet: its price, one row per tree and visit, totals, what is forecast, budget figures apart; beside
 * them, where they are not printed, the rates, and how the averages compare with what is published. How each price comes about
 * stands on a hidden sheet that is written with it. All formulas are native and older than Excel 2016, so that both calculate
 * without the add-in.
 */
export function describeEstimate(
  offer: ChosenOffer,
  plan: Plan,
  details: JobDetails = noDetails
): SheetDescription {
  const widths = priceWidths(offer)
  const draft = new PrintedDraft(widths, textSize)
  const page: PageSetup = {
    orientation: 'portrait',
    paper: paperOf(details, plan),
    titleRow: null,
    fitsWidth: true,
    columns: widths.length,
    footer: footerOf(
      details,
      `Estimate, ${plan.date}.${offer.inventedRates ? ' Invented default rates.' : ''}`
    )
  }
  addHead(draft, offer, plan, details)
  const names: NamedCells[] = []
  const charts: SheetChart[] = []
  draft.air()
  let overPages = false
  if (offer.lines.length > 0) {
    const lines = addPriceLines(draft, offer, page)
    overPages = lines.to - lines.from + 1 > offer.lines.length
    names.push(...addTotals(draft, offer, lines))
    charts.push(...addPriceChart(draft, offer, lines))
  }
  addWaiting(draft, offer)
  addForecast(draft, offer)
  addBudgetFigures(draft, offer)
  draft.keepTogether()
  draft.air()
  draft.heading('Cautions')
  for (const sentence of cautions) draft.bullet(sentence, { ...looks.caution, size: textSize })
  const sheet: SheetDescription = {
    ...draft.finish({
      kind: 'estimate',
      name: titles.estimate,
      freezeRows: 0,
      freezeColumns: 0,
      // Without breaks of its own a sheet is fitted to the page's width, whatever the font.
      page: overPages || charts.length > 0 ? draft.page(page) : page
    }),
    names,
    ...(charts.length > 0 ? { charts } : {})
  }
  if (!isWorked(offer)) return sheet
  const blocks = [ratesBlock(offer), ...comparisonBlock(plan, offer)]
  return withSideBlocks(sheet, blocks, {
    row: 1,
    column: Object.keys(priceColumns).length + 1,
    widths: [gap, ...rateWidths]
  })
}

/** There is something whose price follows from rates. */
function isWorked({ lines, forecast, budgetFigures }: ChosenOffer): boolean {
  return lines.length > 0 || forecast !== null || budgetFigures.length > 0
}

/** The Estimate with its hidden sheet of workings. */
export function describeEstimateSheets(
  offer: ChosenOffer,
  plan: Plan,
  details: JobDetails = noDetails
): SheetDescription[] {
  const sheet = describeEstimate(offer, plan, details)
  return isWorked(offer) ? [sheet, describeEstimateWorking(offer, plan, details)] : [sheet]
}
