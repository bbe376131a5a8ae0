/** One way to treat a group: its gain and dose in whole units. */
export interface Item {
  readonly gain: number
  /** Dose in whole units. */
  readonly units: number
  /** At least 1. */
  readonly cuts: number
  /** Change of (foliage in the lower two-thirds − the share to keep × all foliage). */
  readonly lower: number
  /** Takes away one of the limbs that hold the crown base. */
  readonly raises: boolean
  /** How many competing leaders it cuts. */
  readonly leaders: number
}

export type Groups = readonly (readonly Item[])[]

export interface Limits {
  /** Allowance in whole units. */
  readonly units: number
  readonly cuts: number
  /** What `lower` may still lose: at least 0 before any cut. */
  readonly lower: number
  /** How many groups hold the crown base and may not all go; Infinity where something else holds it. */
  readonly holders: number
  /** How many competing leaders may be cut. */
  readonly leaders: number
}

/** How much was looked at to find a choice, which a test holds: half-made choices, and ways compared with each other. */
export interface Effort {
  choices: number
  comparisons: number
}

export function noEffort(): Effort {
  return { choices: 0, comparisons: 0 }
}

/** Stands for a group in which no item is chosen. */
export const leaveAlone = -1

/** What an item or a whole choice comes to, as ties are settled. */
export type Totals = Pick<Item, 'gain' | 'units' | 'cuts'>

/** Above 0 where the first is the better: greater gain, then the lower dose, then fewer cuts. */
export function compareTotals(a: Totals, b: Totals): number {
  if (a.gain !== b.gain) return a.gain - b.gain
  return a.units !== b.units ? b.units - a.units : b.cuts - a.cuts
}

/** Among equals the first limb in which two choices differ is cut, and cut the way that is offered first. */
export function isBefore(a: readonly number[], b: readonly number[]): boolean {
  for (let place = 0; place < a.length; place++) {
    const mine = a[place] ?? leaveAlone
    const theirs = b[place] ?? leaveAlone
    if (mine !== theirs) return theirs === leaveAlone || (mine !== leaveAlone && mine < theirs)
  }
  return false
}
