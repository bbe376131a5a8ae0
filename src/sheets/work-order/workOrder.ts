import { noDetails, type JobDetails } from '../../details/detailsBook'
import { firstYearOf, type Plan } from '../../plan/plan'
import { palette } from '../../../shared/palette'
import { footerOf, paperOf } from '../details/letterhead'
import type { ChosenOffer } from '../offered'
import type { Age } from '../basisStands'
import { titles } from '../ownSheets'
import { pageRoom } from '../pageBreaks'
import { PrintedDraft } from '../printedDraft'
import type { SheetDescription } from '../sheet'
import { boxes, orderAt, orderWidths, printedColumns } from './orderColumns'
import { addHead, type Order } from './orderHead'
import { addOthers, nothingOrdered } from './orderOthers'
import { addCards } from './orderPages'
import { addRules } from './orderRules'
import { roundOf } from './workOrderDays'

export interface WorkOrderOptions {
  /** Whose visits are ordered; the year of the plan unless given. */
  year?: number
  /** Hours of a crew day that go into the trees, above 0; those of the rates unless given. */
  productiveHours?: number
  /** Whose job it is, and where; lines to fill by hand unless given. */
  details?: JobDetails
  /** Whether the Estimate is written with it, so that it can tell when rates were changed there. */
  withEstimate?: boolean
  /** What tells that it is older than what it was made from. */
  age?: Age
}

/** Points of the text on the first page and the last one. */
const textSize = 11

/**
 * The work order of a year: a page with all that a crew needs before it leaves, in the order of its days a card for each
 * tree, as long as its cuts need, and the rules that hold for every tree on the last page. Beside each box to tick stands in
 * columns that are not printed of which tree and limb it is. Lengths in the units of the plan's system.
 */
export function describeWorkOrder(
  plan: Plan,
  offer: ChosenOffer,
  options: WorkOrderOptions = {}
): SheetDescription {
  const { year = firstYearOf(plan), details = noDetails, withEstimate = false, age = [] } = options
  const hours = options.productiveHours ?? offer.rates.dayHours
  if (!(hours > 0)) throw new Error(`A crew day needs productive hours above 0, not ${String(hours)}.`)
  const round = roundOf(plan, offer, year, hours)
  const { days } = round
  const units = { system: plan.system, weight: offer.rates.system === 'in-ft' ? 'lb' : 'kg' } as const
  const order: Order = { plan, offer, details, year, hours, round, units, withEstimate, age }
  const page = {
    orientation: 'portrait',
    paper: paperOf(details, plan),
    margins: 'narrow',
    columns: printedColumns
  } as const

  const draft = new PrintedDraft(orderWidths, textSize, palette.ink)
  draft.measure = printedColumns
  addHead(draft, order)
  if (days.length === 0) {
    draft.air()
    draft.prose(nothingOrdered(plan, year), { bold: true })
  }
  addOthers(draft, plan, year, days)
  const first = draft.next
  draft.pictures.push(...addCards(draft, days, units, pageRoom(page, orderWidths)))
  const cards = { row: first, column: orderAt.tick, rows: draft.next - first, columns: 1 }
  addRules(draft)
  return {
    ...draft.finish({
      kind: 'work-order',
      name: titles['work-order'],
      freezeRows: 0,
      freezeColumns: 0,
      page: draft.page({
        ...page,
        fitsWidth: true,
        titleRow: null,
        footer: footerOf(
          details,
          `Work order, ${plan.date}. Not a tree risk assessment. Wires: stop and call.`
        )
      })
    }),
    ...(cards.rows === 0
      ? {}
      : {
          rules: [
            {
              area: cards,
              takes: { values: [boxes.open, ...boxes.done] },
              sentence: 'A box: ☐ to do, ☑ or x done.'
            }
          ]
        })
  }
}
