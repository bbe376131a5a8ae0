/** The reductions of a limb (design, section 3, "A cut", "Options"), before it is asked whether they are worth it. */
import type { Rules } from '../../../shared/rules'
import { losing, projectedRatio } from './growth'
import { isBare } from './hanging'
import { childrenOf, type LimbNow, type Option, type TreeNow } from './model'
import { atLeast, atMost, over, under } from './near'
import { priority } from './priority'

/** The ratio and the priority at the next visit, where the limb loses a share now and its tip ends at a height. */
export function next(
  tree: TreeNow,
  limb: LimbNow,
  share = 0,
  tip = limb.tip,
  shortened = limb.shortened
): { nextRatio: number; nextPriority: number } {
  const lost = share > 0 ? losing(tree.rules, limb, share) : {}
  const nextRatio = projectedRatio(tree, { ...limb, ...lost, tip, shortened })
  return { nextRatio, nextPriority: priority(tree, limb.limb.bark, nextRatio, limb.origin, tip) }
}

/** The least lateral of a cut, as a part of it: a third, of a large one half. */
export function lateralPart(rules: Rules, cut: number): number {
  return over(cut, rules.largeCut) ? rules.lateralFractionLarge : rules.lateralFraction
}

/** A limb that rises less than half its length. */
export function isLevel({ rules }: TreeNow, { limb, origin, firstTip }: LimbNow): boolean {
  return limb.length !== null && limb.length > 0 && firstTip - origin < limb.length * rules.flatRise - 1e-9
}

/** The length that the limb has left, where it was measured. */
function lengthNow({ limb, origin, tip, firstTip }: LimbNow): number {
  return firstTip === origin ? limb.length! : (limb.length! * (tip - origin)) / (firstTip - origin)
}

/** Where a limb on a limb starts, as a part of the way from union to tip. */
export function placeOn({ origin, tip }: LimbNow, height: number): number {
  return (height - origin) / (tip - origin)
}

/** A limb on a limb starts beyond the place at which that one is cut. */
export function isBeyond(limb: LimbNow, child: LimbNow, place: number): boolean {
  return limb.tip !== limb.origin && placeOn(limb, child.origin) > place + 1e-9
}

/** A cut that might be made. */
interface Proposed {
  readonly share: number
  readonly cut: number
  /** As a part of the way from union to tip. */
  readonly place: number
  /** Lateral by cut, at most 1; null where it was not measured. */
  readonly lateral: number | null
  /** The listed limb that is left as the lateral. */
  readonly listed: LimbNow | null
}

/** The cut as an option, or null where it is not offered. */
function asOption(tree: TreeNow, limb: LimbNow, { share, cut, place, ...left }: Proposed): Option | null {
  const { rules, now } = tree
  const late = now === 'mature' || now === 'old'
  const count = late && over(cut, rules.smallCuts) ? Math.ceil((cut / rules.smallCuts) ** 2 - 1e-6) : 1
  const each = cut / Math.sqrt(count)
  const rise = limb.tip - limb.origin
  const height = limb.origin + rise * place
  const lambda = Math.min(1, left.lateral ?? lateralPart(rules, cut))
  const tipAfter =
    count > 1
      ? limb.origin + rise * (1 - share)
      : left.listed === null
        ? limb.tip - (1 - lambda) * (limb.tip - height)
        : Math.min(limb.tip, Math.max(left.listed.tip, height))
  const level = isLevel(tree, limb)
  const firstRise = limb.firstTip - limb.origin
  const hasHeight = rise > 0 && !level
  if (
    under(cut, rules.leastCut) ||
    (hasHeight && under(height, Math.max(tree.crownBase, limb.limb.lateralHeight ?? 0))) ||
    (firstRise !== 0 && under((tipAfter - limb.origin) / firstRise, rules.leastLength))
  )
    return null
  return {
    kind: 'reduce',
    share,
    count,
    cutDiameter: each,
    height: hasHeight && count === 1 ? height : null,
    distance: level && count === 1 ? lengthNow(limb) * place : null,
    lateralMin: each * lateralPart(rules, each),
    tipAfter,
    dose: share * tree.shares[limb.at]!,
    cutAt: place,
    endsAt: count > 1 ? Infinity : place,
    lateralAt: count > 1 ? null : (left.listed?.at ?? null),
    ...next(tree, limb, share, tipAfter, true)
  }
}

/** Eighths of its foliage that a reduction may take. */
function eighths(tree: TreeNow, limb: LimbNow): number[] {
  const { rules, now } = tree
  const late = now === 'mature' || now === 'old'
  const least = late ? 1 : now === 'medium' && isLevel(tree, limb) ? rules.levelFrom : rules.reduceFrom
  const most = late ? rules.reduceMatureUpTo : rules.reduceUpTo
  const steps = []
  for (let step = least; step <= most; step++) steps.push(step / 8)
  return steps
}

/** The cut of a share; where the limb is bare inside, its foliage lies evenly between there and the tip. */
function byShare(tree: TreeNow, limb: LimbNow, share: number): Proposed {
  const left = { lateral: null, listed: null }
  if (!isBare(tree, limb))
    return { share, place: 1 - Math.sqrt(share), cut: limb.diameter * Math.sqrt(share), ...left }
  const beyond = share * (1 - placeOn(limb, limb.observedFrom!))
  return { share, place: 1 - beyond, cut: limb.diameter * beyond, ...left }
}

/** Cuts back to a listed limb that is thick enough to take over, and that take what a reduction may take. */
function toListedLimbs(tree: TreeNow, limb: LimbNow): Proposed[] {
  if (isBare(tree, limb)) return []
  const steps = eighths(tree, limb)
  return childrenOf(tree.limbs, limb.at)
    .map((child) => ({ child, place: placeOn(limb, child.origin) }))
    .filter(({ place }) => place > 0 && place < 1)
    .map(({ child, place }) => {
      const cut = limb.diameter * (1 - place)
      const lateral = child.diameter / cut
      return { share: (1 - place) ** 2, cut, place, lateral, listed: child }
    })
    .filter(({ share }) => atLeast(share, steps[0]!) && atMost(share, steps.at(-1)!))
    .filter(({ lateral, cut }) => atLeast(lateral, lateralPart(tree.rules, cut)))
}

/** The cut that was measured on the limb, grown with it, until the limb is shortened in this plan. */
function measuredCut(limb: LimbNow): number | null {
  const { cut } = limb.limb
  if (cut === null || limb.shortenedInPlan || cut >= limb.firstDiameter) return null
  return (cut * limb.diameter) / limb.firstDiameter
}

function measured(tree: TreeNow, limb: LimbNow, cut: number): Proposed[] {
  const part = cut / limb.diameter
  const lateral = limb.limb.lateral === null ? null : limb.limb.lateral / limb.limb.cut!
  if (lateral !== null && under(lateral, lateralPart(tree.rules, cut))) return []
  const share = isBare(tree, limb) ? part / (1 - placeOn(limb, limb.observedFrom!)) : part ** 2
  return [{ share, cut, place: 1 - part, lateral, listed: null }]
}

/** Every reduction of the limb, the smallest first: the one measured, or else by the table and to listed limbs. */
export function reductions(tree: TreeNow, limb: LimbNow): Option[] {
  const cut = measuredCut(limb)
  const proposed = cut === null ? byTable(tree, limb) : measured(tree, limb, cut)
  return proposed
    .filter(({ share }) => !isBare(tree, limb) || atMost(share, tree.rules.bareReduceUpTo))
    .flatMap((each) => asOption(tree, limb, each) ?? [])
    .sort((a, b) => a.dose - b.dose)
}

/** A cut to a listed limb stands for the step of the table that is nearest; several small cuts are not made back to one. */
function byTable(tree: TreeNow, limb: LimbNow): Proposed[] {
  const listed = toListedLimbs(tree, limb).filter((each) => asOption(tree, limb, each)?.count === 1)
  const steps = eighths(tree, limb).filter((step) =>
    listed.every(({ share }) => Math.abs(share - step) >= 1 / 16)
  )
  return [...listed, ...steps.map((step) => byShare(tree, limb, step))]
}
