import { byUrgency, type Plan, type TreePlan, type Visit } from '../../plan/plan'
import type { EstimateLine } from '../../price/estimate'
import type { ChosenOffer } from '../../price/offers'
import type { TimedStop } from '../crewDays'

/** A tree on the crew's round. */
export interface Stop extends TimedStop {
  tree: TreePlan
  visit: Visit
  line: EstimateLine
}

/** Stops at one place follow each other; places come in the order of their most urgent tree. */
function byPlace(stops: readonly Stop[]): Stop[] {
  const places = new Map<string, Stop[]>()
  for (const stop of stops) {
    const { zone, site, id } = stop.tree.tree
    const named = `${zone.trim()} ${site.trim()}`.toLowerCase()
    const place = named === ' ' ? ` ${id}` : named
    places.set(place, [...(places.get(place) ?? []), stop])
  }
  return [...places.values()].flat()
}

/** The trees whose visits of a year are ordered, in the order of the round. */
export function roundOf(plan: Plan, offer: Pick<ChosenOffer, 'lines'>, year: number): Stop[] {
  const lines = new Map<string, EstimateLine>()
  for (const line of offer.lines)
    if (line.year === year) lines.set(`${String(line.visit)} ${line.tree}`, line)
  const stops = byUrgency(plan).flatMap((tree) =>
    tree.visits.flatMap((visit) => {
      const line = lines.get(`${String(visit.visit)} ${tree.tree.id}`)
      return line === undefined ? [] : [{ tree, visit, line, hours: line.crewHours }]
    })
  )
  return byPlace(stops)
}
