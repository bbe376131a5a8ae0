import { isBefore } from './choice'
import { at, type SearchSpace } from './searchSpace'

/** Half-made choices kept a depth; more would cost more to compare than they save. */
const most = 256

/** A half-made choice that was followed: what it gained, used and left of each limit. */
interface Followed {
  readonly gain: number
  readonly units: number
  readonly cuts: number
  readonly lower: number
  readonly holders: number
  readonly leaders: number
  readonly choices: readonly number[]
}

/** Half-made choices already followed, by depth, and which of them is replaced next. */
export interface Remembered {
  readonly depths: Followed[][]
  readonly turn: number[]
}

/**
 * True where a remembered choice at this depth makes this one needless; otherwise it is remembered too. A choice that
 * gained no more and left no more of any limit need not be followed: whatever completes it completes the remembered one
 * at least as well. Where everything is equal, the one that the inventory's order prefers is followed.
 */
export function makesNeedless(
  { depths, turn }: Remembered,
  space: SearchSpace,
  depth: number,
  choices: readonly number[]
): boolean {
  const kept = (depths[depth] ??= [])
  const sums: Followed = {
    gain: at(space.gained, depth),
    units: at(space.used, depth),
    cuts: at(space.made, depth),
    lower: at(space.room, depth),
    holders: at(space.holders, depth),
    leaders: at(space.leadersLeft, depth),
    choices
  }
  for (const earlier of kept) {
    if (!dominates(earlier, sums)) continue
    if (!isSame(earlier, sums) || !isBefore(choices, earlier.choices)) return true
  }
  const entry = { ...sums, choices: [...choices] }
  if (kept.length < most) kept.push(entry)
  else {
    const place = turn[depth] ?? 0
    kept[place] = entry
    turn[depth] = (place + 1) % most
  }
  return false
}

function dominates(a: Followed, b: Followed): boolean {
  return (
    a.gain >= b.gain &&
    a.units <= b.units &&
    a.cuts <= b.cuts &&
    a.lower >= b.lower &&
    a.holders >= b.holders &&
    a.leaders >= b.leaders
  )
}

function isSame(a: Followed, b: Followed): boolean {
  return a.gain === b.gain && a.units === b.units && a.cuts === b.cuts
}
