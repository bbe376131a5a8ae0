import {
  withItem,
  compareTotals,
  isBefore,
  leaveAlone,
  type Groups,
  type Item,
  type Limits,
  type Sums,
  type Totals
} from './choice'
import { Remembered } from './remembered'

/**
 * The exact choice of a visit: one item per group so that the sum of gains is greatest under the tree's allowance, the
 * number of cuts, the competing leaders cut at once, the foliage that has to stay low, and the crown base that has to
 * stay where it is.
 *
 * Gains and doses are whole numbers, so that ties are ties whatever the order of the sums and the units of the survey.
 * Ties go to the lower dose, then to fewer cuts, then to the limb that comes first in the inventory.
 *
 * Method: depth-first branch and bound. The bound (`Search.reach`) relaxes the allowance with one price per unit of dose
 * (Lagrange) and keeps the number of cuts and of competing leaders.
 */

const tolerance = 1e-9

/** The index of the item chosen in each group, or `leaveAlone`. The groups stand in the inventory's order. */
export function choose(groups: Groups, limits: Limits): number[] {
  return unhindered(groups, limits) ?? new Search(groups, limits).run()
}

/** Every group's best item, where all of them fit together: nothing can beat that. */
function unhindered(groups: Groups, limits: Limits): number[] | null {
  const chosen: number[] = []
  let { units, cuts, lower, holders, leaders } = limits
  for (const items of groups) {
    const best = bestOf(items)
    chosen.push(best === null ? leaveAlone : items.indexOf(best))
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

/** Greatest gain, then the lower dose, then fewer cuts; null where leaving the group alone gains as much. */
function bestOf(items: readonly Item[]): Item | null {
  let best: Item | null = null
  for (const item of items) if (best === null ? item.gain > 0 : compareTotals(item, best) > 0) best = item
  return best
}

/** Dose of the best priced items of as many groups, and of as many competing leaders, as may be cut. */
function unitsAtPrice(groups: Groups, limits: Limits, price: number): number {
  const picked: { worth: number; item: Item }[] = []
  for (const items of groups) {
    let worth = 0
    let best: Item | null = null
    for (const item of items) {
      const value = item.gain - price * item.units
      if (value <= worth || item.units > limits.units) continue
      worth = value
      best = item
    }
    if (best !== null) picked.push({ worth, item: best })
  }
  if (picked.length > limits.cuts || picked.length > limits.leaders) picked.sort((a, b) => b.worth - a.worth)
  let { cuts, leaders } = limits
  let units = 0
  for (const { item } of picked) {
    if (cuts === 0) break
    if (item.leaders > 0 && --leaders < 0) continue
    units += item.units
    cuts--
  }
  return units
}

/** The price of dose at which the relaxed choice is worth least, by halving: the tightest bound of its kind. */
function tightestPrice(groups: Groups, limits: Limits): number {
  if (unitsAtPrice(groups, limits, 0) <= limits.units) return 0
  let low = 0
  let high = 0
  for (const items of groups)
    for (const { gain, units } of items)
      if (units > 0 && units <= limits.units) high = Math.max(high, gain / units)
  for (let step = 0; step < 12; step++) {
    const price = (low + high) / 2
    if (unitsAtPrice(groups, limits, price) > limits.units) low = price
    else high = price
  }
  return high
}

/** An item with what it is worth at the price in use, and its number within its group. */
interface Candidate {
  readonly item: Item
  readonly index: number
  readonly value: number
}

/** A group as it is searched: its items, the most valuable first, and what the best of them may add. */
interface Candidates {
  /** Its place among the groups given. */
  readonly place: number
  readonly items: readonly Candidate[]
  readonly worth: number
  /** Every item cuts a competing leader. */
  readonly leads: boolean
}

/** The groups in the order of the search: the most valuable first; equals stay in the inventory's order. */
function inOrder(groups: Groups, limits: Limits, price: number): Candidates[] {
  const ordered: Candidates[] = []
  for (const [place, group] of groups.entries()) {
    const items: Candidate[] = []
    for (const [index, item] of group.entries())
      if (item.units <= limits.units) items.push({ item, index, value: item.gain - price * item.units })
    const [first] = items.sort((a, b) => b.value - a.value)
    if (first === undefined) continue
    const leads = items.every(({ item }) => item.leaders > 0)
    ordered.push({ place, items, worth: Math.max(0, first.value), leads })
  }
  return ordered.sort((a, b) => b.worth - a.worth)
}

/**
 * What rounding may add to a bound or take from it, in units of gain. Gains are whole and their sum stays below 2^44, so
 * that each of the some hundred sums in a bound is off by less than 2^-8: together by less than half a unit.
 */
const rounding = 0.5

/** From here on a search remembers the half-made choices it has followed. */
const manyNodes = 5000

class Search {
  private readonly price: number
  private readonly groups: readonly Candidates[]
  /** Sum of the worth of the first n groups. */
  private readonly worthUpTo: number[] = [0]
  private readonly current: number[]
  private best: Totals & { readonly choices: readonly number[] }
  private readonly remembered = new Remembered()
  private nodes = 0

  constructor(
    all: Groups,
    private readonly limits: Limits
  ) {
    this.price = tightestPrice(all, limits)
    this.groups = inOrder(all, limits, this.price)
    let worth = 0
    for (const group of this.groups) this.worthUpTo.push((worth += group.worth))
    this.current = all.map(() => leaveAlone)
    this.best = { gain: 0, units: 0, cuts: 0, choices: [...this.current] }
  }

  run(): number[] {
    const { lower, holders, leaders } = this.limits
    this.visit(0, { gain: 0, units: 0, cuts: 0, lower, holders, leaders })
    return [...this.best.choices]
  }

  private visit(depth: number, sums: Sums): void {
    const group = this.groups[depth]
    if (group === undefined) {
      if (sums.lower >= -tolerance) this.keep(sums)
      return
    }
    if (!this.canImprove(sums, this.reach(sums, depth, 0, 0))) return
    if (++this.nodes > manyNodes && depth > 0 && this.remembered.makesNeedless(depth, sums, this.current))
      return
    const beside = this.reach(sums, depth + 1, 1, group.leads ? 1 : 0)
    for (const { item, index, value } of group.items) {
      if (beside + value < this.best.gain - rounding) break
      const next = withItem(sums, item)
      if (next.units > this.limits.units || next.cuts > this.limits.cuts) continue
      if (next.holders <= 0 || next.leaders < 0) continue
      this.current[group.place] = index
      this.visit(depth + 1, next)
    }
    this.current[group.place] = leaveAlone
    this.visit(depth + 1, sums)
  }

  /**
   * The bound: no completion gains more than the sums so far, the allowance left at its price, and the priced worth of
   * the best groups from this depth on that the cuts and leaders left allow.
   */
  private reach(sums: Sums, depth: number, cutsLess: number, leadersLess: number): number {
    const cuts = this.limits.cuts - sums.cuts - cutsLess
    const worth = this.worthFrom(depth, cuts, sums.leaders - leadersLess)
    return sums.gain + this.price * (this.limits.units - sums.units) + worth
  }

  private worthFrom(depth: number, cuts: number, leaders: number): number {
    if (cuts <= 0) return 0
    if (leaders === Infinity) {
      const last = Math.min(this.groups.length, depth + cuts)
      return (this.worthUpTo[last] ?? 0) - (this.worthUpTo[depth] ?? 0)
    }
    let worth = 0
    for (let at = depth; at < this.groups.length && cuts > 0; at++) {
      const group = this.groups[at]
      if (group === undefined || (group.leads && --leaders < 0)) continue
      worth += group.worth
      cuts--
    }
    return worth
  }

  /** A branch that can at best tie goes on only if its dose, then its cuts, do not lose the tie already. */
  private canImprove({ units, cuts }: Sums, bound: number): boolean {
    const { best } = this
    if (bound < best.gain - rounding) return false
    if (bound >= best.gain + rounding || units < best.units) return true
    return units === best.units && cuts <= best.cuts
  }

  private keep(sums: Sums): void {
    const order = compareTotals(sums, this.best)
    if (order < 0 || (order === 0 && !isBefore(this.current, this.best.choices))) return
    this.best = { gain: sums.gain, units: sums.units, cuts: sums.cuts, choices: [...this.current] }
  }
}
