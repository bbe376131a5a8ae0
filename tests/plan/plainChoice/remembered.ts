import { isBefore } from '../../../src/plan/choice'
import type { Sums } from './sums'

/** Half-made choices kept a depth; more would cost more to compare than they save. */
const most = 256

/** Half-made choices already followed, by depth, and which of them is replaced next. */
export interface Remembered {
  readonly depths: { readonly sums: Sums; readonly choices: readonly number[] }[][]
  readonly turn: number[]
}

/**
 * True where a remembered choice at this depth makes this one needless; otherwise it is remembered too. A choice that
 * gained no more and left no more of any limit need not be followed: whatever completes it completes the remembered one
 * at least as well. Where everything is equal, the one that the inventory's order prefers is followed.
 */
export function makesNeedless(
  { depths, turn }: Remembered,
  depth: number,
  sums: Sums,
  choices: readonly number[]
): boolean {
  const kept = (depths[depth] ??= [])
  for (const earlier of kept) {
    if (!dominates(earlier.sums, sums)) continue
    if (!isSame(earlier.sums, sums) || !isBefore(choices, earlier.choices)) return true
  }
  const entry = { sums, choices: [...choices] }
  if (kept.length < most) kept.push(entry)
  else {
    const place = turn[depth] ?? 0
    kept[place] = entry
    turn[depth] = (place + 1) % most
  }
  return false
}

function dominates(a: Sums, b: Sums): boolean {
  return (
    a.gain >= b.gain &&
    a.units <= b.units &&
    a.cuts <= b.cuts &&
    a.lower >= b.lower &&
    a.holders >= b.holders &&
    a.leaders >= b.leaders
  )
}

function isSame(a: Sums, b: Sums): boolean {
  return a.gain === b.gain && a.units === b.units && a.cuts === b.cuts
}
