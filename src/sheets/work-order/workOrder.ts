import { crewDays, type CrewDay } from '../crewDays'
import { noDetails, type JobDetails } from '../../details/detailsBook'
import { addLetterhead, footerOf, paperOf } from '../details/letterhead'
import { ruleChangeSentences } from '../planBasis'
import { judgedOf, judgedWords } from '../../plan/judged'
import { byUrgency, firstYearOf, type Plan, type TreePlan } from '../../plan/plan'
import type { ChosenOffer } from '../offered'
import { readSerial } from '../../../shared/dates'
import { titles } from '../ownSheets'
import { palette } from '../../../shared/palette'
import { PrintedDraft } from '../printedDraft'
import { counted, plural } from '../../../shared/words/counts'
import { dateFormat } from '../../../shared/words/dates'
import { hours as hoursText } from '../../../shared/words/figures'
import { listed } from '../../../shared/words/lists'
import { rowsNamed } from '../../../shared/words/some'
import { seasonSentences } from '../seasonWords'
import type { SheetDescription } from '../sheet'
import { addChecks, addRules, addSignOff } from './workOrderChecks'
import { roundOf, type Stop } from './workOrderDays'
import { addStop, orderWidths } from './workOrderTree'

export interface WorkOrderOptions {
  /** Whose visits are ordered; the year of the plan unless given. */
  year?: number
  /** Hours of a crew day that go into the trees, above 0; those of the rates unless given. */
  productiveHours?: number
  /** Whose job it is, and where; lines to fill by hand unless given. */
  details?: JobDetails
}

const inOffer: Record<ChosenOffer['kind'], string> = {
  'whole program': '',
  'first visit': ' Ordered is the first visit to each tree.',
  'some trees':
    ' Ordered is the first visit to the trees that were chosen; trees that wait are named at the end.',
  'within budget': ' Ordered is what a budget buys; trees that wait are named at the end.'
}

/** Points of the body text: large enough to be read outdoors at arm's length. */
const outdoors = 12

/** Crew days that a day of the round takes: more than one where a single tree is longer than a day. */
const daysFor = (day: CrewDay<Stop>, hours: number): number =>
  Math.max(1, Math.ceil(day.hours / hours - 1e-9))

function addHead(
  draft: PrintedDraft,
  plan: Plan,
  year: number,
  hours: number,
  days: CrewDay<Stop>[],
  offer: ChosenOffer,
  { details = noDetails }: WorkOrderOptions
): void {
  const trees = days.reduce((sum, { stops }) => sum + stops.length, 0)
  const taken = days.reduce((sum, day) => sum + daysFor(day, hours), 0)
  draft.title(titles['work-order'])
  draft.format(0, 0, 1, draft.widths.length, { color: palette.ink })
  addLetterhead(draft, details, plan.date, outdoors)
  draft.entry('Made for', { date: readSerial(plan.date) ?? 0 }, 3)
  draft.format(draft.next - 1, 3, 1, 1, { numberFormat: dateFormat })
  draft.entry(
    'Work',
    `The visits of ${String(year)}: ${counted(trees, 'tree')} in ${counted(taken, 'crew day')}.${inOffer[offer.kind]}`,
    3
  )
  draft.entry(
    'Days',
    `Filled up to ${String(hours)} productive crew-hours by the hours of the estimate. Trees at one place follow each other; places by their most urgent tree.`,
    3
  )
  if (details.season !== '') draft.entry('When', `${details.season}, ${String(firstYearOf(plan))}`, 3)
  for (const text of seasonSentences(plan, ['closed', 'always', 'ask']))
    draft.prose(text, { bold: true }, 3, 'Season')
  for (const text of ruleChangeSentences(plan)) draft.prose(text, {}, 3, 'Rules')
  draft.blank()
}

function addDay(draft: PrintedDraft, day: CrewDay<Stop>, number: number, hours: number, plan: Plan): void {
  const taken = daysFor(day, hours)
  const over = taken > 1 ? `, longer than a day: plan ${String(taken)} days` : ''
  if (number > 1) draft.newPage()
  else {
    draft.keepTogether()
    draft.blank()
  }
  draft.prose(
    `Day ${String(number)}: ${counted(day.stops.length, 'tree')}, ${hoursText(day.hours)} of ${String(hours)} crew-hours${over}`,
    { bold: true, size: draft.size + 5 }
  )
  draft.toFill([
    { label: 'Date', at: 0, from: 3, columns: 1 },
    { label: 'Crew', at: 4, from: 5, columns: 5 }
  ])
  addChecks(draft)
  for (const stop of day.stops) addStop(draft, stop, plan.system)
  addSignOff(draft, number)
}

/** Trees whose rows are named one by one; of more, the cut plan tells them. */
const mostRowsNamed = 12

/**
 * Rows that could not be planned, one sentence per tree: the limbs are there, though nothing is ordered for them. Trees of which
 * no limb was judged are named as such.
 */
function unreadWords({ unplanned, trees }: Plan): string[] {
  const named = new Set(trees.filter((tree) => judgedOf(tree) === 'none').map(({ tree }) => tree.id))
  const rows = new Map<string, number[]>()
  for (const { tree, row, wholeTree } of unplanned) {
    if (named.has(tree) || wholeTree === true) continue
    const list = rows.get(tree)
    if (list === undefined) rows.set(tree, [row])
    else list.push(row)
  }
  const words = [...rows].slice(0, mostRowsNamed).map(([tree, list]) => {
    const name = tree === '' ? 'No tree named' : `Tree ${tree}`
    const which = `${rowsNamed(list)} of the inventory`
    return `${name}, ${which}: could not be planned as written, the cut plan says why. Leave ${plural(list.length, 'that limb', 'those limbs')} and survey again.`
  })
  const more = rows.size - words.length
  return more <= 0
    ? words
    : [
        ...words,
        `Rows of ${counted(more, 'more tree')} could not be planned as written: the cut plan tells them. Leave those limbs.`
      ]
}

function whyNotOrdered(plan: TreePlan, year: number): string {
  const judged = judgedOf(plan)
  if (judged === 'no limbs') return 'no limbs listed; survey them, then plan again.'
  if (judged === 'none') return 'limbs not judged; survey them again, then plan again.'
  if (plan.visits.some((visit) => visit.year === year && visit.cuts.length > 0))
    return 'work not in what was ordered.'
  const left = judged === 'some' ? `; ${judgedWords(plan)}` : ''
  return `no cut is planned in ${String(year)}${left}.`
}

/** Why nobody is sent anywhere. */
function nothingOrdered({ trees }: Plan, year: number): string {
  const judged = trees.map(judgedOf)
  return judged.length > 0 && judged.every((each) => each === 'none')
    ? 'Limbs not judged, so nothing is ordered.'
    : `No cut is planned in ${String(year)}, so nothing is ordered.`
}

/** Trees that this order does not send anybody to, and why. */
function addOthers(draft: PrintedDraft, plan: Plan, year: number, days: CrewDay<Stop>[]): void {
  const ordered = new Set(days.flatMap(({ stops }) => stops.map(({ tree }) => tree)))
  const others = byUrgency(plan).filter((tree) => !ordered.has(tree))
  if (others.length === 0 && plan.unplanned.length === 0) return
  draft.blank()
  draft.heading('Not in this order')
  const whys = new Map<string, string[]>()
  for (const tree of others) {
    const why = whyNotOrdered(tree, year)
    whys.set(why, [...(whys.get(why) ?? []), tree.tree.id])
  }
  for (const [why, ids] of whys) draft.bullet(`${plural(ids.length, 'Tree')} ${listed(ids)}: ${why}`)
  for (const text of unreadWords(plan)) draft.bullet(text)
}

/**
 * The work order of a year by crew day, in large type for outdoors: cautions, how to cut, then for each day its checks,
 * its trees with the cuts in order, and the sign-off. Lengths in the units of the plan's system.
 */
export function describeWorkOrder(
  plan: Plan,
  offer: ChosenOffer,
  options: WorkOrderOptions = {}
): SheetDescription {
  const year = options.year ?? firstYearOf(plan)
  const hours = options.productiveHours ?? offer.rates.dayHours
  if (!(hours > 0)) throw new Error(`A crew day needs productive hours above 0, not ${String(hours)}.`)
  const { details = noDetails } = options
  const draft = new PrintedDraft(orderWidths, outdoors, palette.ink)
  const days = crewDays(roundOf(plan, offer, year), hours)
  addHead(draft, plan, year, hours, days, offer, options)
  addRules(draft)
  if (days.length === 0) {
    draft.blank()
    draft.prose(nothingOrdered(plan, year), { bold: true })
  }
  days.forEach((day, index) => {
    addDay(draft, day, index + 1, hours, plan)
  })
  addOthers(draft, plan, year, days)
  return draft.finish({
    kind: 'work-order',
    name: titles['work-order'],
    freezeRows: 0,
    freezeColumns: 0,
    page: draft.page({
      orientation: 'portrait',
      paper: paperOf(details, plan),
      titleRow: null,
      footer: footerOf(details, `Work order, ${plan.date}. Not a tree risk assessment. Wires: stop and call.`)
    })
  })
}
