/** Work at a tree, as far as the days of a crew need it. */
export interface TimedStop {
  /** Crew-hours of its line. */
  readonly hours: number
}

/** What a crew does in a day. */
export interface CrewDay<Stop extends TimedStop> {
  readonly stops: Stop[]
  hours: number
}

/**
 * A round split into crew days in its order: a tree that would run over the productive hours opens the next day. A tree
 * that takes longer than a day stands alone, and its hours say so.
 */
export function crewDays<Stop extends TimedStop>(
  stops: readonly Stop[],
  productiveHours: number
): CrewDay<Stop>[] {
  const days: CrewDay<Stop>[] = []
  for (const stop of stops) {
    const day = days.at(-1)
    const { hours } = stop
    if (day === undefined || day.hours + hours > productiveHours + 1e-9) days.push({ stops: [stop], hours })
    else {
      day.stops.push(stop)
      day.hours += hours
    }
  }
  return days
}
