import { atLeast } from '../../../src/formulas/boundary'
import {
  compareTotals,
  isBefore,
  leaveAlone,
  noEffort,
  type Effort,
  type Groups,
  type Item,
  type Limits,
  type Totals
} from '../../../src/plan/choice'
import { pricedGroups, tightestPrices, type PricedGroup, type Prices } from './pricedGroups'
import { makesNeedless, type Remembered } from './remembered'
import { withItem, type Sums } from './sums'

/** The search of `src/plan/choose.ts` as it reads best, with an object for every half-made choice: what that one has to choose. */

/**
 * The index of the item chosen in each group, or `leaveAlone`. The groups stand in the inventory's order. What was looked at
 * is added to the effort.
 */
export function choosePlainly(groups: Groups, limits: Limits, effort: Effort = noEffort()): number[] {
  return unhindered(groups, limits) ?? search(groups, limits, effort)
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
  return atLeast(lower, 0) ? chosen : null
}

/** Greatest gain, then the lower dose, then fewer cuts; null where leaving the group alone gains as much. */
function bestOf(items: readonly Item[]): Item | null {
  let best: Item | null = null
  for (const item of items) if (best === null ? item.gain > 0 : compareTotals(item, best) > 0) best = item
  return best
}

/**
 * What rounding may add to a bound or take from it, in units of gain. Whole gains add up exactly; only price × dose does
 * not, nor price × cuts. At the prices in use those products are of the order of the gains, some 2^44 at most, so that each of the hundred or so
 * products and sums of a bound is off by less than 2^-8 and all of them by less than half a unit. A bound that lies half a
 * unit below the best gain can therefore not even tie with it, as the next gain below the best is a whole unit away.
 */
const rounding = 0.5

/** Stands for a limit that there is not: a small whole number is kept in the sums without a place of its own in memory. */
const unlimited = 1e6

/** From here on a search remembers the half-made choices it has followed. */
const manyNodes = 5000

/**
 * One search. It is made as a literal and not from a class, as the engine forgets the shape of a class without an instance
 * at every tidying up of the memory, and what it compiled for it.
 */
interface Search {
  readonly limits: Limits
  readonly prices: Prices
  readonly groups: readonly PricedGroup[]
  /** Sum of the worth of the first n groups. */
  readonly worthUpTo: readonly number[]
  /** The item taken of each group, as the groups were given. */
  readonly current: number[]
  best: Totals & { readonly choices: readonly number[] }
  readonly remembered: Remembered
  nodes: number
}

function search(all: Groups, limits: Limits, effort: Effort): number[] {
  const prices = tightestPrices(all, limits)
  const groups = pricedGroups(all, limits, prices)
  const worthUpTo = [0]
  let worth = 0
  for (const group of groups) worthUpTo.push((worth += group.value))
  const current = all.map(() => leaveAlone)
  const best = { gain: 0, units: 0, cuts: 0, choices: [...current] }
  const run: Search = {
    limits,
    prices,
    groups,
    worthUpTo,
    current,
    best,
    remembered: { depths: [], turn: [] },
    nodes: 0
  }
  const holders = Math.min(limits.holders, unlimited)
  const leaders = Math.min(limits.leaders, unlimited)
  follow(run, 0, { gain: 0, units: 0, cuts: 0, lower: limits.lower, holders, leaders }, Infinity)
  effort.choices += run.nodes
  return [...run.best.choices]
}

/** Follows a half-made choice whose completions gain at most the bound. */
function follow(run: Search, depth: number, sums: Sums, bound: number): void {
  if (!canImprove(run.best, sums, bound)) return
  const group = run.groups[depth]
  if (group === undefined || sums.cuts === run.limits.cuts) {
    if (atLeast(sums.lower, 0)) keep(run, sums)
    return
  }
  if (++run.nodes > manyNodes && depth > 0 && makesNeedless(run.remembered, depth, sums, run.current)) return
  const { items, place } = group
  const beside = reach(run, sums, depth + 1, { cuts: 1, leaders: group.leads ? 1 : 0 })
  for (const { item, index, value } of items) {
    const bestReach = beside + value
    if (bestReach < run.best.gain - rounding) break
    if (!fits(run.limits, sums, item) || isWorseLast(run, sums, item)) continue
    run.current[place] = index
    follow(run, depth + 1, withItem(sums, item), bestReach)
  }
  run.current[place] = leaveAlone
  follow(run, depth + 1, sums, reach(run, sums, depth + 1, nothingTaken))
}

/** The last cut that may be made, and with it the choice gains less than the best: what is left buys nothing more. */
function isWorseLast({ limits, best }: Search, { gain, cuts }: Sums, item: Item): boolean {
  return cuts + item.cuts === limits.cuts && gain + item.gain < best.gain
}

function fits(limits: Limits, sums: Sums, { units, cuts, raises, leaders }: Item): boolean {
  if (sums.units + units > limits.units || sums.cuts + cuts > limits.cuts) return false
  return sums.leaders >= leaders && (!raises || sums.holders > 1)
}

/** What an item not yet in the sums takes at least of the limits. */
type Taken = Pick<Item, 'cuts' | 'leaders'>

const nothingTaken: Taken = { cuts: 0, leaders: 0 }

/**
 * The bound: no completion gains more than the sums so far, the allowance and the cuts left at their prices, and the worth of the
 * best groups from this depth on that the cuts and leaders left allow.
 */
function reach(run: Search, sums: Sums, depth: number, taken: Taken): number {
  const { limits, prices } = run
  const worth = worthFrom(run, depth, limits.cuts - sums.cuts - taken.cuts, sums.leaders - taken.leaders)
  const left = prices.dose * (limits.units - sums.units) + prices.cut * (limits.cuts - sums.cuts)
  return sums.gain + left + worth
}

function worthFrom(
  { groups, limits, worthUpTo }: Search,
  depth: number,
  cuts: number,
  leaders: number
): number {
  if (cuts <= 0) return 0
  if (limits.leaders === Infinity) {
    const last = Math.min(groups.length, depth + cuts)
    return (worthUpTo[last] ?? 0) - (worthUpTo[depth] ?? 0)
  }
  let worth = 0
  for (let at = depth; at < groups.length && cuts > 0; at++) {
    const group = groups[at]
    if (group === undefined || (group.leads && --leaders < 0)) continue
    worth += group.value
    cuts--
  }
  return worth
}

/** A branch that can at best tie goes on only if its dose, then its cuts, do not lose the tie already. */
function canImprove(best: Totals, { units, cuts }: Sums, bound: number): boolean {
  if (bound < best.gain - rounding) return false
  if (bound >= best.gain + rounding || units < best.units) return true
  return units === best.units && cuts <= best.cuts
}

function keep(run: Search, { gain, units, cuts }: Sums): void {
  const order = compareTotals({ gain, units, cuts }, run.best)
  if (order < 0 || (order === 0 && !isBefore(run.current, run.best.choices))) return
  run.best = { gain, units, cuts, choices: [...run.current] }
}
