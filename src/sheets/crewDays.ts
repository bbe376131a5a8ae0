import { fillDays, type DayGroup } from '../price/days/fillDays'

/** Work at a tree, as far as the days of a crew need it. */
export interface TimedStop {
  /** Crew-hours of its line. */
  readonly hours: number
}

/** What a crew does in a day. */
export interface CrewDay<Stop extends TimedStop> {
  readonly stops: readonly Stop[]
  readonly hours: number
}

/** Groups of stops, one after the other, split into crew days with their hours. */
export function crewDaysOf<Stop extends TimedStop>(
  groups: readonly DayGroup<Stop>[],
  productiveHours: number
): CrewDay<Stop>[] {
  return fillDays(groups, productiveHours).map((stops) => ({
    stops,
    hours: Math.round(stops.reduce((sum, { hours }) => sum + hours, 0) * 100) / 100
  }))
}

/**
 * A round split into crew days in its order: a tree that would run over the productive hours opens the next day. A tree
 * that takes longer than a day stands alone, and its hours say so.
 */
export function crewDays<Stop extends TimedStop>(
  stops: readonly Stop[],
  productiveHours: number
): CrewDay<Stop>[] {
  return crewDaysOf([{ stops, isFree: false }], productiveHours)
}
