import { Remembered } from './remembered'

/**
 * The exact choice of a visit: one item a group so that the sum of gains is greatest under the tree's allowance, the
 * number of cuts, the competing leaders cut at once, the foliage that has to stay low, and the crown base that has to
 * stay where it is.
 *
 * Gains and doses are whole numbers, so that ties are ties whatever the order of the sums and the units of the survey.
 * Ties go to the lower dose, then to fewer cuts, then to the limb that comes first in the inventory.
 *
 * Method: depth-first branch and bound. The bound relaxes the allowance with one price per unit of dose (Lagrange) and
 * keeps the number of cuts, so that what remains of a branch is worth at most price × allowance left + the sum of the
 * best priced gains of that many groups. The tables of one search are laid out flat and used again for the next.
 */

/** One way to treat a group: its gain and dose in whole units. */
export interface Item {
  gain: number
  /** Dose in whole units. */
  units: number
  cuts: number
  /** Change of (foliage in the lower two-thirds − the share to keep × all foliage). */
  lower: number
  /** Takes away one of the limbs that hold the crown base. */
  raises: boolean
  /** How many competing leaders it cuts. */
  leaders: number
}

export interface Limits {
  /** Allowance in whole units. */
  units: number
  cuts: number
  /** What `lower` may still lose: at least 0 before any cut. */
  lower: number
  /** How many groups hold the crown base and may not all go; Infinity where something else holds it. */
  holders: number
  /** How many competing leaders may be cut. */
  leaders: number
}

/** What `choose` answers for a group in which no item is chosen. */
export const leaveAlone = -1

const tolerance = 1e-9

/**
 * The index of the item chosen in each group, or `leaveAlone`. The groups stand in the inventory's order.
 */
export function choose(groups: readonly (readonly Item[])[], limits: Limits): number[] {
  return unhindered(groups, limits) ?? search.run(groups, limits)
}

/** Every group's best item, where all of them fit together: nothing can beat that. */
function unhindered(groups: readonly (readonly Item[])[], limits: Limits): number[] | null {
  const chosen: number[] = []
  let { units, cuts, lower, holders, leaders } = limits
  for (const items of groups) {
    let best: Item | null = null
    let index = leaveAlone
    for (let at = 0; at < items.length; at++) {
      const item = items[at]
      if (item === undefined || !isBetter(item, best)) continue
      best = item
      index = at
    }
    chosen.push(index)
    if (best === null) continue
    units -= best.units
    cuts -= best.cuts
    lower += best.lower
    leaders -= best.leaders
    if (best.raises) holders--
    if (units < 0 || cuts < 0 || holders <= 0 || leaders < 0) return null
  }
  return lower >= -tolerance ? chosen : null
}

function isBetter(a: Item, b: Item | null): boolean {
  if (b === null) return a.gain > 0
  if (a.gain !== b.gain) return a.gain > b.gain
  return a.units !== b.units ? a.units < b.units : a.cuts < b.cuts
}

/** Stands for a limit that there is not, as a small whole number. */
const unlimited = 1e6

/** From here on a search remembers the half-made choices it has followed. */
const manyNodes = 5000

/** Room for this many items and groups to begin with; the tables grow with the tree. */
const room = 256

class Search {
  private gain = new Float64Array(room)
  private units = new Float64Array(room)
  private cuts = new Uint16Array(room)
  private lower = new Float64Array(room)
  private raises = new Uint8Array(room)
  private leaders = new Uint8Array(room)
  /** Number of the item within its group. */
  private index = new Uint16Array(room)
  /** What the item is worth at the price in use. */
  private value = new Float64Array(room)
  /** Items of the groups, by group: from `first[g]` up to `first[g + 1]`. */
  private first = new Int32Array(room)
  /** The group's place among the groups given. */
  private place = new Int32Array(room)
  private worth = new Float64Array(room)
  /** Groups in the order in which they are tried, and the sum of the worth of the first n. */
  private order = new Int32Array(room)
  private worthUpTo = new Float64Array(room)
  /** Whether the group at a depth is a competing leader. */
  private leads = new Uint8Array(room)
  /** Sums so far, by depth. */
  private gainAt = new Float64Array(room)
  private unitsAt = new Float64Array(room)
  private cutsAt = new Int32Array(room)
  private lowerAt = new Float64Array(room)
  private holdersAt = new Int32Array(room)
  private leadersAt = new Int32Array(room)
  private groups = 0
  private nodes = 0
  private limitsLeaders = false
  private readonly remembered = new Remembered()
  private price = 0
  private current: number[] = []
  private best: number[] = []
  private bestGain = 0
  private bestUnits = 0
  private bestCuts = 0
  private limits: Limits = { units: 0, cuts: 0, lower: 0, holders: 0, leaders: 0 }

  run(groups: readonly (readonly Item[])[], limits: Limits): number[] {
    this.limits = limits
    this.current = new Array<number>(groups.length).fill(leaveAlone)
    this.best = new Array<number>(groups.length).fill(leaveAlone)
    this.bestGain = this.bestUnits = this.bestCuts = 0
    this.lay(groups)
    this.setPrice()
    this.sortItems()
    this.sortGroups()
    this.gainAt[0] = this.unitsAt[0] = this.cutsAt[0] = 0
    this.lowerAt[0] = limits.lower
    this.holdersAt[0] = Math.min(limits.holders, unlimited)
    this.leadersAt[0] = Math.min(limits.leaders, unlimited)
    this.limitsLeaders = limits.leaders < unlimited
    this.nodes = 0
    this.remembered.reset()
    this.visit(0)
    return this.best
  }

  /** Lays out every item; one over the allowance can never be chosen. */
  private lay(groups: readonly (readonly Item[])[]): void {
    let items = 0
    for (const group of groups) items += group.length
    if (Math.max(items, groups.length + 1) > this.gain.length)
      this.grow(2 * Math.max(items, groups.length + 1))
    this.groups = 0
    let at = 0
    for (let place = 0; place < groups.length; place++) {
      const group = groups[place] ?? []
      const start = at
      for (let index = 0; index < group.length; index++) {
        const item = group[index]
        if (item === undefined || item.units > this.limits.units) continue
        this.gain[at] = item.gain
        this.units[at] = item.units
        this.cuts[at] = item.cuts
        this.lower[at] = item.lower
        this.raises[at] = item.raises ? 1 : 0
        this.leaders[at] = item.leaders
        this.index[at] = index
        at++
      }
      if (at === start) continue
      this.first[this.groups] = start
      this.place[this.groups] = place
      this.groups++
    }
    this.first[this.groups] = at
  }

  private grow(size: number): void {
    this.gain = new Float64Array(size)
    this.units = new Float64Array(size)
    this.cuts = new Uint16Array(size)
    this.lower = new Float64Array(size)
    this.raises = new Uint8Array(size)
    this.leaders = new Uint8Array(size)
    this.index = new Uint16Array(size)
    this.value = new Float64Array(size)
    this.first = new Int32Array(size)
    this.place = new Int32Array(size)
    this.worth = new Float64Array(size)
    this.order = new Int32Array(size)
    this.worthUpTo = new Float64Array(size)
    this.leads = new Uint8Array(size)
    this.gainAt = new Float64Array(size)
    this.unitsAt = new Float64Array(size)
    this.cutsAt = new Int32Array(size)
    this.lowerAt = new Float64Array(size)
    this.holdersAt = new Int32Array(size)
    this.leadersAt = new Int32Array(size)
  }

  /** The price of dose at which the relaxed problem is worth least, by halving: the tightest bound of its kind. */
  private setPrice(): void {
    let low = 0
    let high = 0
    const last = this.first[this.groups] ?? 0
    for (let at = 0; at < last; at++) {
      const units = this.units[at] ?? 0
      if (units > 0) high = Math.max(high, (this.gain[at] ?? 0) / units)
    }
    if (this.unitsAtPrice(0) <= this.limits.units) high = 0
    for (let step = 0; step < 12 && high > 0; step++) {
      const price = (low + high) / 2
      if (this.unitsAtPrice(price) > this.limits.units) low = price
      else high = price
    }
    this.price = high
  }

  /** Dose of the best priced items of as many groups as may be cut. */
  private unitsAtPrice(price: number): number {
    let sum = 0
    let picked = 0
    for (let group = 0; group < this.groups; group++) {
      let worth = 0
      let units = 0
      const end = this.first[group + 1] ?? 0
      for (let at = this.first[group] ?? 0; at < end; at++) {
        const value = (this.gain[at] ?? 0) - price * (this.units[at] ?? 0)
        if (value <= worth) continue
        worth = value
        units = this.units[at] ?? 0
      }
      if (worth <= 0) continue
      sum += units
      this.worthUpTo[picked] = worth
      this.leads[picked] = this.isLeader(group) ? 1 : 0
      this.value[picked++] = units
    }
    return picked > this.limits.cuts || this.limits.leaders < picked ? this.unitsOfBest(picked) : sum
  }

  /** Every item of the group cuts a competing leader. */
  private isLeader(group: number): boolean {
    const end = this.first[group + 1] ?? 0
    for (let at = this.first[group] ?? 0; at < end; at++) if (this.leaders[at] === 0) return false
    return true
  }

  /** Of the priced groups just gathered, the dose of those that are worth most and may be cut together. */
  private unitsOfBest(picked: number): number {
    let sum = 0
    let cuts = this.limits.cuts
    let leaders = this.limits.leaders
    for (let turn = 0; turn < picked && cuts > 0; turn++) {
      let best = 0
      for (let at = 1; at < picked; at++)
        if ((this.worthUpTo[at] ?? 0) > (this.worthUpTo[best] ?? 0)) best = at
      this.worthUpTo[best] = -1
      if (this.leads[best] === 1 && --leaders < 0) continue
      sum += this.value[best] ?? 0
      cuts--
    }
    return sum
  }

  /** Within each group the item that is worth most comes first, by insertion. */
  private sortItems(): void {
    for (let group = 0; group < this.groups; group++) {
      const start = this.first[group] ?? 0
      const end = this.first[group + 1] ?? 0
      for (let at = start; at < end; at++)
        this.value[at] = (this.gain[at] ?? 0) - this.price * (this.units[at] ?? 0)
      for (let at = start + 1; at < end; at++)
        for (let to = at; to > start && (this.value[to] ?? 0) > (this.value[to - 1] ?? 0); to--)
          this.swap(to, to - 1)
      this.worth[group] = Math.max(0, this.value[start] ?? 0)
    }
  }

  private swap(a: number, b: number): void {
    exchange(this.gain, a, b)
    exchange(this.units, a, b)
    exchange(this.cuts, a, b)
    exchange(this.lower, a, b)
    exchange(this.raises, a, b)
    exchange(this.leaders, a, b)
    exchange(this.index, a, b)
    exchange(this.value, a, b)
  }

  /** The group that is worth most is tried first; equals stay in the inventory's order. */
  private sortGroups(): void {
    for (let group = 0; group < this.groups; group++) {
      let to = group
      const worth = this.worth[group] ?? 0
      while (to > 0 && (this.worth[this.order[to - 1] ?? 0] ?? 0) < worth) {
        this.order[to] = this.order[to - 1] ?? 0
        to--
      }
      this.order[to] = group
    }
    this.worthUpTo[0] = 0
    for (let at = 0; at < this.groups; at++)
      this.worthUpTo[at + 1] = (this.worthUpTo[at] ?? 0) + (this.worth[this.order[at] ?? 0] ?? 0)
    for (let at = 0; at < this.groups; at++) this.leads[at] = this.isLeader(this.order[at] ?? 0) ? 1 : 0
  }

  /** Sums so far stand by depth, as numbers handed from call to call would each be put on the heap. */
  private visit(depth: number): void {
    if (depth === this.groups) {
      if ((this.lowerAt[depth] ?? 0) >= -tolerance) this.keep(depth)
      return
    }
    if (!this.canImprove(depth)) return
    if (++this.nodes > manyNodes && depth > 0 && this.isNeedless(depth)) return
    const group = this.order[depth] ?? 0
    const place = this.place[group] ?? 0
    const end = this.first[group + 1] ?? 0
    const next = depth + 1
    // What is left is worth at most this beside the item chosen here; the items stand in falling order of value.
    const reach = this.boundBeside(depth)
    for (let at = this.first[group] ?? 0; at < end; at++) {
      if (reach + (this.value[at] ?? 0) < this.bestGain - 1) break
      const units = (this.unitsAt[depth] ?? 0) + (this.units[at] ?? 0)
      const cuts = (this.cutsAt[depth] ?? 0) + (this.cuts[at] ?? 0)
      const holders = (this.holdersAt[depth] ?? 0) - (this.raises[at] ?? 0)
      const leaders = (this.leadersAt[depth] ?? 0) - (this.leaders[at] ?? 0)
      if (units > this.limits.units || cuts > this.limits.cuts || holders <= 0 || leaders < 0) continue
      this.unitsAt[next] = units
      this.cutsAt[next] = cuts
      this.holdersAt[next] = holders
      this.leadersAt[next] = leaders
      this.gainAt[next] = (this.gainAt[depth] ?? 0) + (this.gain[at] ?? 0)
      this.lowerAt[next] = (this.lowerAt[depth] ?? 0) + (this.lower[at] ?? 0)
      this.current[place] = this.index[at] ?? 0
      this.visit(next)
    }
    this.current[place] = leaveAlone
    this.start(next, depth)
    this.visit(next)
  }

  /** A search that grows long remembers where it has been. */
  private isNeedless(depth: number): boolean {
    const state = {
      gain: this.gainAt[depth] ?? 0,
      units: this.unitsAt[depth] ?? 0,
      cuts: this.cutsAt[depth] ?? 0,
      lower: this.lowerAt[depth] ?? 0,
      holders: this.holdersAt[depth] ?? 0,
      leaders: this.leadersAt[depth] ?? 0
    }
    return this.remembered.makesNeedless(depth, state, this.current, isBefore)
  }

  /** Sums so far, the allowance left at its price, and the best that the groups after this one may add. */
  private boundBeside(depth: number): number {
    const left = this.limits.units - (this.unitsAt[depth] ?? 0)
    const cuts = this.limits.cuts - (this.cutsAt[depth] ?? 0) - 1
    const leaders = (this.leadersAt[depth] ?? 0) - (this.leads[depth] ?? 0)
    return (this.gainAt[depth] ?? 0) + this.price * left + this.worthFrom(depth + 1, cuts, leaders)
  }

  /** The best that the groups from this depth on may add, with so many cuts and competing leaders left. */
  private worthFrom(depth: number, cuts: number, leaders: number): number {
    if (cuts <= 0) return 0
    if (!this.limitsLeaders) {
      const last = Math.min(this.groups, depth + cuts)
      return last <= depth ? 0 : (this.worthUpTo[last] ?? 0) - (this.worthUpTo[depth] ?? 0)
    }
    let worth = 0
    for (let at = depth; at < this.groups && cuts > 0; at++) {
      if (this.leads[at] === 1 && --leaders < 0) continue
      worth += (this.worthUpTo[at + 1] ?? 0) - (this.worthUpTo[at] ?? 0)
      cuts--
    }
    return worth
  }

  /** The sums at a depth begin as they stand at another. */
  private start(depth: number, from: number): void {
    this.gainAt[depth] = this.gainAt[from] ?? 0
    this.unitsAt[depth] = this.unitsAt[from] ?? 0
    this.cutsAt[depth] = this.cutsAt[from] ?? 0
    this.lowerAt[depth] = this.lowerAt[from] ?? 0
    this.holdersAt[depth] = this.holdersAt[from] ?? 0
    this.leadersAt[depth] = this.leadersAt[from] ?? 0
  }

  private canImprove(depth: number): boolean {
    const units = this.unitsAt[depth] ?? 0
    const cuts = this.cutsAt[depth] ?? 0
    const worth = this.worthFrom(depth, this.limits.cuts - cuts, this.leadersAt[depth] ?? 0)
    const bound = (this.gainAt[depth] ?? 0) + this.price * (this.limits.units - units) + worth
    if (bound < this.bestGain - 1) return false
    // Gains are whole: below the next whole number the branch can at best tie, and a tie goes to the lower dose.
    if (bound >= this.bestGain + 1 || units < this.bestUnits) return true
    return units === this.bestUnits && cuts <= this.bestCuts
  }

  private keep(depth: number): void {
    const gain = this.gainAt[depth] ?? 0
    const units = this.unitsAt[depth] ?? 0
    const cuts = this.cutsAt[depth] ?? 0
    if (!this.isBetterThanBest(gain, units, cuts)) return
    this.bestGain = gain
    this.bestUnits = units
    this.bestCuts = cuts
    for (let place = 0; place < this.current.length; place++)
      this.best[place] = this.current[place] ?? leaveAlone
  }

  private isBetterThanBest(gain: number, units: number, cuts: number): boolean {
    if (gain !== this.bestGain) return gain > this.bestGain
    if (units !== this.bestUnits) return units < this.bestUnits
    if (cuts !== this.bestCuts) return cuts < this.bestCuts
    return isBefore(this.current, this.best)
  }
}

/** Among equals the first limb in which two choices differ is cut, and cut the way that is offered first. */
function isBefore(a: readonly number[], b: readonly number[]): boolean {
  for (let place = 0; place < a.length; place++) {
    const mine = a[place] ?? leaveAlone
    const theirs = b[place] ?? leaveAlone
    if (mine !== theirs) return theirs === leaveAlone || (mine !== leaveAlone && mine < theirs)
  }
  return false
}

function exchange(table: Float64Array | Uint16Array | Uint8Array, a: number, b: number): void {
  const kept = table[a] ?? 0
  table[a] = table[b] ?? 0
  table[b] = kept
}

/** One search at a time: the engine is synchronous. */
const search = new Search()
