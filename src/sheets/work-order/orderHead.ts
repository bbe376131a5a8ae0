import { ageFormula, type Age } from '../basisStands'
import { totalStands } from '../totalStands'
import { readSerial } from '../../../shared/dates'
import { palette } from '../../../shared/palette'
import { counted } from '../../../shared/words/counts'
import { showDate } from '../../../shared/words/dates'
import { hours as hoursText } from '../../../shared/words/figures'
import { capital } from '../../../shared/words/sentences'
import { firstYearOf, type Plan } from '../../plan/plan'
import { daysTaken } from '../../price/days/fillDays'
import { nameTrees } from '../../season/timingProblems'
import type { JobDetails } from '../../details/detailsBook'
import { addLetterhead } from '../details/letterhead'
import type { ChosenOffer } from '../offered'
import { titles } from '../ownSheets'
import { ruleChangeSentences } from '../planBasis'
import type { PrintedDraft } from '../printedDraft'
import type { Content } from '../sheet'
import { brushOf, brushWeight, kitFor } from './crewKit'
import type { CardUnits } from './cardFacts'
import { orderAt, tickKeys } from './orderColumns'
import type { Round, Stop } from './workOrderDays'

/** What the order is made from. */
export interface Order {
  readonly plan: Plan
  readonly offer: ChosenOffer
  readonly details: JobDetails
  readonly year: number
  readonly hours: number
  readonly round: Round
  readonly units: CardUnits
  /** The Estimate is written with it, and its names can be called. */
  readonly withEstimate: boolean
  readonly age: Age
}

const inOffer: Record<ChosenOffer['kind'], string> = {
  'whole program': '',
  'first visit': ' Ordered is the first visit to each tree.',
  'some trees': ' Ordered is the first visit to the trees that were chosen.',
  'within budget': ' Ordered is what a budget buys.'
}

/** Where sentences start that have a label before them. */
const said = 3

function workSentence({ round: { days, taken }, year, offer }: Order): string {
  const stops = days.flatMap((day) => day.stops)
  const cuts = stops.flatMap(({ visit }) => visit.cuts)
  const musts = cuts.filter(({ must }) => must).length
  const all = days.reduce((sum, day) => sum + day.hours, 0)
  return `The visits of ${String(year)}: ${counted(stops.length, 'tree')} in ${counted(taken, 'crew day')}, ${counted(cuts.length, 'cut')}, of which ${String(musts)} must be made; ${hoursText(all)} crew-hours.${inOffer[offer.kind]}`
}

function crewSentence({ round: { days }, offer }: Order): string {
  const alone = days.flatMap(({ stops }) => stops.filter(({ line }) => line.byPole)).length
  const pole =
    alone === 0 ? '' : `; at ${counted(alone, 'tree')} one person with a pole, the others go on to the next`
  return `${counted(offer.rates.crewPersons, 'person', 'persons')}${pole}.`
}

/** Windows that are closed stop the work; what was not answered is checked by somebody who signs for it. */
function addSeason(draft: PrintedDraft, { plan, details }: Order): void {
  if (details.season !== '') draft.entry('When', `${details.season}, ${String(firstYearOf(plan))}`, said)
  const { timing = [] } = plan
  for (const { state, trees, sentence } of timing) {
    if (state !== 'closed') continue
    const of = trees.length === 0 ? '' : `${nameTrees(trees)}: `
    draft.prose(`Closed: ${of}${sentence}`, { bold: true }, said, 'Season')
  }
  draft.prose('☐ Region’s pruning season and nesting checked by ____________________', {}, said, 'Season')
}

/** Ids of a day in the order of the round, each place before its trees. */
function stopsInOrder(stops: readonly Stop[]): string {
  return stops
    .map(({ tree, place }, at) =>
      place !== '' && place !== stops[at - 1]?.place ? `${place}: ${tree.tree.id}` : tree.tree.id
    )
    .join(', ')
}

/** How the days come about, and how far from the fewest that there could be. */
function daysSentence({ round: { days, taken, least }, hours }: Order): string {
  const places = days.some(({ stops }) => stops.some(({ place }) => place !== ''))
  const way = places
    ? 'One place after the other, that of the most urgent tree first.'
    : 'In the order of the tags.'
  const gap =
    taken <= least
      ? 'Fewer days would not do.'
      : `By the hours alone ${counted(least, 'day')} might do; the trees of a place stay together.`
  return `${way} A day holds ${String(hours)} crew-hours with the way from tree to tree. ${gap}`
}

const dayLook = { bold: true, color: palette.ink, vertical: 'bottom' } as const
const toWriteOn = { underline: palette.ink, bold: false } as const

/** A day with its sums, and room for its date and for whoever says that it is done. */
function addDay(draft: PrintedDraft, text: string): void {
  const cells = Array<Content>(orderAt.tree).fill(null)
  cells[0] = text
  cells[orderAt.keep] = 'Date'
  cells[orderAt.when] = 'Done'
  const row = draft.line(cells, { ...draft.body, ...dayLook })
  draft.height(row, 1, 21)
  draft.format(row, orderAt.keep, 1, 1, toWriteOn)
  draft.format(row, orderAt.when, 1, 1, toWriteOn)
}

function addOrder(draft: PrintedDraft, order: Order): void {
  const { round, hours, units } = order
  draft.air()
  draft.heading('Order of trees', draft.size + 2)
  draft.prose(daysSentence(order))
  round.days.forEach((day, at) => {
    const taken = daysTaken(day.hours, hours)
    const over = taken > 1 ? `: plan ${String(taken)} days` : ''
    draft.keepTogether()
    addDay(
      draft,
      `☐ Day ${String(at + 1)}: ${counted(day.stops.length, 'tree')}, ${hoursText(day.hours)} of ${String(hours)} crew-hours${over}, ${brushWeight(day.stops, units)}`
    )
    draft.prose(stopsInOrder(day.stops), {}, 1)
  })
}

/** Tells as soon as the order is older: than the Estimate that was written with it, the inventory or the Rules sheet. */
function addAge(draft: PrintedDraft, { offer, withEstimate, age }: Order): void {
  const ofRates = 'Hours and brush are those of the Estimate that was written with this order.'
  const ofNumbers = 'The numbers that this order was made from still stand.'
  const older = 'Rates were changed on the Estimate after this order was written: write it again.'
  const all: Age = withEstimate ? [[`IFERROR(${totalStands(offer)},TRUE)`, older], ...age] : age
  if (all.length === 0) return
  const same = withEstimate ? ofRates : ofNumbers
  const label = withEstimate ? 'Rates' : 'State'
  const row = draft.line([label, null, null, { formula: ageFormula(all, same), value: same }], draft.body)
  draft.height(row, 1, 18)
  draft.format(row, 0, 1, 1, { bold: true })
}

/** The first page: where, who, whom to call, with what, and the order of the trees by day. */
export function addHead(draft: PrintedDraft, order: Order): void {
  const { plan, details, round, offer, units } = order
  const stops = round.days.flatMap((day) => day.stops)
  draft.title(titles['work-order'])
  draft.format(0, 0, 1, draft.widths.length, { color: palette.ink })
  draft.rows[0] = [titles['work-order'], ...Array<null>(orderAt.tree - 1).fill(null), ...tickKeys]
  draft.format(0, orderAt.tree, 1, tickKeys.length, { size: 9, color: palette.quiet, bold: false })
  addLetterhead(draft, details, plan.date, 10, draft.measure)
  draft.entry('Made for', showDate(readSerial(plan.date) ?? 0), said)
  draft.entry('Work', workSentence(order), said)
  draft.entry('Address', details.site, said)
  draft.entry('Contact', details.contact, said)
  draft.entry('Phone', details.phone, said)
  draft.entry('Emergency', details.emergency, said, { bold: true })
  draft.entry('Crew', crewSentence(order), said)
  draft.toFill([{ label: 'Names', at: 0, from: said, columns: orderAt.tree - said }])
  if (stops.length > 0) {
    const kit = kitFor(stops, plan.system, offer.rates.poleHeight)
    draft.entry('Equipment', `${capital(kit.join('; '))}.`, said)
    draft.entry('Brush', `${brushOf(stops, units)}.`, said)
  }
  addSeason(draft, order)
  addAge(draft, order)
  for (const text of ruleChangeSentences(plan)) draft.prose(text, {}, said, 'Rules')
  if (round.days.length > 0) addOrder(draft, order)
}
