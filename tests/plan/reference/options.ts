/** What can be done to a limb (design, section 3, "Options"), before it is asked whether it is worth it. */
import type { Rules } from '../../../shared/rules'
import { projectedRatio } from './growth'
import { isBare, isInClearance } from './hanging'
import { childrenOf, type LimbNow, type Option, type TreeNow } from './model'
import { atLeast, atMost, over, under } from './near'
import { priority, reachesHigh, startsLow } from './priority'

export function ratioNow({ diameter, stem }: LimbNow): number {
  return diameter / stem
}

export function priorityNow(tree: TreeNow, limb: LimbNow): number {
  return priority(tree, limb.limb.bark, ratioNow(limb), limb.origin, limb.tip)
}

/** The ratio and the priority at the next visit, where the limb loses a share now and its tip ends at a height. */
export function next(
  tree: TreeNow,
  limb: LimbNow,
  lost = 0,
  tip = limb.tip,
  shortened = limb.shortened
): { nextRatio: number; nextPriority: number } {
  const losses = lost > 0 ? [...limb.losses, { share: lost, years: 0 }] : limb.losses
  const nextRatio = projectedRatio(tree, { ...limb, losses, tip, shortened })
  return { nextRatio, nextPriority: priority(tree, limb.limb.bark, nextRatio, limb.origin, tip) }
}

/** The least lateral of a cut: a third of it, of a large one half. */
export function leastLateral(rules: Rules, cut: number): number {
  return cut * (over(cut, rules.largeCut) ? rules.lateralFractionLarge : rules.lateralFraction)
}

/** A limb that rises less than half its length. */
export function isLevel({ rules }: TreeNow, { limb, origin, firstTip }: LimbNow): boolean {
  return limb.length !== null && under(firstTip - origin, limb.length * rules.flatRise)
}

/** The length that the limb has left, where it was measured. */
function lengthNow({ limb, origin, tip, firstTip }: LimbNow): number | null {
  if (limb.length === null) return null
  return firstTip === origin ? limb.length : (limb.length * (tip - origin)) / (firstTip - origin)
}

/** Where on the way from union to tip the cut of a share is made. */
export function placeOfCut(tree: TreeNow, limb: LimbNow, share: number): number {
  if (!isBare(tree, limb)) return 1 - Math.sqrt(share)
  const start = (limb.limb.lowestFoliage! - limb.origin) / (limb.tip - limb.origin)
  return 1 - share * (1 - start)
}

/** The listed limb on it that is left at the end: the highest one below the cut that is large enough. */
function lateralAt(tree: TreeNow, limb: LimbNow, place: number, least: number): number | null {
  const fitting = childrenOf(tree.limbs, limb.at).filter(
    (child) => !isBeyond(limb, child, place) && atLeast(child.diameter, least)
  )
  const highest = fitting.reduce<LimbNow | null>(
    (top, child) => (top === null || child.origin > top.origin ? child : top),
    null
  )
  return highest?.diameter ?? null
}

/** A limb on a limb starts beyond a place of it. */
export function isBeyond({ origin, tip }: LimbNow, child: LimbNow, place: number): boolean {
  return tip !== origin && over((child.origin - origin) / (tip - origin), place)
}

/** A reduction by a share of the limb's foliage, or null where it is not offered. */
export function reduction(tree: TreeNow, limb: LimbNow, share: number, measured = false): Option | null {
  const { rules, now } = tree
  const place = placeOfCut(tree, limb, share)
  const single = isBare(tree, limb) ? limb.diameter * (1 - place) : limb.diameter * Math.sqrt(share)
  const late = now === 'mature' || now === 'old'
  const count = late && over(single, rules.smallCuts) ? Math.ceil((single / rules.smallCuts) ** 2 - 1e-6) : 1
  const cut = single / Math.sqrt(count)
  const least = leastLateral(rules, cut)
  const lateral = measured ? limb.limb.lateral : lateralAt(tree, limb, place, least)
  const left = Math.min(1, (lateral ?? least) / cut)
  const rise = limb.tip - limb.origin
  const height = limb.origin + rise * place
  const ends = count > 1 ? 1 - share : 1 - (1 - left) * (1 - place)
  const tipAfter = limb.origin + rise * ends
  const firstRise = limb.firstTip - limb.origin
  const remains = firstRise === 0 ? ends : (rise * ends) / firstRise
  if (
    under(cut, rules.leastCut) ||
    under(height, tree.crownBase) ||
    (limb.limb.lateralHeight !== null && under(height, limb.limb.lateralHeight)) ||
    under(remains, rules.leastLength) ||
    (measured && under(lateral ?? least, least))
  )
    return null
  const length = lengthNow(limb)
  const level = isLevel(tree, limb)
  return {
    kind: 'reduce',
    share,
    count,
    cutDiameter: cut,
    height: level || count > 1 || rise <= 0 ? null : height,
    distance: level && count === 1 && length !== null ? length * place : null,
    lateralMin: least,
    tipAfter,
    dose: share * tree.shares[limb.at]!,
    endsAt: count > 1 ? 1 - share : place,
    ...next(tree, limb, share, tipAfter, true)
  }
}

/** The shares that a reduction may take, and of them the one measured. */
function sharesOf(tree: TreeNow, limb: LimbNow): { share: number; measured: boolean }[] {
  const { rules, now } = tree
  const late = now === 'mature' || now === 'old'
  const least = late ? 1 : now === 'medium' && isLevel(tree, limb) ? rules.levelFrom : rules.reduceFrom
  const most = late ? rules.reduceMatureUpTo : rules.reduceUpTo
  const shares = []
  for (let eighths = least; eighths <= most; eighths++) shares.push({ share: eighths / 8, measured: false })
  const { cut } = limb.limb
  if (cut !== null && !limb.shortenedInPlan)
    shares.push({ share: Math.min(1, (cut / limb.firstDiameter) ** 2), measured: true })
  return shares.filter(({ share }) => !isBare(tree, limb) || atMost(share, rules.bareReduceUpTo))
}

/** Every reduction of the limb, the smallest first. */
export function reductions(tree: TreeNow, limb: LimbNow): Option[] {
  return sharesOf(tree, limb)
    .flatMap(({ share, measured }) => reduction(tree, limb, share, measured) ?? [])
    .sort((a, b) => a.dose - b.dose)
}

/** Within a foot of a larger permanent limb. */
function isCrowded({ limbs, rules }: TreeNow, limb: LimbNow): boolean {
  return limbs.some(
    (other) =>
      other.at !== limb.at &&
      other.parent === limb.parent &&
      !other.gone &&
      !other.limb.dead &&
      other.limb.role !== 'temporary' &&
      over(other.diameter, limb.diameter) &&
      atMost(Math.abs(other.origin - limb.origin) * 1000, rules.crowdedWithin)
  )
}

function hasReason(tree: TreeNow, limb: LimbNow): boolean {
  const { bark, rubbing, broken } = limb.limb
  return (
    isInClearance(tree, limb) ||
    bark !== 'none' ||
    startsLow(tree, limb.origin) * reachesHigh(tree, limb.tip) > 0 ||
    isCrowded(tree, limb) ||
    rubbing ||
    broken ||
    limb.shortened
  )
}

export function mayBeRemoved(tree: TreeNow, limb: LimbNow): boolean {
  const { rules, now } = tree
  const ratio = ratioNow(limb)
  const early = now === 'planting' || now === 'young'
  return (
    limb.limb.dead ||
    limb.limb.role === 'temporary' ||
    (early && atMost(limb.diameter, rules.smallRemoval)) ||
    ((early || now === 'medium') &&
      limb.shortened &&
      atMost(limb.diameter, rules.stagedRemoval) &&
      atMost(ratio, rules.stagedRemovalRatio)) ||
    (atMost(ratio, rules.removeUpToRatio) && atMost(limb.diameter, rules.removeUpTo) && hasReason(tree, limb))
  )
}

export function removal(tree: TreeNow, limb: LimbNow): Option {
  return {
    kind: 'remove',
    share: 1,
    count: 1,
    cutDiameter: limb.diameter,
    height: limb.origin,
    distance: null,
    lateralMin: null,
    tipAfter: null,
    dose: tree.shares[limb.at]!,
    endsAt: 0,
    nextRatio: null,
    nextPriority: 0
  }
}
