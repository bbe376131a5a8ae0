import { atMost, isOver, isUnder } from '../formulas/boundary'
import {
  countOfCuts,
  cutDiameter,
  cutShare,
  diameterAlong,
  lateralFraction,
  lateralMin,
  partBeyond,
  shareDose,
  tipAfterSeveral
} from '../formulas/cuts'
import { aspectRatio } from '../formulas/diameters'
import { growthAfterLoss, lossAfterCut } from '../formulas/growth'
import type { AssessedLimb } from './assessLimb'
import { alongParent, bareUpTo, carried, isLevel, isLevelTo, type GrowingLimb } from './growingLimb'
import { growthRate } from './growthRate'
import type { Barrier, OfferedCuts, PossibleCut, Prospect } from './possibleCut'
import { isGrown, priorityOf, stepsFor, type VisitConditions } from './visitConditions'
import { whyUnworthy, worthyCuts, type JudgedCut } from './worthOfCuts'

/** The reductions that can be made on a limb: the one measured on it where there is one, otherwise the table's. */
export function reductionsOf(prospect: Prospect, conditions: VisitConditions): OfferedCuts {
  return offer({ prospect, assessed: null, conditions, cuts: none, possible: 0, barrier: null })
}

/**
 * Those that are worth making, least foliage first; the others are counted and not made, as most of them are and none
 * outlives the moment.
 */
export function worthyReductions(assessed: AssessedLimb, conditions: VisitConditions): OfferedCuts {
  const isBare = assessed.limb.children.length === 0
  const judge = isBare ? assessed : null
  const offered = offer({
    prospect: assessed,
    assessed: judge,
    conditions,
    cuts: none,
    possible: 0,
    barrier: null
  })
  // Cuts back to limbs on it stand before the table's, whatever they take.
  return isBare ? offered : { ...offered, cuts: worthyCuts(assessed, offered.cuts, conditions) }
}

const none: readonly PossibleCut[] = []

/** The reductions of one limb while they are put together. */
interface Offer {
  readonly prospect: Prospect
  /** The limb as it was assessed, where only cuts that are worth it are asked for; otherwise null. */
  readonly assessed: AssessedLimb | null
  readonly conditions: VisitConditions
  cuts: readonly PossibleCut[]
  possible: number
  barrier: Barrier | null
}

function offer(offered: Offer): OfferedCuts {
  const measured = measuredCut(offered.prospect.limb)
  offered.barrier = measured === null ? addSteps(offered) : addMeasured(offered, measured)
  return offered
}

/** The cut that the surveyor measured on a limb that this plan has not shortened, grown with its limb; or null. */
function measuredCut({ surveyed, diameter, firstDiameter, earlier }: GrowingLimb): number | null {
  const { cut } = surveyed
  return cut !== null && isUnder(cut, firstDiameter) && earlier === null
    ? (cut * diameter) / firstDiameter
    : null
}

/** Offers the cut measured on the limb, in place of the table's. */
function addMeasured(offered: Offer, measured: number): Barrier | null {
  const { conditions } = offered
  const { limb } = offered.prospect
  const { lateral, cut } = limb.surveyed
  const needed = lateralFraction(measured, conditions.rules)
  const ratio = lateral === null || cut === null ? null : aspectRatio(lateral, cut)
  if (ratio !== null && isUnder(ratio, lateralMin(1, needed))) return 'lateral'
  const bare = bareUpTo(limb, conditions.rules.bareBelow)
  const beyond = partBeyond(cutShare(measured, limb.diameter))
  const share = bare === null ? cutShare(measured, limb.diameter) : shareBeyondBare(limb, bare, beyond)
  const lateralRatio = Math.min(1, ratio ?? needed)
  return addReduction(offered, { share, cutDiameter: measured, beyond, lateralRatio, lateral: null })
}

/** Share of a bare limb's foliage beyond a cut, the foliage lying evenly from where it starts to the tip. */
function shareBeyondBare({ origin, tip }: GrowingLimb, bare: number, beyond: number): number {
  return (beyond * (tip - origin)) / (tip - bare)
}

/** Offers the cuts back to listed limbs, then the table's; gives what stands against them where none can be made. */
function addSteps(offered: Offer): Barrier | null {
  const { prospect, conditions } = offered
  const { limb } = prospect
  let barrier: Barrier | null = null
  for (const child of limb.children) addCutToLateral(offered, child)
  for (const share of stepsFor(limb, conditions)) {
    if (limb.children.length > 0 && hasLateralNear(offered.cuts, share)) continue
    const against = addReduction(offered, stepOf(limb, share, conditions))
    barrier ??= against
  }
  return offered.possible > 0 ? null : barrier
}

/** What stands against the cut of the table that takes a share of a limb's foliage; null where it can be made. */
export function whyNoStep(prospect: Prospect, share: number, conditions: VisitConditions): Barrier | null {
  const offered = { prospect, assessed: null, conditions, cuts: none, possible: 0, barrier: null }
  return addReduction(offered, stepOf(prospect.limb, share, conditions))
}

/** The cut of the table that takes a share of a limb's foliage; on a limb that is bare inside it lies farther out. */
function stepOf(limb: GrowingLimb, share: number, { rules }: VisitConditions): Reduction {
  const bare = bareUpTo(limb, rules.bareBelow)
  const beyond = bare === null ? partBeyond(share) : (share * (limb.tip - bare)) / (limb.tip - limb.origin)
  const diameter =
    bare === null ? cutDiameter(limb.diameter, share) : diameterAlong(limb.diameter, 1 - beyond)
  step.share = share
  step.cutDiameter = diameter
  step.beyond = beyond
  step.lateralRatio = lateralFraction(diameter, rules)
  return step
}

/**
 * The cut of the table that is judged now. There are several for every limb of every visit, judged one after the other, and
 * most come to nothing: an object for each would be a tenth of what planning allocates.
 */
const step: Writable<Reduction> = {
  share: 0.5,
  cutDiameter: 0.5,
  beyond: 0.5,
  lateralRatio: 0.5,
  lateral: null
}

type Writable<T> = { -readonly [Key in keyof T]: T[Key] }

/** A listed limb that fits is the lateral: it stands for the step of the table that is nearest. */
function hasLateralNear(cuts: readonly PossibleCut[], share: number): boolean {
  for (const { lateral, share: listed } of cuts)
    if (lateral !== null && isUnder(Math.abs(listed - share), 1 / 16)) return true
  return false
}

/** A cut back to a listed limb that is thick enough to take over: it becomes the tip. */
function addCutToLateral(offered: Offer, lateral: GrowingLimb): void {
  const { prospect, conditions } = offered
  const { limb } = prospect
  const { rules } = conditions
  const along = alongParent(lateral, limb)
  if (lateral.gone || !(isOver(along, 0) && isUnder(along, 1)) || bareUpTo(limb, rules.bareBelow) !== null)
    return
  const diameter = diameterAlong(limb.diameter, along)
  // Several small cuts over the outer part are not made back to one limb.
  if (isGrown(conditions.stage) && countOfCuts(diameter, rules.smallCuts) > 1) return
  const share = cutShare(diameter, limb.diameter)
  const steps = stepsFor(limb, conditions)
  if (isUnder(share, steps[0] ?? 0) || isOver(share, steps.at(-1) ?? 0)) return
  const ratio = aspectRatio(lateral.diameter, diameter)
  if (isUnder(ratio, lateralFraction(diameter, rules))) return
  const reduction = {
    share,
    cutDiameter: diameter,
    beyond: 1 - along,
    lateralRatio: Math.min(1, ratio),
    lateral
  }
  addReduction(offered, reduction)
}

/** A reduction to be judged: what it takes, where it is made, and what takes over as the tip. */
interface Reduction {
  readonly share: number
  readonly cutDiameter: number
  /** Part of the limb's length beyond the cut. */
  readonly beyond: number
  /** Lateral over cut. */
  readonly lateralRatio: number
  readonly lateral: GrowingLimb | null
}

/** Offers one reduction if it can be made; gives what stands against it. */
function addReduction(offered: Offer, reduction: Reduction): Barrier | null {
  const { assessed, conditions } = offered
  const { limb, aspectRatio: ratio } = offered.prospect
  const { rules, stage, years } = conditions
  const { share, cutDiameter: whole, beyond, lateral } = reduction
  const count = isGrown(stage) ? countOfCuts(whole, rules.smallCuts) : 1
  const isOne = count === 1
  const diameter = whole / Math.sqrt(count)
  const height = limb.tip - beyond * (limb.tip - limb.origin)
  const tipAfter = tipAfterReduction(limb, reduction, count, height)
  const level = isLevel(limb, rules.flatRise)
  const against = whyNotReduced(limb, reduction, level ? null : height, tipAfter, conditions)
  if (against !== null) return against
  offered.possible++
  const kept = carried(limb)
  const rate = growthRate(limb, ratio, tipAfter, true, conditions)
  const gain = growthAfterLoss(rate, lossAfterCut(kept, share), years, 0, limb.fade)
  const nextRatio = aspectRatio(limb.diameter + gain, limb.stem + years * conditions.stemGrowth)
  const nextPriority = priorityOf(limb, nextRatio, tipAfter, conditions)
  const dose = shareDose(share, limb.share) * kept
  if (assessed !== null && !isWorthMaking(assessed, diameter, beyond, dose, nextPriority, offered))
    return null
  const cut: PossibleCut = {
    kind: 'reduce',
    share,
    cutDiameter: diameter,
    count,
    cutHeight: isOne && !level && isOver(limb.tip, limb.origin) ? height : null,
    distance: isOne && level ? distanceOf(limb, beyond) : null,
    beyond,
    tipAfter,
    dose,
    nextRatio,
    nextPriority,
    lateral: isOne ? lateral : null
  }
  offered.cuts = offered.cuts.length === 0 ? [cut] : [...offered.cuts, cut]
  return null
}

/** The reduction whose worth is judged now, as `step` is the one that is looked at. */
const judged: Writable<JudgedCut> = {
  kind: 'reduce',
  cutDiameter: 0.5,
  beyond: 0.5,
  dose: 0.5,
  nextPriority: 0.5
}

function isWorthMaking(
  assessed: AssessedLimb,
  cutDiameter: number,
  beyond: number,
  dose: number,
  nextPriority: number,
  { cuts, conditions }: Offer
): boolean {
  judged.cutDiameter = cutDiameter
  judged.beyond = beyond
  judged.dose = dose
  judged.nextPriority = nextPriority
  return whyUnworthy(assessed, judged, cuts, conditions) === null
}

/** The lateral becomes the tip; several cuts over the outer part lower it by what they take. */
function tipAfterReduction(limb: GrowingLimb, reduction: Reduction, count: number, height: number): number {
  const { share, beyond, lateralRatio, lateral } = reduction
  if (count > 1) return tipAfterSeveral(limb, share)
  if (lateral !== null) return Math.min(limb.tip, Math.max(lateral.tip, height))
  return limb.tip - (1 - lateralRatio) * beyond * (limb.tip - limb.origin)
}

/** Distance of a cut from the union on a level limb of known length, otherwise null. */
function distanceOf({ surveyed, origin, tip, firstTip }: GrowingLimb, beyond: number): number | null {
  const { length } = surveyed
  if (length === null) return null
  const whole = firstTip - origin
  const left = isLevelTo(origin, firstTip) ? 1 : (tip - origin) / whole
  return length * left * (1 - beyond)
}

/** What stands against a reduction: too small a cut, below the foliage, or a stub; null where nothing does. */
function whyNotReduced(
  limb: GrowingLimb,
  { share, cutDiameter: diameter }: Reduction,
  height: number | null,
  tipAfter: number,
  { rules, crownBase }: VisitConditions
): Barrier | null {
  if (isUnder(diameter, rules.leastCut)) return 'small'
  if (bareUpTo(limb, rules.bareBelow) !== null && !atMost(share, rules.bareReduceUpTo)) return 'bare'
  if (isOver(limb.tip, limb.origin) && height !== null) {
    const lateral = limb.surveyed.lateralHeight
    const floor = lateral !== null && lateral > crownBase ? lateral : crownBase
    if (isUnder(height, floor)) return 'bare'
  }
  const surveyed = limb.firstTip - limb.origin
  if (
    !isLevelTo(limb.origin, limb.firstTip) &&
    isUnder((tipAfter - limb.origin) / surveyed, rules.leastLength)
  )
    return 'short'
  return null
}
