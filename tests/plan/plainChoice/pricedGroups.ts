import type { Groups, Item, Limits } from '../../../src/plan/choice'

/** What a unit of dose and a cut cost in a choice that ignores the limits on both. */
export interface Prices {
  readonly dose: number
  readonly cut: number
}

/** What an item is worth once its dose and its cuts are paid for. */
export function worthAt({ gain, units, cuts }: Item, { dose, cut }: Prices): number {
  return gain - dose * units - cut * cuts
}

/** An item with what it is worth at the prices in use, and its number within its group. */
export interface Candidate {
  readonly item: Item
  readonly index: number
  readonly value: number
}

/** What a choice comes to that ignores the allowance but pays for its dose; its gain is what is left once its cuts are paid. */
type Relaxed = Pick<Item, 'gain' | 'units'>

/** A group as it is searched: its items, the most valuable first. */
export interface PricedGroup {
  /** Its place among the groups given. */
  readonly place: number
  readonly items: readonly Candidate[]
  /** What the best of its items may add: 0 or more. */
  readonly value: number
  /** Every item cuts a competing leader. */
  readonly leads: boolean
}

/** What the best priced items of as many groups, and of as many competing leaders, as may be cut come to. */
function bestAtPrice(groups: Groups, limits: Limits, prices: Prices): Relaxed {
  const picked: { readonly item: Item; readonly value: number }[] = []
  for (const items of groups) {
    let value = 0
    let best: Item | null = null
    for (const item of items) {
      const priced = worthAt(item, prices)
      if (priced <= value || item.units > limits.units) continue
      value = priced
      best = item
    }
    if (best !== null) insertByValue(picked, { item: best, value })
  }
  let { cuts, leaders } = limits
  let gain = 0
  let units = 0
  for (const { item } of picked) {
    if (cuts === 0) break
    if (item.leaders > 0 && --leaders < 0) continue
    gain += item.gain - prices.cut * item.cuts
    units += item.units
    cuts--
  }
  return { gain, units }
}

/** Puts an entry after those that are worth as much: a short list, so shifting is quicker than sorting. */
function insertByValue<T extends { readonly value: number }>(ordered: T[], entry: T): void {
  let at = ordered.length
  for (let before = ordered[at - 1]; before !== undefined && before.value < entry.value; at--) {
    ordered[at] = before
    before = ordered[at - 2]
  }
  ordered[at] = entry
}

/** Worth that rounding may add to a choice, in units of gain. */
const tolerance = 0.5

/** Prices tried at most; a few find the tightest one. */
const mostPrices = 30

/** The prices at which the relaxed choice is worth least, and what it is worth: no choice gains more. */
interface Tightest extends Prices {
  readonly bound: number
}

/**
 * The price of dose at which the relaxed choice is worth least: the tightest bound of its kind. Between a choice that
 * takes more than the allowance and one that keeps it, the next price is the one at which both are worth the same; it is
 * the tightest once no other choice is worth more at it.
 */
function tightestDose(groups: Groups, limits: Limits, cut: number): Tightest {
  let over = bestAtPrice(groups, limits, { dose: 0, cut })
  let within: Relaxed = { gain: 0, units: 0 }
  let dose = 0
  let { gain } = over
  for (let tried = 0; tried < mostPrices && over.units > limits.units; tried++) {
    dose = (over.gain - within.gain) / (over.units - within.units)
    const best = bestAtPrice(groups, limits, { dose, cut })
    gain = best.gain + dose * (limits.units - best.units)
    if (best.gain - dose * best.units <= within.gain - dose * within.units + tolerance) break
    if (best.units > limits.units) over = best
    else within = best
  }
  return { dose, cut, bound: gain + cut * limits.cuts }
}

/** Steps in which the price of a cut is narrowed down, each to two thirds of what was left. */
const cutSteps = 12

/**
 * The prices at which the relaxed choice is worth least. A cut has a price only where an item takes several, as limbs with
 * limbs on them do: the number of groups that may be cut is kept in any case.
 */
export function tightestPrices(groups: Groups, limits: Limits): Prices {
  const free = tightestDose(groups, limits, 0)
  let most = 0
  for (const items of groups)
    for (const { gain, cuts } of items) if (cuts > 1) most = Math.max(most, gain / cuts)
  let best = free
  let [low, high] = [0, most]
  for (let step = 0; step < cutSteps && most > 0; step++) {
    const one = tightestDose(groups, limits, low + (high - low) / 3)
    const other = tightestDose(groups, limits, high - (high - low) / 3)
    if (one.bound <= other.bound) high = other.cut
    else low = one.cut
    for (const tried of [one, other]) if (tried.bound < best.bound) best = tried
  }
  return best
}

/** The groups in the order of the search: the most valuable first; equals stay in the inventory's order. */
export function pricedGroups(groups: Groups, limits: Limits, prices: Prices): PricedGroup[] {
  const ordered: PricedGroup[] = []
  groups.forEach((group, place) => {
    const items: Candidate[] = []
    let leads = true
    group.forEach((item, index) => {
      if (item.units > limits.units) return
      insertByValue(items, { item, index, value: worthAt(item, prices) })
      leads &&= item.leaders > 0
    })
    const [first] = items
    if (first === undefined) return
    insertByValue(ordered, { place, items, value: Math.max(0, first.value), leads })
  })
  return ordered
}
