import { shareBelow } from '../formulas/crown'
import type { Effort, Item, Limits } from './choice'
import { carried, foliageFrom, type GrowingLimb } from './growingLimb'
import { isBeyond } from './applyCut'
import type { AssessedLimb } from './assessLimb'
import type { PossibleCut } from './possibleCut'

/** A possible cut with what the choice needs to know of it. */
export interface WeighedCut extends Item {
  readonly cut: PossibleCut
}

/**
 * A limb on the trunk with the limbs on it, as one item of the choice: what becomes of every limb of the group. A limb
 * beyond its parent's cut is gone and its foliage is not counted twice.
 */
export interface FamilyItem extends Item {
  /** The cut of each limb that is cut. */
  readonly cutsMade: readonly (readonly [GrowingLimb, PossibleCut])[]
  /** The limb's own cut, or null where it is retained. */
  readonly own: PossibleCut | null
}

/** Tenths of a thousandth of a squared point: fine enough to tell plans apart, coarse enough to be exact. */
const gainUnits = 1e4
/** Doses in billionths of the tree's foliage. */
export const doseUnits = 1e9

function loss(points: number): number {
  return Math.round(points * points * gainUnits)
}

/** How the lower-two-thirds rule weighs foliage: share kept low counts for, every share counts against. */
export interface LowerRule {
  /** Below this height foliage is in the lower two-thirds. */
  line: number
  /** Share that has to be low. */
  keep: number
}

function balance(limb: GrowingLimb, share: number, tip: number, rule: LowerRule): number {
  return share * (shareBelow(foliageFrom(limb, tip), tip, rule.line) - rule.keep)
}

/** Change of the balance when a cut takes its dose. */
function balanceChange(limb: GrowingLimb, cut: PossibleCut, rule: LowerRule): number {
  const present = limb.share * carried(limb)
  const before = balance(limb, present, limb.tip, rule)
  return cut.kind === 'remove' ? -before : balance(limb, present - cut.dose, cut.tipAfter, rule) - before
}

/** A limb's cuts with what the choice needs of them; `holds` where the limb holds the crown base. */
export function weighCuts(assessed: AssessedLimb, rule: LowerRule, holds: boolean): WeighedCut[] {
  const { limb, leads, cuts } = assessed
  const retained = loss(assessed.nextPriority)
  return cuts.map((cut) => ({
    cut,
    gain: retained - loss(cut.nextPriority),
    units: Math.round(cut.dose * doseUnits),
    cuts: 1,
    lower: balanceChange(limb, cut, rule),
    raises: holds && cut.kind === 'remove',
    leaders: leads ? 1 : 0
  }))
}

/** The limbs of a tree as they were assessed. */
export type Assessments = ReadonlyMap<GrowingLimb, AssessedLimb>

/** Prices of a unit of dose and of a cut, and what each limb's family is worth at most at them. */
export interface FamilyPrices {
  readonly price: number
  readonly perCut: number
  readonly values: ReadonlyMap<GrowingLimb, number>
  /** No choice for the whole tree gains more. */
  readonly bound: number
}

/** Which ways to treat a family are worth following; a way is dropped only where it cannot be part of the best choice. */
export interface Following {
  readonly limits: Pick<Limits, 'units' | 'cuts' | 'leaders'>
  readonly prices: FamilyPrices
  /** How much less than its best a family may be worth at the prices. */
  readonly gap: number
  /** Ways kept at most at a time, to find a good choice quickly; Infinity to miss none. */
  readonly most: number
  readonly effort: Effort
}

/** What a family is made from: the assessed limbs, the rule on foliage kept low, and what is worth following. */
interface FamilyRules {
  readonly all: Assessments
  readonly rule: LowerRule
  readonly following: Following
}

/** What may be done with a limb that carries limbs, leaving them all alone left out. */
export function familyItems(root: AssessedLimb, rules: FamilyRules, holds: boolean): FamilyItem[] {
  return family(root, rules, holds).filter(({ cuts }) => cuts > 0)
}

/** Leaving all alone comes first. */
function family(assessed: AssessedLimb, rules: FamilyRules, holds: boolean): FamilyItem[] {
  const { limb } = assessed
  const own = weighCuts(assessed, rules.rule, holds).map((weighed): FamilyItem => {
    const { cut, gain, units, cuts, lower, raises, leaders } = weighed
    return { gain, units, cuts, lower, raises, leaders, cutsMade: [[limb, cut]], own: cut }
  })
  const ways = [untouched, ...own].flatMap((item) => withChildren(item, limb, rules))
  return undominated(ways, rules.following)
}

/** What a way is worth at the prices. */
function pricedValue({ gain, units, cuts }: FamilyItem, { price, perCut }: FamilyPrices): number {
  return gain - price * units - perCut * cuts
}

/** Within the limits, and near enough to the best with what the rest may still add. */
function isFollowed(
  item: FamilyItem,
  rest: number,
  best: number,
  { limits, prices, gap }: Following
): boolean {
  if (item.units > limits.units || item.cuts > limits.cuts || item.leaders > limits.leaders) return false
  return pricedValue(item, prices) + rest >= best - gap
}

const untouched: FamilyItem = {
  gain: 0,
  units: 0,
  cuts: 0,
  lower: 0,
  raises: false,
  leaders: 0,
  cutsMade: [],
  own: null
}

/** Every way to treat the limbs on a limb, given its own cut; none that takes away the limb to which it is cut back. */
function withChildren(item: FamilyItem, limb: GrowingLimb, rules: FamilyRules): FamilyItem[] {
  const { all, following } = rules
  const { values } = following.prices
  const best = values.get(limb) ?? 0
  const staying: AssessedLimb[] = []
  let relief = 0
  let rest = 0
  for (const child of limb.children) {
    const assessed = all.get(child)
    if (assessed === undefined) continue
    if (goesWith(child, limb, item.own)) relief += reliefOf(assessed, all)
    else {
      staying.push(assessed)
      rest += values.get(child) ?? 0
    }
  }
  let combined: FamilyItem[] = [{ ...item, gain: item.gain + relief }]
  for (const child of staying) {
    rest -= values.get(child.limb) ?? 0
    const items = family(child, rules, false)
    const joint: FamilyItem[] = []
    for (const left of combined)
      for (const right of items) {
        if (item.own?.lateral === child.limb && right.own?.kind === 'remove') continue
        const way = joined(left, right)
        if (isFollowed(way, rest, best, following)) joint.push(way)
      }
    combined = undominated(joint, following)
  }
  return combined
}

function joined(left: FamilyItem, right: FamilyItem): FamilyItem {
  return {
    gain: left.gain + right.gain,
    units: left.units + right.units,
    cuts: left.cuts + right.cuts,
    lower: left.lower + right.lower,
    raises: left.raises,
    leaders: left.leaders + right.leaders,
    cutsMade: [...left.cutsMade, ...right.cutsMade],
    own: left.own
  }
}

/** Priorities that vanish with a limb that goes with its parent. */
export function reliefOf(assessed: AssessedLimb, all: Assessments): number {
  let relief = loss(assessed.nextPriority)
  for (const child of assessed.limb.children) {
    const below = all.get(child)
    if (below !== undefined) relief += reliefOf(below, all)
  }
  return relief
}

/** A limb goes with its parent's cut: it starts beyond it, by heights along the parent. */
export function goesWith(child: GrowingLimb, parent: GrowingLimb, cut: PossibleCut | null): boolean {
  return cut !== null && isBeyond(child, parent, cut)
}

/** Drops items that another beats or equals in every respect; at most so many are kept, the best at the prices. */
function undominated(items: readonly FamilyItem[], { most, prices, effort }: Following): FamilyItem[] {
  if (items.length <= 1) return [...items]
  const kept: FamilyItem[] = []
  // The greatest gain first: what beats an item stands before it, and of equals the one that was given first.
  for (const item of [...items].sort((a, b) => b.gain - a.gain || a.units - b.units || a.cuts - b.cuts)) {
    const beatenBy = kept.findIndex((other) => beats(other, item))
    effort.comparisons += beatenBy < 0 ? kept.length : beatenBy + 1
    if (beatenBy < 0) kept.push(item)
  }
  if (kept.length <= most) return kept
  return kept.sort((a, b) => pricedValue(b, prices) - pricedValue(a, prices)).slice(0, most)
}

function beats(a: FamilyItem, b: FamilyItem): boolean {
  const removes = a.own?.kind === 'remove' && b.own?.kind !== 'remove'
  const milder = a.units <= b.units && a.cuts <= b.cuts && a.leaders <= b.leaders
  return !removes && milder && a.gain >= b.gain && a.lower >= b.lower
}
