import type { Groups, Item, Limits } from './choice'

/** An item with what it is worth at the price in use, and its number within its group. */
export interface Candidate {
  readonly item: Item
  readonly index: number
  readonly value: number
}

/** What a choice comes to that ignores the allowance but pays for its dose. */
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
function bestAtPrice(groups: Groups, limits: Limits, price: number): Relaxed {
  const picked: { readonly item: Item; readonly value: number }[] = []
  for (const items of groups) {
    let value = 0
    let best: Item | null = null
    for (const item of items) {
      const priced = item.gain - price * item.units
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
    gain += item.gain
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

/**
 * The price of dose at which the relaxed choice is worth least: the tightest bound of its kind. Between a choice that
 * takes more than the allowance and one that keeps it, the next price is the one at which both are worth the same; it is
 * the tightest once no other choice is worth more at it.
 */
export function tightestPrice(groups: Groups, limits: Limits): number {
  let over = bestAtPrice(groups, limits, 0)
  let within: Relaxed = { gain: 0, units: 0 }
  let price = 0
  for (let tried = 0; tried < mostPrices && over.units > limits.units; tried++) {
    price = (over.gain - within.gain) / (over.units - within.units)
    const best = bestAtPrice(groups, limits, price)
    if (best.gain - price * best.units <= within.gain - price * within.units + tolerance) break
    if (best.units > limits.units) over = best
    else within = best
  }
  return price
}

/** The groups in the order of the search: the most valuable first; equals stay in the inventory's order. */
export function pricedGroups(groups: Groups, limits: Limits, price: number): PricedGroup[] {
  const ordered: PricedGroup[] = []
  groups.forEach((group, place) => {
    const items: Candidate[] = []
    let leads = true
    group.forEach((item, index) => {
      if (item.units > limits.units) return
      insertByValue(items, { item, index, value: item.gain - price * item.units })
      leads &&= item.leaders > 0
    })
    const [first] = items
    if (first === undefined) return
    insertByValue(ordered, { place, items, value: Math.max(0, first.value), leads })
  })
  return ordered
}
