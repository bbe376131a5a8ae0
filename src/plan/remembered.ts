/** Sums of a half-made choice: what it gained, used and left of each limit. */
export interface Partial {
  gain: number
  units: number
  cuts: number
  lower: number
  holders: number
  leaders: number
}

/** Half-made choices kept a depth; more would cost more to compare than they save. */
const most = 256

/**
 * Half-made choices already followed, by depth. Another one at the same depth that gained no more and left no more of
 * any limit need not be followed: whatever completes it completes the remembered one at least as well. Where everything
 * is equal, the one that the inventory's order prefers is followed.
 */
export class Remembered {
  private readonly depths: { state: Partial; choices: number[] }[][] = []
  private readonly turn: number[] = []

  reset(): void {
    this.depths.length = 0
    this.turn.length = 0
  }

  /** True where a remembered choice at this depth makes this one needless; otherwise it is remembered too. */
  makesNeedless(depth: number, state: Partial, choices: readonly number[], isBefore: IsBefore): boolean {
    const kept = (this.depths[depth] ??= [])
    for (const earlier of kept) {
      if (!dominates(earlier.state, state)) continue
      if (!isSame(earlier.state, state) || !isBefore(choices, earlier.choices)) return true
    }
    const entry = { state, choices: [...choices] }
    if (kept.length < most) kept.push(entry)
    else {
      const place = this.turn[depth] ?? 0
      kept[place] = entry
      this.turn[depth] = (place + 1) % most
    }
    return false
  }
}

/** The inventory's order prefers the first of two choices. */
export type IsBefore = (a: readonly number[], b: readonly number[]) => boolean

function dominates(a: Partial, b: Partial): boolean {
  return (
    a.gain >= b.gain &&
    a.units <= b.units &&
    a.cuts <= b.cuts &&
    a.lower >= b.lower &&
    a.holders >= b.holders &&
    a.leaders >= b.leaders
  )
}

function isSame(a: Partial, b: Partial): boolean {
  return a.gain === b.gain && a.units === b.units && a.cuts === b.cuts
}
