import type { Item } from '../../../src/plan/choice'

/** Sums of a half-made choice: what it gained, used and left of each limit. */
export interface Sums {
  readonly gain: number
  readonly units: number
  readonly cuts: number
  readonly lower: number
  readonly holders: number
  readonly leaders: number
}

/** The sums once an item is taken as well. */
export function withItem(sums: Sums, { gain, units, cuts, lower, raises, leaders }: Item): Sums {
  return {
    gain: sums.gain + gain,
    units: sums.units + units,
    cuts: sums.cuts + cuts,
    lower: sums.lower + lower,
    holders: sums.holders - (raises ? 1 : 0),
    leaders: sums.leaders - leaders
  }
}
