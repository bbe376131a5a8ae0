import type { JobDetails } from '../../details/detailsBook'
import { firstYearOf, type Plan } from '../../plan/plan'
import { taxOn } from '../../price/priceLines'
import { cautions, draftNotice } from '../cautions'
import { priceOf } from './clientReportYears'
import type { ChosenOffer } from '../offered'
import { looks } from '../looks'
import { ruleChangeSentences } from '../planBasis'
import type { PrintedDraft } from '../printedDraft'
import { seasonSentences } from '../seasonWords'
import { counted } from '../../../shared/words/counts'
import { firstOf } from '../../../shared/words/some'
import { Money } from '../../../shared/money'
import { showMoney } from '../../../shared/words/money'

const assumptions: readonly string[] = [
  'The measurements in the inventory are taken as they stand; where one was missing or doubtful, what was assumed is listed with the cut plan.',
  'The crew can reach each tree as the inventory says, and the owner of the ground agrees to the work.',
  'Brush is chipped and taken away unless agreed otherwise. Stumps, roots and planting are not part of the work.',
  'Permits, and the consent of neighbors where limbs cross a boundary, are in hand before work begins.',
  'The share of leaves that may come off is a ceiling for the season, not a target. What a single limb carries is known to ±30 % only, and limbs left out of the survey make the others’ shares look larger.'
]

const notInspected =
  'Not inspected: roots and soil, wood inside the trunk and limbs, pests and diseases, cables and pipes, nests, boundaries, and any tree that is not in the inventory.'

/** Trees named in one sentence; more are counted. */
const mostNamed = 12

/** Rows left out, by tree: "T13 (2 rows)". */
function leftOut({ unplanned }: Plan): string {
  const counts = new Map<string, number>()
  for (const { tree } of unplanned) counts.set(tree, (counts.get(tree) ?? 0) + 1)
  const named = [...counts].map(
    ([tree, rows]) => `${tree === '' ? 'no tree named' : tree} (${counted(rows, 'row')})`
  )
  return `Left out until they are measured again: ${firstOf(named, mostNamed)}.`
}

function limits(plan: Plan): string[] {
  const { trees, date, unplanned } = plan
  return [
    `The task: to plan structural pruning for the ${counted(trees.length, 'tree')} of the inventory, as of ${date}. Nothing else was asked or judged.`,
    'The method: each limb is compared with the stem that bears it and with the place it takes in the crown; the cuts that improve the structure most are chosen within the share of leaves that may come off.',
    notInspected,
    ...(unplanned.length === 0 ? [] : [leftOut(plan)])
  ]
}

const notLookedUp =
  'The pruning windows of the region (diseases, nesting) have not been looked up yet; they are asked for before a date is set.'

/** What a client has to know of the season; what the preparer is asked stands on the other documents. */
function season(plan: Plan): string[] {
  const known = seasonSentences(plan, ['closed', 'always', 'open'])
  return known.length > 0 ? known : [notLookedUp]
}

/** A closed window, for the places where work is ordered. */
export function addClosedWindows(draft: PrintedDraft, plan: Plan): void {
  const look = { ...looks.caution, size: draft.size, bold: true }
  for (const text of seasonSentences(plan, ['closed'])) draft.prose(text, look)
}

function list(draft: PrintedDraft, title: string, sentences: readonly string[]): void {
  draft.heading(title)
  for (const text of sentences) draft.bullet(text)
}

/** What the report takes for granted and what its pages of trees are, where its knowledge ends, and the cautions. */
export function addTerms(draft: PrintedDraft, plan: Plan, pages: readonly string[]): void {
  draft.keepTogether()
  draft.air()
  list(draft, 'What this report assumes', [...assumptions, ...pages, ...ruleChangeSentences(plan)])
  draft.keepTogether()
  draft.air()
  list(draft, 'Where its limits are', limits(plan))
  draft.keepTogether()
  draft.air()
  list(draft, 'The season of the work', season(plan))
  draft.keepTogether()
  draft.air()
  draft.heading('Cautions')
  for (const text of cautions) draft.bullet(text, { ...looks.caution, size: draft.size })
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
    ? ` A trip is charged at ${showMoney(least, minorDigits)} ${currency} before tax at least.`
    : ''
  return `Other trees or fewer: they are priced again, as these prices share one trip.${charge}`
}

/** What the client chooses and signs; nothing where nothing is offered. */
export function addApproval(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  { terms, preparedBy }: Pick<JobDetails, 'terms' | 'preparedBy'>
): void {
  if (offer.lines.length === 0) return
  draft.keepTogether()
  draft.air()
  draft.heading('Approval')
  if (offer.inventedRates) draft.prose(draftNotice, { ...looks.caution, size: draft.size, bold: true })
  addClosedWindows(draft, plan)
  for (const choice of choices(offer, String(firstYearOf(plan)))) draft.tick(choice)
  draft.prose(otherChoice(offer))
  draft.entry('Terms', terms, 3)
  const places = (labels: readonly [string, string]) => [
    { label: labels[0], at: 0, from: 3, columns: 1 },
    { label: labels[1], at: 5, from: 6, columns: Math.max(1, draft.widths.length - 6) }
  ]
  draft.toFill(places(['For the client, name', 'Signature and date']))
  draft.toFill(
    places([preparedBy === '' ? 'Prepared by' : `Prepared by ${preparedBy}`, 'Signature and date'])
  )
}
