import type { JobDetails } from '../../details/detailsBook'
import { Money } from '../../../shared/money'
import { showMoney } from '../../../shared/words/money'
import { firstYearOf, type Plan } from '../../plan/plan'
import { taxOn } from '../../price/priceLines'
import { cautions, draftNotice } from '../cautions'
import { looks } from '../looks'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import { printedPoints } from '../printedLines'
import { seasonSentences } from '../seasonWords'
import { priceOf } from './clientReportYears'
import { columns } from './reportGrid'

/** A closed window, for the places where work is ordered. */
export function addClosedWindows(draft: PrintedDraft, plan: Plan): void {
  const look = { ...looks.caution, size: draft.size, bold: true }
  for (const text of seasonSentences(plan, ['closed'])) draft.prose(text, look)
}

/** What may be ordered, each with its price as it is paid: all that is offered, or the first year's part of a program. */
function choices(offer: ChosenOffer, firstYear: string): string[] {
  const { currency, minorDigits } = offer
  const all = `${showMoney(offer.total, minorDigits)} ${currency} with tax`
  if (offer.kind === 'first visit') return [`The first visit to each tree: ${all}.`]
  if (offer.kind !== 'whole program') return [`The visits that are offered: ${all}.`]
  const now = offer.lines.filter(({ year }) => String(year) === firstYear)
  if (now.length === offer.lines.length) return [`All the work, in ${firstYear}: ${all}.`]
  const before = priceOf(now, minorDigits)
  const after = `${showMoney(before.plus(taxOn(before, offer.rates)), minorDigits)} ${currency} with tax`
  const listed = `as listed tree by tree at ${showMoney(before, minorDigits)} ${currency} before tax`
  return [
    ...(now.length === 0 ? [] : [`The work of ${firstYear} only, ${listed}: ${after}.`]),
    `All visits of the program: ${all}; each later visit is confirmed before it is made.`
  ]
}

/** Trees share a trip, so fewer of them are never signed at prices that assume the others. */
function otherChoice({ rates, currency, minorDigits }: ChosenOffer): string {
  const least = new Money(rates.minimumPerTrip)
  const charge = least.greaterThan(0)
    ? ` (${showMoney(least, minorDigits)} ${currency} before tax at least)`
    : ''
  return `Other trees or fewer: they are priced again, as these share one trip${charge}.`
}

function addSignatures(draft: PrintedDraft, preparedBy: string): void {
  const places = (labels: readonly [string, string]) => [
    { label: labels[0], at: columns.tree, from: columns.about, columns: 1 },
    { label: labels[1], at: columns.trunk, from: columns.urgency, columns: 3 }
  ]
  draft.toFill(places(['Client', 'Signature and date']))
  draft.toFill(places(['For us', 'Signature and date']))
  const last = draft.rows[draft.next - 1]
  // A longer name stands in the letterhead alone.
  const room = (draft.widths[columns.about] ?? 0) * 5.25
  if (last !== undefined && printedPoints(preparedBy, draft.size) <= room)
    last[columns.about] = preparedBy || null
}

/** What the client chooses and signs, beside its price, the terms and the cautions. */
export function addDecision(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  { terms, preparedBy }: Pick<JobDetails, 'terms' | 'preparedBy'>
): void {
  if (offer.lines.length > 0) {
    draft.heading('What you decide', draft.size + 2)
    addClosedWindows(draft, plan)
    for (const choice of choices(offer, String(firstYearOf(plan)))) draft.tick(choice)
    draft.prose(otherChoice(offer))
    if (terms === '') draft.prose(`Terms: ${'_'.repeat(60)}`)
    else draft.prose(`Terms: ${terms}`)
    if (offer.inventedRates) draft.prose(draftNotice, { ...looks.caution, size: draft.size, bold: true })
    addSignatures(draft, preparedBy)
    draft.air()
  }
  draft.prose(cautions.join(' '), { ...looks.caution, size: 8.5 })
}
