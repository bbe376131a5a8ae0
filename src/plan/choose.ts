import { atLeast } from '../formulas/boundary'
import {
  compareTotals,
  isBefore,
  leaveAlone,
  noEffort,
  type Effort,
  type Groups,
  type Item,
  type Limits
} from './choice'
import { makesNeedless, type Remembered } from './remembered'
import { at, giveBack, orderGroups, takeSpace, type Prices, type SearchSpace } from './searchSpace'
import { tightestPrices } from './tightestPrices'
import { atOnce, type InTurns } from './turns'

/**
 * The exact choice of a visit: one item per group so that the sum of gains is greatest under the tree's allowance, the
 * number of cuts, the competing leaders cut at once, the foliage that has to stay low, and the crown base that has to
 * stay where it is.
 *
 * Gains and doses are whole numbers, so that ties are ties whatever the order of the sums and the units of the survey.
 * Ties go to the lower dose, then to fewer cuts, then to the limb that comes first in the inventory.
 *
 * Method: depth-first branch and bound. The bound (`reach`) relaxes the allowance with one price per unit of dose
 * (Lagrange) and keeps the number of groups cut and of competing leaders. Where items take several cuts, the number of cuts
 * has a price as well. The search keeps its place in a space of numbers, so that it can rest; `tests/plan/plainChoice` is the
 * same search as it reads best.
 */

/**
 * The index of the item chosen in each group, or `leaveAlone`. The groups stand in the inventory's order. What was looked at
 * is added to the effort.
 */
export function choose(groups: Groups, limits: Limits, effort: Effort = noEffort()): readonly number[] {
  return atOnce(choosing(groups, limits, effort))
}

/** The same in turns. */
export function* choosing(
  groups: Groups,
  limits: Limits,
  effort: Effort = noEffort()
): InTurns<readonly number[]> {
  const begun = beginChoice(groups, limits, effort)
  while (begun.chosen === null) {
    yield
    goOn(begun)
  }
  return begun.chosen
}

/** A choice on the way: what was chosen, once that is known. */
interface Begun {
  chosen: readonly number[] | null
  readonly search: Search | null
  readonly effort: Effort
}

/** Begins a choice with its first turn; most are made in it, and nothing has to rest. */
export function beginChoice(groups: Groups, limits: Limits, effort: Effort = noEffort()): Begun {
  const chosen = unhindered(groups, limits)
  const begun = { chosen, search: chosen === null ? beginSearch(groups, limits) : null, effort }
  goOn(begun)
  return begun
}

/** Half-made choices that are looked at before the search rests: some thousandths of a second. */
const aTurn = 2000

/** Goes on with a choice for a turn. */
export function goOn(begun: Begun): void {
  const { search, effort } = begun
  if (search === null || begun.chosen !== null || !follow(search, search.nodes + aTurn)) return
  effort.choices += search.nodes
  begun.chosen = search.best.choices
  giveBack(search.space)
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

/** Stands for a limit that there is not: a small whole number. */
const unlimited = 1e6

/** From here on a search remembers the half-made choices it has followed. */
const manyNodes = 5000

interface Best {
  gain: number
  units: number
  cuts: number
  choices: readonly number[]
}

/**
 * One search. It is made as a literal and not from a class, as the engine forgets the shape of a class without an instance
 * at every tidying up of the memory, and what it compiled for it.
 */
interface Search {
  readonly limits: Limits
  readonly prices: Prices
  readonly space: SearchSpace
  /** How many groups are searched. */
  readonly count: number
  /** The item taken of each group, as the groups were given. */
  readonly current: number[]
  readonly best: Best
  readonly remembered: Remembered
  nodes: number
  /** How many groups are decided; below 0 once all was looked at. */
  depth: number
  /** The half-made choice at this depth was not looked at yet. */
  isNew: boolean
}

function beginSearch(groups: Groups, limits: Limits): Search {
  const space = takeSpace(groups)
  const prices = tightestPrices(space, groups.length, limits)
  const count = orderGroups(space, groups.length, limits, prices)
  const current = groups.map(() => leaveAlone)
  space.gained[0] = 0
  space.used[0] = 0
  space.made[0] = 0
  space.room[0] = limits.lower
  space.holders[0] = Math.min(limits.holders, unlimited)
  space.leadersLeft[0] = Math.min(limits.leaders, unlimited)
  space.bound[0] = Infinity
  return {
    limits,
    prices,
    space,
    count,
    current,
    best: { gain: 0, units: 0, cuts: 0, choices: [...current] },
    remembered: { depths: [], turn: [] },
    nodes: 0,
    depth: 0,
    isNew: true
  }
}

/** Follows half-made choices, depth first, up to so many; true once all were followed that may be the best. */
function follow(run: Search, upTo: number): boolean {
  while (run.depth >= 0) {
    if (run.isNew) {
      if (run.nodes >= upTo) return false
      run.isNew = false
      if (isOver(run)) {
        run.depth--
        continue
      }
    }
    takeNext(run)
  }
  return true
}

/** Looks at a half-made choice for the first time: whether it ends here, or is not worth going on with. */
function isOver(run: Search): boolean {
  const { space, depth, limits, count } = run
  if (!canImprove(run)) return true
  if (depth === count || at(space.made, depth) === limits.cuts) {
    if (atLeast(at(space.room, depth), 0)) keep(run)
    return true
  }
  if (++run.nodes > manyNodes && depth > 0 && makesNeedless(run.remembered, space, depth, run.current))
    return true
  space.next[depth] = at(space.from, depth)
  space.beside[depth] = reach(run, 1, at(space.leads, depth))
  return false
}

/** Goes on with the next item of the group at this depth, after the last of them without any, and then back. */
function takeNext(run: Search): void {
  const { space, depth, current } = run
  const end = at(space.to, depth)
  const place = at(space.place, depth)
  let next = at(space.next, depth)
  if (next > end) {
    run.depth--
    return
  }
  const beside = at(space.beside, depth)
  for (; next < end; next++) {
    const item = at(space.order, next)
    const bestReach = beside + at(space.value, item)
    if (bestReach < run.best.gain - rounding) break
    if (!fits(run, item) || isWorseLast(run, item)) continue
    space.next[depth] = next + 1
    current[place] = item - at(space.first, place)
    goDeeper(run, item, bestReach)
    return
  }
  space.next[depth] = end + 1
  current[place] = leaveAlone
  goDeeper(run, -1, reach(run, 0, 0))
}

/** The half-made choice with an item taken as well, or with none, whose completions gain at most the bound. */
function goDeeper(run: Search, item: number, bound: number): void {
  const { space, depth } = run
  const { gained, used, made, room, holders, leadersLeft } = space
  const isTaken = item >= 0
  gained[depth + 1] = at(gained, depth) + (isTaken ? at(space.gain, item) : 0)
  used[depth + 1] = at(used, depth) + (isTaken ? at(space.units, item) : 0)
  made[depth + 1] = at(made, depth) + (isTaken ? at(space.cuts, item) : 0)
  room[depth + 1] = at(room, depth) + (isTaken ? at(space.lower, item) : 0)
  holders[depth + 1] = at(holders, depth) - (isTaken ? at(space.raises, item) : 0)
  leadersLeft[depth + 1] = at(leadersLeft, depth) - (isTaken ? at(space.leaders, item) : 0)
  space.bound[depth + 1] = bound
  run.depth = depth + 1
  run.isNew = true
}

/** The last cut that may be made, and with it the choice gains less than the best: what is left buys nothing more. */
function isWorseLast({ limits, best, space, depth }: Search, item: number): boolean {
  if (at(space.made, depth) + at(space.cuts, item) !== limits.cuts) return false
  return at(space.gained, depth) + at(space.gain, item) < best.gain
}

function fits({ limits, space, depth }: Search, item: number): boolean {
  if (at(space.used, depth) + at(space.units, item) > limits.units) return false
  if (at(space.made, depth) + at(space.cuts, item) > limits.cuts) return false
  if (at(space.leadersLeft, depth) < at(space.leaders, item)) return false
  return at(space.raises, item) === 0 || at(space.holders, depth) > 1
}

/**
 * The bound: no completion gains more than the sums so far, the allowance and the cuts left at their prices, and the worth of the
 * best groups after this depth that the cuts and leaders left allow once an item takes at least so many.
 */
function reach(run: Search, cuts: number, leaders: number): number {
  const { limits, prices, space, depth } = run
  const made = at(space.made, depth)
  const worth = worthFrom(run, limits.cuts - made - cuts, at(space.leadersLeft, depth) - leaders)
  const left = prices.dose * (limits.units - at(space.used, depth)) + prices.cut * (limits.cuts - made)
  return at(space.gained, depth) + left + worth
}

function worthFrom({ space, depth, count, limits }: Search, cutsLeft: number, leadersLeft: number): number {
  const { worthUpTo, worth, leads } = space
  const from = depth + 1
  if (cutsLeft <= 0) return 0
  if (limits.leaders === Infinity) {
    const last = Math.min(count, from + cutsLeft)
    return at(worthUpTo, last) - at(worthUpTo, from)
  }
  let sum = 0
  let cuts = cutsLeft
  let leaders = leadersLeft
  for (let group = from; group < count && cuts > 0; group++) {
    if (at(leads, group) === 1 && --leaders < 0) continue
    sum += at(worth, group)
    cuts--
  }
  return sum
}

/** A branch that can at best tie goes on only if its dose, then its cuts, do not lose the tie already. */
function canImprove({ best, space, depth }: Search): boolean {
  const bound = at(space.bound, depth)
  const units = at(space.used, depth)
  if (bound < best.gain - rounding) return false
  if (bound >= best.gain + rounding || units < best.units) return true
  return units === best.units && at(space.made, depth) <= best.cuts
}

function keep({ best, space, depth, current }: Search): void {
  const gain = at(space.gained, depth)
  const units = at(space.used, depth)
  const cuts = at(space.made, depth)
  const order = compareTotals({ gain, units, cuts }, best)
  if (order < 0 || (order === 0 && !isBefore(current, best.choices))) return
  best.gain = gain
  best.units = units
  best.cuts = cuts
  best.choices = [...current]
}
