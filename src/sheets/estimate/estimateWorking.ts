import { noDetails, type JobDetails } from '../../details/detailsBook'
import type { Offer } from '../../price/offers'
import type { Plan } from '../../plan/plan'
import { Money } from '../../../shared/money'
import { footerOf, paperOf } from '../details/letterhead'
import { SheetDraft } from '../draft'
import { looks } from '../looks'
import { titles } from '../ownSheets'
import type { NamedCells, SheetDescription } from '../sheet'
import { estimateColumn, estimateColumns, estimateWidths, type EstimateColumn } from './estimateColumns'
import { workingRow } from './estimateFormulas'
import { workingLines, workingOf } from './workingLines'
import { addForecastWorking } from './workingForecast'
import { addTrips } from './workingTrips'

/** Lines of text in the headers of the table. */
const headerLines = 4

/** The columns of the lines that the Estimate calls by name and place. */
const called: readonly (readonly [name: string, column: EstimateColumn])[] = [
  ['Line_price', 'price'],
  ['Line_hours', 'hours']
]

/**
 * How the prices of an Estimate come about: a row for each visit and budget figure, and the trips that the visits share.
 * A hidden sheet that is never printed; all formulas are native and older than Excel 2016, and follow the rates that stand on
 * the Estimate.
 */
export function describeEstimateWorking(
  offer: Offer,
  plan: Plan,
  details: JobDetails = noDetails
): SheetDescription {
  const draft = new SheetDraft([...estimateWidths])
  draft.title(titles['estimate-working'])
  draft.dated(plan.date)
  draft.labeled(
    'What it is',
    'How the prices of the Estimate come about. It follows the rates on the Estimate; change those there.'
  )
  draft.section('Work by tree and visit')
  const working = workingLines(offer)
  const first = draft.next + 1
  const { ofLines, ofTrips } = workingOf(working, offer.minorDigits, first)
  const { crewPersons } = offer.rates
  const body = working.lines.map((line, at) => {
    const own = ofLines[at]
    return own === undefined ? [] : workingRow(line, first + at, own, crewPersons)
  })
  const top = draft.table(estimateColumns(offer), body, headerLines)
  draft.tables.push({
    name: 'EstimateLines',
    area: { row: top, column: 0, rows: body.length + 1, columns: draft.widths.length }
  })
  draft.format(top, 0, 1, draft.widths.length, looks.header)
  const ofLine = called.map(([name, column]): NamedCells => ({
    name,
    area: { row: first, column: estimateColumn[column], rows: body.length, columns: 1 }
  }))
  const { minorDigits, rates } = offer
  const spread = new Money(rates.forecastSpread)
  const names = [
    ...ofLine,
    ...addTrips(draft, working, ofTrips, first, minorDigits),
    ...addForecastWorking(draft, offer.forecast, working, { spread, minorDigits })
  ]
  return {
    ...draft.finish({
      kind: 'estimate-working',
      name: titles['estimate-working'],
      freezeRows: 0,
      freezeColumns: 1,
      page: {
        orientation: 'landscape',
        paper: paperOf(details, plan),
        titleRow: null,
        footer: footerOf(details, `Workings of the estimate, ${plan.date}`)
      }
    }),
    names,
    hidden: true,
    continues: true
  }
}
