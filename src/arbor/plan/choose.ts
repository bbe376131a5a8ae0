/**
 * The exact choice of a visit: one item a group so that the sum of gains is greatest under the tree's allowance, the
 * number of cuts, the foliage that has to stay low, and the crown base that has to stay where it is.
 *
 * Gains and doses are whole numbers, so that ties are ties whatever the order of the sums and the units of the survey.
 * Ties go to the lower dose, then to fewer cuts, then to the limb that comes first in the inventory.
 *
 * Method: depth-first branch and bound. The bound relaxes the allowance with one price per unit of dose (Lagrange) and
 * keeps the number of cuts, so that what remains of a branch is worth at most price × allowance left + the sum of the
 * best priced gains of that many groups.
 */

/** One way to treat a group: its gain and dose in whole units. */
export interface Item {
  gain: number
  dose: number
  cuts: number
  /** Change of (foliage in the lower two-thirds − the share to keep × all foliage). */
  lower: number
  /** Takes away one of the limbs that hold the crown base. */
  raises: boolean
}

export interface Limits {
  dose: number
  cuts: number
  /** What `lower` may still lose: at least 0 before any cut. */
  lower: number
  /** How many groups hold the crown base and may not all go; Infinity where something else holds it. */
  holders: number
}

interface Group {
  /** Place in the inventory. */
  place: number
  items: readonly Item[]
  /** Items other than leaving it alone, the most promising first. */
  order: number[]
  /** Most that the group is worth at the price in use. */
  worth: number
}

/**
 * The index of the item chosen in each group; item 0 of a group leaves it alone (gain, dose and cuts 0). The groups
 * stand in the inventory's order.
 */
export function choose(groups: readonly (readonly Item[])[], limits: Limits): number[] {
  const easy = unhindered(groups, limits)
  if (easy !== null) return easy
  return new Search(groups, limits).run()
}

/** Every group's best item, where all of them fit together: nothing can beat that. */
function unhindered(groups: readonly (readonly Item[])[], limits: Limits): number[] | null {
  const chosen: number[] = []
  let { dose, cuts, lower, holders } = limits
  for (const items of groups) {
    let best = 0
    for (let at = 1; at < items.length; at++) if (isBetter(items[at], items[best])) best = at
    chosen.push(best)
    const item = items[best]
    if (item === undefined) continue
    dose -= item.dose
    cuts -= item.cuts
    lower += item.lower
    if (item.raises) holders--
  }
  return dose >= 0 && cuts >= 0 && lower >= -tolerance && holders > 0 ? chosen : null
}

function isBetter(a: Item | undefined, b: Item | undefined): boolean {
  if (a === undefined || b === undefined) return false
  return a.gain !== b.gain ? a.gain > b.gain : a.dose !== b.dose ? a.dose < b.dose : a.cuts < b.cuts
}

const tolerance = 1e-9

class Search {
  private readonly groups: Group[]
  private readonly price: number
  /** Sum of the worth of the first n groups. */
  private readonly worthUpTo: Float64Array
  private readonly current: number[]
  private best: number[]
  private bestGain = 0
  private bestDose = 0
  private bestCuts = 0

  constructor(
    all: readonly (readonly Item[])[],
    private readonly limits: Limits
  ) {
    this.current = new Array<number>(all.length).fill(0)
    this.best = new Array<number>(all.length).fill(0)
    const open = all.flatMap((items, place) => (items.length > 1 ? [{ place, items }] : []))
    this.price = dosePrice(
      open.map(({ items }) => items),
      limits
    )
    this.groups = open.map((group) => this.priced(group.place, group.items))
    this.groups.sort((a, b) => b.worth - a.worth || a.place - b.place)
    this.worthUpTo = new Float64Array(this.groups.length + 1)
    this.groups.forEach((group, at) => {
      this.worthUpTo[at + 1] = (this.worthUpTo[at] ?? 0) + group.worth
    })
  }

  private priced(place: number, items: readonly Item[]): Group {
    const worth = (at: number): number => {
      const item = items[at]
      return item === undefined ? 0 : item.gain - this.price * item.dose
    }
    const order: number[] = []
    for (let at = 1; at < items.length; at++)
      if ((items[at]?.dose ?? Infinity) <= this.limits.dose) order.push(at)
    order.sort((a, b) => worth(b) - worth(a) || a - b)
    return { place, items, order, worth: order[0] === undefined ? 0 : Math.max(0, worth(order[0])) }
  }

  run(): number[] {
    this.visit(0, 0, 0, 0, this.limits.lower, this.limits.holders)
    return this.best
  }

  private visit(at: number, gain: number, dose: number, cuts: number, lower: number, holders: number): void {
    const group = this.groups[at]
    if (group === undefined) {
      if (lower >= -tolerance) this.keep(gain, dose, cuts)
      return
    }
    if (!this.canImprove(at, gain, dose, cuts)) return
    for (const index of group.order) {
      const item = group.items[index]
      if (item === undefined || dose + item.dose > this.limits.dose || cuts + item.cuts > this.limits.cuts)
        continue
      const left = item.raises ? holders - 1 : holders
      if (left <= 0) continue
      this.current[group.place] = index
      this.visit(at + 1, gain + item.gain, dose + item.dose, cuts + item.cuts, lower + item.lower, left)
    }
    this.current[group.place] = 0
    this.visit(at + 1, gain, dose, cuts, lower, holders)
  }

  private canImprove(at: number, gain: number, dose: number, cuts: number): boolean {
    const last = Math.min(this.groups.length, at + this.limits.cuts - cuts)
    const worth = (this.worthUpTo[last] ?? 0) - (this.worthUpTo[at] ?? 0)
    const bound = gain + this.price * (this.limits.dose - dose) + worth
    if (bound < this.bestGain - 1) return false
    // Gains are whole: below the next whole number the branch can at best tie, and a tie goes to the lower dose.
    const canWin = bound >= this.bestGain + 1
    return canWin || dose < this.bestDose || (dose === this.bestDose && cuts <= this.bestCuts)
  }

  private keep(gain: number, dose: number, cuts: number): void {
    if (!this.isBetterThanBest(gain, dose, cuts)) return
    this.bestGain = gain
    this.bestDose = dose
    this.bestCuts = cuts
    this.best = this.current.slice()
  }

  private isBetterThanBest(gain: number, dose: number, cuts: number): boolean {
    if (gain !== this.bestGain) return gain > this.bestGain
    if (dose !== this.bestDose) return dose < this.bestDose
    if (cuts !== this.bestCuts) return cuts < this.bestCuts
    for (let place = 0; place < this.current.length; place++) {
      const mine = this.current[place] ?? 0
      const theirs = this.best[place] ?? 0
      if (mine !== theirs) return theirs === 0 || (mine !== 0 && mine < theirs)
    }
    return false
  }
}

/** The price of dose at which the relaxed problem is worth least: the tightest bound of its kind. */
function dosePrice(groups: readonly (readonly Item[])[], limits: Limits): number {
  let high = 0
  for (const items of groups)
    for (const item of items) if (item.dose > 0) high = Math.max(high, item.gain / item.dose)
  let low = 0
  for (let step = 0; step < 24; step++) {
    const price = (low + high) / 2
    if (doseAt(groups, limits.cuts, price) > limits.dose) low = price
    else high = price
  }
  return high
}

/** Dose of the best priced items of as many groups as may be cut. */
function doseAt(groups: readonly (readonly Item[])[], cuts: number, price: number): number {
  const picked: { worth: number; dose: number }[] = []
  for (const items of groups) {
    let worth = 0
    let dose = 0
    for (const item of items) {
      const value = item.gain - price * item.dose
      if (value > worth) {
        worth = value
        dose = item.dose
      }
    }
    if (worth > 0) picked.push({ worth, dose })
  }
  if (picked.length > cuts) picked.sort((a, b) => b.worth - a.worth).length = cuts
  return picked.reduce((sum, { dose }) => sum + dose, 0)
}
