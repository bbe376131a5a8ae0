import type { Groups, Limits } from './choice'

/**
 * The numbers that a search works on, in arrays that are used again: the items of all groups one after the other, the groups
 * in the order of the search, and a place for every depth. A tree has a few dozen of each, so that an object for each of them
 * would be most of what its choice takes.
 */
export interface SearchSpace {
  /** By item, as the groups were given. */
  gain: Float64Array
  units: Float64Array
  lower: Float64Array
  /** What it is worth once its dose and its cuts are paid for. */
  value: Float64Array
  cuts: Int32Array
  leaders: Int32Array
  raises: Uint8Array
  /** By group as given: its first item; one more for the end. */
  first: Int32Array
  /** The items that are searched, group by group, the most valuable of each first. */
  order: Int32Array
  /** By group in the order of the search: its place among those given, where its items stand in `order`, and its worth. */
  place: Int32Array
  from: Int32Array
  to: Int32Array
  /** What the best of its items may add: 0 or more. */
  worth: Float64Array
  /** Every item cuts a competing leader. */
  leads: Uint8Array
  /** Sum of the worth of the groups before. */
  worthUpTo: Float64Array
  /** By depth: the next item to look at, and what is gained, used and left of each limit there. */
  next: Int32Array
  bound: Float64Array
  beside: Float64Array
  gained: Float64Array
  used: Float64Array
  made: Int32Array
  room: Float64Array
  holders: Int32Array
  leadersLeft: Int32Array
  /** Groups picked at a price, the most valuable first, and what the item of each is. */
  picked: Int32Array
  pickedValue: Float64Array
  /** How many groups and items there is room for. */
  groupRoom: number
  itemRoom: number
}

function makeSpace(groups: number, items: number): SearchSpace {
  const depths = groups + 1
  return {
    gain: new Float64Array(items),
    units: new Float64Array(items),
    lower: new Float64Array(items),
    value: new Float64Array(items),
    cuts: new Int32Array(items),
    leaders: new Int32Array(items),
    raises: new Uint8Array(items),
    first: new Int32Array(depths),
    order: new Int32Array(items),
    place: new Int32Array(depths),
    from: new Int32Array(depths),
    to: new Int32Array(depths),
    worth: new Float64Array(depths),
    leads: new Uint8Array(depths),
    worthUpTo: new Float64Array(depths),
    next: new Int32Array(depths),
    bound: new Float64Array(depths),
    beside: new Float64Array(depths),
    gained: new Float64Array(depths),
    used: new Float64Array(depths),
    made: new Int32Array(depths),
    room: new Float64Array(depths),
    holders: new Int32Array(depths),
    leadersLeft: new Int32Array(depths),
    picked: new Int32Array(depths),
    pickedValue: new Float64Array(depths),
    groupRoom: groups,
    itemRoom: items
  }
}

/** The space that is free; one search at a time uses it, and one that begins while another rests makes a space of its own. */
let free: SearchSpace | null = makeSpace(64, 512)

/** A space with the items of the groups in it. */
export function takeSpace(groups: Groups): SearchSpace {
  let items = 0
  for (const group of groups) items += group.length
  const space =
    free !== null && free.groupRoom >= groups.length && free.itemRoom >= items
      ? free
      : makeSpace(Math.max(64, groups.length * 2), Math.max(512, items * 2))
  free = null
  let at = 0
  for (let group = 0; group < groups.length; group++) {
    space.first[group] = at
    for (const item of groups[group] ?? []) {
      space.gain[at] = item.gain
      space.units[at] = item.units
      space.lower[at] = item.lower
      space.cuts[at] = item.cuts
      space.leaders[at] = item.leaders
      space.raises[at] = item.raises ? 1 : 0
      at++
    }
  }
  space.first[groups.length] = at
  return space
}

/** Gives a space back once its search is over. */
export function giveBack(space: SearchSpace): void {
  free = space
}

/** A number of an array that is long enough. */
export function at(numbers: Float64Array | Int32Array | Uint8Array, index: number): number {
  return numbers[index] as number
}

/** What a unit of dose and a cut cost in a choice that ignores the limits on both. */
export interface Prices {
  readonly dose: number
  readonly cut: number
}

/** Puts the groups in the order of the search: the most valuable first; equals stay in the inventory's order. Gives how many. */
export function orderGroups(space: SearchSpace, count: number, limits: Limits, prices: Prices): number {
  const { gain, units, cuts, leaders, value, order, first } = space
  let ordered = 0
  let end = 0
  for (let group = 0; group < count; group++) {
    const from = end
    let leads = 1
    for (let item = at(first, group); item < at(first, group + 1); item++) {
      if (at(units, item) > limits.units) continue
      const worth = at(gain, item) - prices.dose * at(units, item) - prices.cut * at(cuts, item)
      value[item] = worth
      if (at(leaders, item) === 0) leads = 0
      let place = end++
      for (; place > from && at(value, at(order, place - 1)) < worth; place--)
        order[place] = at(order, place - 1)
      order[place] = item
    }
    if (end > from) putGroup(space, ordered++, group, from, end, leads)
  }
  space.worthUpTo[0] = 0
  for (let group = 0; group < ordered; group++)
    space.worthUpTo[group + 1] = at(space.worthUpTo, group) + at(space.worth, group)
  return ordered
}

function putGroup(
  { order, value, place, from, to, worth, leads }: SearchSpace,
  ordered: number,
  group: number,
  begins: number,
  ends: number,
  leading: number
): void {
  const most = Math.max(0, at(value, at(order, begins)))
  let put = ordered
  for (; put > 0 && at(worth, put - 1) < most; put--) {
    place[put] = at(place, put - 1)
    from[put] = at(from, put - 1)
    to[put] = at(to, put - 1)
    worth[put] = at(worth, put - 1)
    leads[put] = at(leads, put - 1)
  }
  place[put] = group
  from[put] = begins
  to[put] = ends
  worth[put] = most
  leads[put] = leading
}
