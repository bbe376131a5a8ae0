import type { Item } from './choose'
import type { Offer, Option } from './options'
import type { Season, Work } from './work'

/**
 * A limb on the trunk with the limbs on it, as one group of the choice: each item says what becomes of every limb of
 * the group. A limb beyond its parent's cut is gone and its foliage is not counted twice.
 */
export interface GroupItem extends Item {
  /** Option by limb; a limb that is not in it goes with its parent. */
  parts: readonly (readonly [Work, Option])[]
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
  const low = Math.min(from, to)
  const high = Math.max(from, to)
  if (line >= high) return 1
  return line <= low ? 0 : (line - low) / (high - low)
}

function balance(work: Work, share: number, tip: number, rule: LowerRule): number {
  const from =
    work.limb.lowestFoliage !== null && work.limb.lowestFoliage < tip ? work.limb.lowestFoliage : work.origin
  return share * (shareBelow(from, tip, rule.line) - rule.keep)
}

/** What a limb's foliage adds to the lower two-thirds before any cut. */
export function balanceBefore(work: Work, present: number, rule: LowerRule): number {
  return balance(work, work.share * present, work.tip, rule)
}

/** Change of the balance when an option takes its dose. */
function balanceChange(work: Work, option: Option, present: number, rule: LowerRule): number {
  if (option.kind === 'retain') return 0
  const before = balanceBefore(work, present, rule)
  if (option.kind === 'remove') return -before
  return balance(work, work.share * present - option.dose, option.tipAfter, rule) - before
}

/** The items of a limb on the trunk, leaving everything alone first. */
export function groupItems(
  root: Work,
  offers: ReadonlyMap<Work, Offer>,
  season: Season,
  rule: LowerRule,
  present: (work: Work) => number,
  holds: boolean
): GroupItem[] {
  const build = (work: Work): GroupItem[] => {
    const offer = offers.get(work)
    if (offer === undefined) return []
    const retained = offer.options[0]?.nextPriority ?? 0
    const items: GroupItem[] = []
    for (const option of offer.options) {
      const own: GroupItem = {
        gain: (loss(retained) - loss(option.nextPriority)) * askedUnits + option.asked,
        dose: Math.round(option.dose * doseUnits),
        cuts: option.kind === 'retain' ? 0 : 1,
        lower: balanceChange(work, option, present(work), rule),
        raises: false,
        parts: [[work, option]]
      }
      items.push(...withChildren(own, work, option, build, offers))
    }
    return work.children.length > 0 ? undominated(items) : items
  }
  const items = build(root)
  if (holds) for (const item of items) item.raises = item.parts[0]?.[1].kind === 'remove'
  return items
}

function withChildren(
  own: GroupItem,
  work: Work,
  option: Option,
  build: (work: Work) => GroupItem[],
  offers: ReadonlyMap<Work, Offer>
): GroupItem[] {
  let combined = [own]
  for (const child of work.children) {
    if (child.gone) continue
    if (goesWith(child, work, option)) {
      const relief = reliefOf(child, offers)
      for (const item of combined) item.gain += relief
      continue
    }
    const items = build(child)
    const most = Math.round(work.share * doseUnits)
    combined = undominated(combined.flatMap((left) => items.map((right) => joined(left, right, most))))
  }
  return combined
}

function joined(left: GroupItem, right: GroupItem, most: number): GroupItem {
  return {
    gain: left.gain + right.gain,
    dose: Math.min(left.dose + right.dose, most),
    cuts: left.cuts + right.cuts,
    lower: left.lower + right.lower,
    raises: false,
    parts: [...left.parts, ...right.parts]
  }
}

/** Priorities that vanish with a limb that goes with its parent. */
function reliefOf(work: Work, offers: ReadonlyMap<Work, Offer>): number {
  let relief = loss(offers.get(work)?.options[0]?.nextPriority ?? 0) * askedUnits
  for (const child of work.children) if (!child.gone) relief += reliefOf(child, offers)
  return relief
}

/** A child starts beyond its parent's cut, by heights along the parent. */
export function goesWith(child: Work, parent: Work, option: Option): boolean {
  if (option.kind === 'retain') return false
  if (option.kind === 'remove') return true
  if (parent.tip === parent.origin) return false
  return (child.origin - parent.origin) / (parent.tip - parent.origin) > 1 - Math.sqrt(option.share) + 1e-9
}

/** Drops items that another beats or equals in every respect; leaving all alone stays first. */
function undominated(items: GroupItem[]): GroupItem[] {
  if (items.length <= 2) return items
  return items.filter(
    (item, at) => at === 0 || !items.some((other, place) => place !== at && beats(other, item, place < at))
  )
}

function beats(a: GroupItem, b: GroupItem, first: boolean): boolean {
  const same = a.gain === b.gain && a.dose === b.dose && a.cuts === b.cuts && a.lower === b.lower
  if (same) return first
  const removes = a.parts[0]?.[1].kind === 'remove' && b.parts[0]?.[1].kind !== 'remove'
  return !removes && a.gain >= b.gain && a.dose <= b.dose && a.cuts <= b.cuts && a.lower >= b.lower
}
