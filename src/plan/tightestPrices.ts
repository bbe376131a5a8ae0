import type { Limits } from './choice'
import { at, type Prices, type SearchSpace } from './searchSpace'

/** What a choice comes to that ignores the allowance but pays for its dose; its gain is what is left once its cuts are paid. */
interface Relaxed {
  readonly gain: number
  readonly units: number
}

/** What the best priced items of as many groups, and of as many competing leaders, as may be cut come to. */
function bestAtPrice(space: SearchSpace, count: number, limits: Limits, dose: number, cut: number): Relaxed {
  const { gain, units, cuts, leaders, picked } = space
  const found = pickGroups(space, count, limits, dose, cut)
  let cutsLeft = limits.cuts
  let leadersLeft = limits.leaders
  let gained = 0
  let used = 0
  for (let place = 0; place < found && cutsLeft > 0; place++) {
    const item = at(picked, place)
    if (at(leaders, item) > 0 && --leadersLeft < 0) continue
    gained += at(gain, item) - cut * at(cuts, item)
    used += at(units, item)
    cutsLeft--
  }
  return { gain: gained, units: used }
}

/** The best item of each group at a price, the most valuable first; gives how many there are. */
function pickGroups(space: SearchSpace, count: number, limits: Limits, dose: number, cut: number): number {
  const { gain, units, cuts, first, picked, pickedValue } = space
  let found = 0
  for (let group = 0; group < count; group++) {
    let value = 0
    let best = -1
    for (let item = at(first, group); item < at(first, group + 1); item++) {
      const priced = at(gain, item) - dose * at(units, item) - cut * at(cuts, item)
      if (priced <= value || at(units, item) > limits.units) continue
      value = priced
      best = item
    }
    if (best < 0) continue
    let place = found++
    for (; place > 0 && at(pickedValue, place - 1) < value; place--) {
      picked[place] = at(picked, place - 1)
      pickedValue[place] = at(pickedValue, place - 1)
    }
    picked[place] = best
    pickedValue[place] = value
  }
  return found
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
function tightestDose(space: SearchSpace, count: number, limits: Limits, cut: number): Tightest {
  let over = bestAtPrice(space, count, limits, 0, cut)
  let within: Relaxed = { gain: 0, units: 0 }
  let dose = 0
  let { gain } = over
  for (let tried = 0; tried < mostPrices && over.units > limits.units; tried++) {
    dose = (over.gain - within.gain) / (over.units - within.units)
    const best = bestAtPrice(space, count, limits, dose, cut)
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
export function tightestPrices(space: SearchSpace, count: number, limits: Limits): Prices {
  const free = tightestDose(space, count, limits, 0)
  let most = 0
  for (let item = 0; item < at(space.first, count); item++) {
    const cuts = at(space.cuts, item)
    if (cuts > 1) most = Math.max(most, at(space.gain, item) / cuts)
  }
  let best = free
  let [low, high] = [0, most]
  for (let step = 0; step < cutSteps && most > 0; step++) {
    const one = tightestDose(space, count, limits, low + (high - low) / 3)
    const other = tightestDose(space, count, limits, high - (high - low) / 3)
    if (one.bound <= other.bound) high = other.cut
    else low = one.cut
    if (one.bound < best.bound) best = one
    if (other.bound < best.bound) best = other
  }
  return best
}
