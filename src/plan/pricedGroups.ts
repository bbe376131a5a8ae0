import type { Groups, Item, Limits } from './choice'

/** An item with what it is worth at the price in use, and its number within its group. */
export interface Candidate {
  readonly item: Item
  readonly index: number
  readonly value: number
}

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

/** Dose of the best priced items of as many groups, and of as many competing leaders, as may be cut. */
function unitsAtPrice(groups: Groups, limits: Limits, price: number): number {
  const picked: Candidate[] = []
  let units = 0
  for (const items of groups) {
    let value = 0
    let best: Item | null = null
    for (const item of items) {
      const priced = item.gain - price * item.units
      if (priced <= value || item.units > limits.units) continue
      value = priced
      best = item
    }
    if (best === null) continue
    picked.push({ item: best, index: 0, value })
    units += best.units
  }
  const all = picked.length <= limits.cuts && picked.length <= limits.leaders
  return all ? units : unitsOfBest(picked, limits)
}

/** Of the items picked, the dose of those that are worth most and may be taken together. */
function unitsOfBest(picked: readonly Candidate[], limits: Limits): number {
  const ordered: Candidate[] = []
  for (const each of picked) insertByValue(ordered, each)
  let { cuts, leaders } = limits
  let units = 0
  for (const { item } of ordered) {
    if (cuts === 0) break
    if (item.leaders > 0 && --leaders < 0) continue
    units += item.units
    cuts--
  }
  return units
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

/** The price of dose at which the relaxed choice is worth least, by halving: the tightest bound of its kind. */
export function tightestPrice(groups: Groups, limits: Limits): number {
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
