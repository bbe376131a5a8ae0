import { byUrgency, type Plan, type TreePlan, type Visit } from '../../plan/plan'
import { daysTaken, leastDays } from '../../price/days/fillDays'
import type { EstimateLine } from '../../price/estimate'
import type { ChosenOffer } from '../../price/offers'
import { crewDaysOf, type CrewDay, type TimedStop } from '../crewDays'
import { byTag, placeKey, placeTeller } from '../places'

/** A tree on the crew's round. */
export interface Stop extends TimedStop {
  readonly tree: TreePlan
  readonly visit: Visit
  readonly line: EstimateLine
  /** The zone, the street or wherever it stands with others; empty where nothing tells. */
  readonly place: string
}

/** Stops at one place, the worst tree first. */
interface Place {
  readonly stops: Stop[]
  readonly isZone: boolean
}

/** The trees whose visits of a year are ordered, by place; the place of the worst tree first. */
function placesOf(plan: Plan, offer: Pick<ChosenOffer, 'lines'>, year: number): Place[] {
  const lines = new Map<string, EstimateLine>()
  for (const line of offer.lines)
    if (line.year === year) lines.set(`${String(line.visit)} ${line.tree}`, line)
  const teller = placeTeller(plan.trees, plan)
  const places = new Map<string, Place>()
  for (const tree of byUrgency(plan))
    for (const visit of tree.visits) {
      const line = lines.get(`${String(visit.visit)} ${tree.tree.id}`)
      if (line === undefined) continue
      const place = teller?.nameOf(tree).trim() ?? ''
      const stop: Stop = { tree, visit, line, place, hours: line.crewHours }
      const known = places.get(placeKey(place))
      if (known === undefined) places.set(placeKey(place), { stops: [stop], isZone: teller?.isZone ?? false })
      else known.stops.push(stop)
    }
  return [...places.values()]
}

/** The days of a crew, and how few they could be. */
export interface Round {
  readonly days: readonly CrewDay<Stop>[]
  /** Days that are taken; a tree longer than a day takes several. */
  readonly taken: number
  /** Days that no order of the trees could do with fewer of. */
  readonly least: number
}

/**
 * The days of the visits of a year: one place after the other. In a zone a day takes the trees that fill it, and goes to the
 * worst of them first; along a street, and where no place is known, the trees follow their tags.
 */
export function roundOf(
  plan: Plan,
  offer: Pick<ChosenOffer, 'lines'>,
  year: number,
  dayHours: number
): Round {
  const groups = placesOf(plan, offer, year).map(({ stops, isZone }) => ({
    stops: isZone ? stops : [...stops].sort(byTag),
    isFree: isZone
  }))
  const days = crewDaysOf(groups, dayHours)
  return {
    days,
    taken: days.reduce((sum, { hours }) => sum + daysTaken(hours, dayHours), 0),
    least: leastDays(
      days.flatMap(({ stops }) => stops),
      dayHours
    )
  }
}
