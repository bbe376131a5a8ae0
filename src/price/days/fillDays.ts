import { hundredths } from '../hundredths'
import { wholeUp } from '../../formulas/boundary'

/** Of so many of the foremost stops the fullest day is sought exactly. */
const foremost = 80

interface Timed {
  readonly hours: number
}

/** Stops in the order in which they are wanted; where it is free, a day takes whichever of them fill it. */
export interface DayGroup<Stop extends Timed> {
  readonly stops: readonly Stop[]
  readonly isFree: boolean
}

/**
 * Which of these weights, the first ones first, come closest to the room without passing it: the sums that can be reached
 * are built up one weight at a time, each by the first weights that reach it.
 */
export function fullest(weights: readonly number[], room: number): number[] {
  const reachedBy = new Int32Array(room + 1).fill(-1)
  let most = 0
  for (let at = 0; at < weights.length && most < room; at++) {
    const weight = weights[at] ?? 0
    if (weight <= 0) continue
    for (let sum = Math.min(room, most + weight); sum >= weight; sum--) {
      const before = sum - weight
      if (reachedBy[sum] !== -1 || (before > 0 && reachedBy[before] === -1)) continue
      reachedBy[sum] = at
      if (sum > most) most = sum
    }
  }
  const taken = weights.flatMap((weight, at) => (weight <= 0 ? [at] : []))
  for (let sum = most; sum > 0; sum -= weights[reachedBy[sum] ?? 0] ?? sum) taken.push(reachedBy[sum] ?? 0)
  return taken.sort((a, b) => a - b)
}

/** Days being filled, with the room that is left of the last one. */
class OpenDays<Stop extends Timed> {
  readonly days: Stop[][] = []
  private left = 0

  constructor(private readonly room: number) {}

  private put(stop: Stop): void {
    this.days.at(-1)?.push(stop)
    this.left -= hundredths(stop.hours)
  }

  private begin(): void {
    this.days.push([])
    this.left = this.room
  }

  /** One after the other: a stop that would run over opens the next day; one longer than a day stands alone. */
  inOrder(stops: readonly Stop[]): void {
    for (const stop of stops) {
      if (this.days.length === 0 || hundredths(stop.hours) > this.left) this.begin()
      this.put(stop)
    }
  }

  /** Whichever fill the days, those that are wanted first as far as it makes no difference. */
  freely(stops: readonly Stop[]): void {
    this.inOrder(stops.filter(({ hours }) => hundredths(hours) > this.room))
    let waiting = stops.filter(({ hours }) => hundredths(hours) <= this.room)
    while (waiting.length > 0) {
      const weights = waiting.slice(0, foremost).map(({ hours }) => hundredths(hours))
      const taken = new Set(this.left > 0 ? fullest(weights, this.left) : [])
      if (taken.size === 0) this.begin()
      else {
        waiting.forEach((stop, at) => {
          if (taken.has(at)) this.put(stop)
        })
        waiting = waiting.filter((_stop, at) => !taken.has(at))
        if (waiting.length > 0) this.left = 0
      }
    }
  }
}

/** Stops of the groups, one group after the other, in days of so many hours; a stop longer than a day stands alone. */
export function fillDays<Stop extends Timed>(groups: readonly DayGroup<Stop>[], dayHours: number): Stop[][] {
  const open = new OpenDays<Stop>(Math.max(1, Math.floor(dayHours * 100 + 1e-6)))
  for (const { stops, isFree } of groups) {
    if (isFree) open.freely(stops)
    else open.inOrder(stops)
  }
  return open.days
}

/** Days that a day of the plan takes: more than one where a single stop is longer than a day. */
export function daysTaken(hours: number, dayHours: number): number {
  return Math.max(1, wholeUp(hours / dayHours))
}

/**
 * Days that no plan can do with fewer of: a stop longer than a day takes its own whole days, no two of more than half a day
 * share one, and the others need their hours.
 */
export function leastDays(stops: readonly Timed[], dayHours: number): number {
  const room = Math.max(1, Math.floor(dayHours * 100 + 1e-6))
  const weights = stops.map(({ hours }) => hundredths(hours))
  const short = weights.filter((weight) => weight <= room)
  const halves = short.filter((weight) => 2 * weight > room).length
  const long = stops.filter((_stop, at) => (weights[at] ?? 0) > room)
  const byHours = Math.ceil(short.reduce((sum, weight) => sum + weight, 0) / room - 1e-9)
  return (
    long.reduce((sum, { hours }) => sum + daysTaken(hours, dayHours), 0) +
    Math.max(byHours, halves, short.length > 0 ? 1 : 0)
  )
}
