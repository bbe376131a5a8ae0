import { shareBelow } from '../formulas/crown'
import { cutAlong } from '../formulas/cuts'
import type { Item } from './choice'
import type { Option } from './options'
import { alongParent, carried, type Work } from './work'

/**
 * A limb on the trunk with the limbs on it, as one item of the choice: what becomes of every limb of the group. A limb
 * beyond its parent's cut is gone and its foliage is not counted twice.
 */
export interface FamilyItem extends Item {
  /** The cut of each limb that is cut. */
  cutsMade: readonly (readonly [Work, Option])[]
  /** The limb's own cut, or null where it is retained. */
  own: Option | null
  /** Room left for the rule that half of a limb's foliage stays in its inner two-thirds. */
  inner: number
}

/** Tenths of a thousandth of a squared point: fine enough to tell plans apart, coarse enough to be exact. */
const gainUnits = 1e4
/** Room below one unit of gain for what was asked for, so that it only settles ties in structure. */
const askedUnits = 1024
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
  /** The same goal for the inner two-thirds of a limb that carries limbs. */
  inner: number
}

/** Where a limb's foliage starts when its tip is here: as measured, otherwise at its origin. */
export function foliageFrom(work: Work, tip: number): number {
  const measured = work.limb.lowestFoliage
  return measured !== null && measured < tip ? measured : work.origin
}

function balance(work: Work, share: number, tip: number, rule: LowerRule): number {
  return share * (shareBelow(foliageFrom(work, tip), tip, rule.line) - rule.keep)
}

/** Change of the balance when an option takes its dose. */
function balanceChange(work: Work, option: Option, rule: LowerRule): number {
  const present = work.share * carried(work)
  const before = balance(work, present, work.tip, rule)
  return option.kind === 'remove'
    ? -before
    : balance(work, present - option.dose, option.tipAfter, rule) - before
}

/** Fills in what the choice needs of a limb's options; `holds` where the limb holds the crown base. */
export function weigh(work: Work, rule: LowerRule, holds: boolean): readonly Option[] {
  const retained = loss(work.nextPriority)
  for (const option of work.options) {
    option.gain = (retained - loss(option.nextPriority)) * askedUnits + option.asked
    option.units = Math.round(option.dose * doseUnits)
    option.lower = balanceChange(work, option, rule)
    option.raises = holds && option.kind === 'remove'
    option.leaders = work.leads ? 1 : 0
  }
  return work.options
}

/** What may be done with a limb that carries limbs, leaving them all alone left out. */
export function familyItems(work: Work, rule: LowerRule, holds: boolean): FamilyItem[] {
  return family(work, rule, holds).slice(1)
}

/** Leaving all alone comes first. */
function family(work: Work, rule: LowerRule, holds: boolean): FamilyItem[] {
  const own = weigh(work, rule, holds).map((option): FamilyItem => {
    const { gain, units, cuts, lower, raises, leaders } = option
    return { gain, units, cuts, lower, raises, leaders, cutsMade: [[work, option]], own: option, inner: 0 }
  })
  return undominated([untouched(), ...own].flatMap((item) => withChildren(item, work, rule)))
}

function untouched(): FamilyItem {
  return {
    gain: 0,
    units: 0,
    cuts: 0,
    lower: 0,
    raises: false,
    leaders: 0,
    cutsMade: [],
    own: null,
    inner: 0
  }
}

/** Every way to treat the limbs on a limb, given its own cut; none that strips its inside. */
function withChildren(item: FamilyItem, work: Work, rule: LowerRule): FamilyItem[] {
  const inside = innerRule(work, item.own, rule.inner)
  let combined: FamilyItem[] = [{ ...item, inner: inside.room }]
  const most = Math.round(work.share * doseUnits)
  for (const child of work.children) {
    if (child.gone) continue
    if (goesWith(child, work, item.own)) {
      const relief = reliefOf(child)
      for (const each of combined) each.gain += relief
      continue
    }
    const items = family(child, rule, false)
    const weight = inside.weight(child)
    combined = undominated(
      combined.flatMap((left) => items.map((right) => joined(left, right, most, weight)))
    )
  }
  return combined.filter(({ inner }) => inner >= -1e-9)
}

function joined(left: FamilyItem, right: FamilyItem, most: number, weight: number): FamilyItem {
  return {
    gain: left.gain + right.gain,
    units: Math.min(left.units + right.units, most),
    cuts: left.cuts + right.cuts,
    lower: left.lower + right.lower,
    raises: left.raises,
    leaders: left.leaders + right.leaders,
    cutsMade: [...left.cutsMade, ...right.cutsMade],
    own: left.own,
    inner: left.inner - (right.units / doseUnits) * weight
  }
}

/** Priorities that vanish with a limb that goes with its parent. */
function reliefOf(work: Work): number {
  let relief = loss(work.nextPriority) * askedUnits
  for (const child of work.children) if (!child.gone) relief += reliefOf(child)
  return relief
}

/** Marks the limbs that go with a limb's cut. */
export function takeChildren(work: Work): void {
  for (const child of work.children) {
    if (child.gone) continue
    if (work.withParent || goesWith(child, work, work.chosen)) {
      child.withParent = true
      child.chosen = null
    }
    takeChildren(child)
  }
}

/**
 * The rule that half of a limb's foliage stays in its inner two-thirds, where the limbs on it are known: the room there
 * is with a cut of its own, and how much of it each unit of dose on one of its limbs uses. A limb that is short of it
 * before cutting may not get worse.
 *
 * Source: half of the foliage in the lower two-thirds of each limb, ANSI A300-1995, 5.3.1; what no listed limb carries
 * is taken to be spread evenly (house rule).
 */
function innerRule(
  work: Work,
  own: Option | null,
  goal: number
): { room: number; weight: (child: Work) => number } {
  const reach = work.tip - work.origin
  if (own?.kind === 'remove' || reach === 0) return { room: 0, weight: () => 0 }
  const before = innerBalance(work, null, 1)
  const keep = Math.min(goal, before.inner / before.all)
  const end = own === null ? 1 : (own.tipAfter - work.origin) / reach
  const after = innerBalance(work, own, end)
  return {
    room: after.inner - keep * after.all,
    weight: (child) => (alongParent(child, work) <= (2 / 3) * end ? 1 : 0) - keep
  }
}

function innerBalance(work: Work, own: Option | null, end: number): { inner: number; all: number } {
  let rest = work.share * carried(work) - (own?.dose ?? 0)
  let inner = 0
  let all = 0
  for (const child of work.children) {
    if (child.gone || goesWith(child, work, own)) continue
    const share = Math.min(child.share * carried(child), rest)
    rest -= share
    all += share
    if (alongParent(child, work) <= (2 / 3) * end) inner += share
  }
  return { inner: inner + (2 / 3) * rest, all: all + rest }
}

/** A child starts beyond its parent's cut, by heights along the parent. */
function goesWith(child: Work, parent: Work, option: Option | null): boolean {
  if (option === null) return false
  if (option.kind === 'remove') return true
  if (parent.tip === parent.origin) return false
  return alongParent(child, parent) > cutAlong(option.share) + 1e-9
}

/** Drops items that another beats or equals in every respect; leaving all alone stays first. */
function undominated(items: FamilyItem[]): FamilyItem[] {
  if (items.length <= 2) return items
  return items.filter(
    (item, at) => at === 0 || !items.some((other, place) => place !== at && beats(other, item, place < at))
  )
}

function beats(a: FamilyItem, b: FamilyItem, first: boolean): boolean {
  const same =
    a.gain === b.gain &&
    a.units === b.units &&
    a.cuts === b.cuts &&
    a.lower === b.lower &&
    a.inner === b.inner
  if (same) return first
  const removes = a.own?.kind === 'remove' && b.own?.kind !== 'remove'
  const milder = a.units <= b.units && a.cuts <= b.cuts && a.leaders <= b.leaders
  return !removes && milder && a.gain >= b.gain && a.lower >= b.lower && a.inner >= b.inner
}
