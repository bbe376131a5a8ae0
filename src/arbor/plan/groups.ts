import type { Item } from './choose'
import type { Option } from './options'
import { carried, type Work } from './work'

/**
 * A limb on the trunk with the limbs on it, as one item of the choice: what becomes of every limb of the group. A limb
 * beyond its parent's cut is gone and its foliage is not counted twice.
 */
export interface FamilyItem extends Item {
  /** The cut of each limb that is cut. */
  cutsMade: readonly (readonly [Work, Option])[]
  /** The limb's own cut, or null where it is retained. */
  own: Option | null
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
}

/** Share of foliage spread evenly between two heights that lies below the line. */
export function shareBelow(from: number, to: number, line: number): number {
  const low = from < to ? from : to
  const high = from < to ? to : from
  if (line >= high) return 1
  return line <= low ? 0 : (line - low) / (high - low)
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
  }
  return work.options
}

/** What may be done with a limb that carries limbs, leaving them all alone left out. */
export function familyItems(work: Work, rule: LowerRule, holds: boolean): FamilyItem[] {
  return family(work, rule, holds).slice(1)
}

const untouched: FamilyItem = { gain: 0, units: 0, cuts: 0, lower: 0, raises: false, cutsMade: [], own: null }

/** Leaving all alone comes first. */
function family(work: Work, rule: LowerRule, holds: boolean): FamilyItem[] {
  const own = weigh(work, rule, holds).map((option): FamilyItem => {
    const { gain, units, cuts, lower, raises } = option
    return { gain, units, cuts, lower, raises, cutsMade: [[work, option]], own: option }
  })
  return undominated([untouched, ...own].flatMap((item) => withChildren(item, work, rule)))
}

function withChildren(item: FamilyItem, work: Work, rule: LowerRule): FamilyItem[] {
  let combined = [{ ...item }]
  const most = Math.round(work.share * doseUnits)
  for (const child of work.children) {
    if (child.gone) continue
    if (goesWith(child, work, item.own)) {
      const relief = reliefOf(child)
      for (const each of combined) each.gain += relief
      continue
    }
    const items = family(child, rule, false)
    combined = undominated(combined.flatMap((left) => items.map((right) => joined(left, right, most))))
  }
  return combined
}

function joined(left: FamilyItem, right: FamilyItem, most: number): FamilyItem {
  return {
    gain: left.gain + right.gain,
    units: Math.min(left.units + right.units, most),
    cuts: left.cuts + right.cuts,
    lower: left.lower + right.lower,
    raises: left.raises,
    cutsMade: [...left.cutsMade, ...right.cutsMade],
    own: left.own
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

/** A child starts beyond its parent's cut, by heights along the parent. */
function goesWith(child: Work, parent: Work, option: Option | null): boolean {
  if (option === null) return false
  if (option.kind === 'remove') return true
  if (parent.tip === parent.origin) return false
  return (child.origin - parent.origin) / (parent.tip - parent.origin) > 1 - Math.sqrt(option.share) + 1e-9
}

/** Drops items that another beats or equals in every respect; leaving all alone stays first. */
function undominated(items: FamilyItem[]): FamilyItem[] {
  if (items.length <= 2) return items
  return items.filter(
    (item, at) => at === 0 || !items.some((other, place) => place !== at && beats(other, item, place < at))
  )
}

function beats(a: FamilyItem, b: FamilyItem, first: boolean): boolean {
  const same = a.gain === b.gain && a.units === b.units && a.cuts === b.cuts && a.lower === b.lower
  if (same) return first
  const removes = a.own?.kind === 'remove' && b.own?.kind !== 'remove'
  return !removes && a.gain >= b.gain && a.units <= b.units && a.cuts <= b.cuts && a.lower >= b.lower
}
