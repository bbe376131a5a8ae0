import type { Item } from './choice'
import {
  cutDiameter,
  cutHeight as heightOfCut,
  cutShare,
  diameterAlong,
  lateralFraction,
  lateralMin,
  shareDose,
  tipAfterCut
} from '../formulas/cuts'
import { aspectRatio } from '../formulas/diameters'
import { lowAndHigh, priority, standing, type Standing } from '../formulas/priority'
import { degreesApart } from './scaffold'
import { growthAfterLoss, limbGrowth, lossAfterCut, ratioAfterGrowth, type Growing } from '../formulas/growth'
import { Pool } from './pool'
import { alongParent, carried, type Season, type Work } from './work'

/** A cut that may be made on one limb at one visit, and what it comes to. `weigh` fills in what the choice needs. */
export interface Option extends Item {
  kind: 'reduce' | 'remove'
  /** Share of the limb's present foliage that goes. */
  share: number
  cut: number
  /** NaN for drooping limbs and removals, where it is not judged. */
  cutHeight: number
  tipAfter: number
  /** Share of the tree's live foliage. */
  dose: number
  nextRatio: number
  nextPriority: number
  /** Answers something that was asked for (clearance, a broken or a rubbing limb): 1 by shortening, 2 by removal. */
  asked: 0 | 1 | 2
  /** The listed limb that is left as the lateral, or null. */
  lateral: Work | null
}

/** The options of the visit being chosen; what a plan keeps of them is copied into its cuts. */
export const optionPool = new Pool<Option>(() => ({
  kind: 'reduce',
  share: 0,
  cut: 0,
  cutHeight: NaN,
  tipAfter: 0,
  dose: 0,
  nextRatio: 0,
  nextPriority: 0,
  asked: 0,
  gain: 0,
  units: 0,
  cuts: 1,
  lower: 0,
  raises: false,
  leaders: 0,
  lateral: null
}))

/** Why a reduction is not offered. */
export type Barrier = 'small' | 'bare' | 'short' | 'lateral'

/** Why a live limb may be removed rather than shortened, or null. */
export function removalReason(work: Work, ratio: number, season: Season): string | null {
  const { rules } = season
  const { limb } = work
  if (limb.role === 'temporary') return 'temporary'
  if (ratio <= rules.removeUpToRatio && work.diameter <= rules.removeUpTo) {
    if (inClearance(work, season)) return 'in the clearance'
    if (limb.broken) return 'broken'
    if (limb.rubbing) return 'rubbing'
    if (limb.bark !== 'none') return 'included bark'
    if (lowAndHigh(work, season) > 0) return 'starts low and reaches high'
    const crowding = crowdedBy(work, season)
    if (crowding !== null)
      return `within ${Math.round(rules.crowdedWithin)} mm of the larger limb ${crowding.limb.id}`
  }
  const small =
    (season.stage === 'planting' || season.stage === 'young') && work.diameter <= rules.smallRemoval
  return small ? 'small limb of a young tree' : null
}

/** Its lowest foliage hangs below the height required on its side. */
export function inClearance(work: Work, season: Season): boolean {
  return (
    season.clearance !== null && work.lowest < season.clearance - 1e-9 && onSide(work.limb.bearing, season)
  )
}

/** A limb within 60° (editable) of the side meant; unknown bearings and sides count, which errs on the safe side. */
function onSide(bearing: number | null, { clearanceSide, rules }: Season): boolean {
  if (bearing === null || clearanceSide === null) return true
  return degreesApart(bearing, clearanceSide) <= rules.clearanceSide
}

function crowdedBy(work: Work, season: Season): Work | null {
  const within = season.rules.crowdedWithin / 1000
  for (const other of season.works)
    if (
      other !== work &&
      !other.gone &&
      other.parent === work.parent &&
      other.limb.role !== 'temporary' &&
      other.diameter > work.diameter &&
      Math.abs(other.origin - work.origin) < within
    )
      return other
  return null
}

/** Broken or rubbing, and not yet dealt with. */
export function isDefective(work: Work): boolean {
  return (work.limb.broken || work.limb.rubbing) && !work.mended
}

/** Something beyond structure asks for a cut. */
function isAsked(work: Work, season: Season): boolean {
  return isDefective(work) || inClearance(work, season)
}

/** Growth of the limb's diameter in mm a year if it is left alone. */
export function unprunedGrowth(work: Work, ratio: number, season: Season): number {
  return limbGrowth(season.stemGrowth, ratio, work.tip >= season.third, season.rules)
}

function priorityOf(ratio: number, work: Work, tip: number, season: Season): number {
  const limb = { aspectRatio: ratio, origin: work.origin, tip, bark: work.limb.bark }
  return priority(limb, season, season.rules)
}

/** At planting only dead, broken and competing stems are cut. */
function leftAlone(work: Work, ratio: number, season: Season): boolean {
  if (season.allowed <= 0) return true
  if (season.stage !== 'planting' || work.limb.broken) return false
  return !competes(standing(ratio, work.limb.bark, season.rules))
}

/**
 * Looks at a live limb at this visit: where it stands, where it would stand at the next visit if left alone, and the
 * cuts offered. A live cut lowers the next priority by 2 points or more.
 */
export function lookAt(work: Work, season: Season): void {
  const ratio = aspectRatio(work.diameter, work.stem)
  const growth = unprunedGrowth(work, ratio, season)
  const stem = { diameter: work.stem, gain: season.years * season.stemGrowth }
  work.ratio = ratio
  work.priority = priorityOf(ratio, work, work.tip, season)
  const gain = growthAfterLoss(growth, work.loss, season.years, work.lossAge, work.fade)
  work.nextRatio = ratioAfterGrowth({ diameter: work.diameter, gain }, stem)
  work.nextPriority = priorityOf(work.nextRatio, work, work.tip, season)
  work.leads = isCompetingLeader(work, season)
  work.options.length = 0
  work.barrier = null
  work.chosen = null
  work.withParent = false
  if (leftAlone(work, ratio, season)) return
  const asked = isAsked(work, season)
  const least = asked ? 0 : season.rules.leastGain - 1e-9
  if (work.nextPriority < least) return
  addReductions(work, season, { growth, stem, least, asked })
  if (removalReason(work, ratio, season) !== null) offerRemoval(work, asked)
}

/** Competing or codominant, and reaching the top quarter of the tree. */
function isCompetingLeader(work: Work, season: Season): boolean {
  if (work.parent !== null || work.tip < season.rules.leaderReach * season.height) return false
  return competes(standing(work.ratio, work.limb.bark, season.rules))
}

/** Standing that makes a limb a rival of the leader. */
function competes(place: Standing): boolean {
  return place === 'competing' || place === 'codominant'
}

function offerRemoval(work: Work, asked: boolean): void {
  const option = optionPool.take()
  option.kind = 'remove'
  option.share = 1
  option.cut = work.diameter
  option.cutHeight = NaN
  option.tipAfter = work.origin
  option.dose = shareDose(1, work.share) * carried(work)
  option.nextRatio = 0
  option.nextPriority = 0
  option.asked = asked ? 2 : 0
  option.lateral = null
  work.options.push(option)
}

interface Outlook {
  growth: number
  stem: Growing
  /** Points by which a cut has to lower the next priority. */
  least: number
  asked: boolean
}

/** The reductions that can be made: the one measured on the limb where there is one, otherwise the table's. */
function addReductions(work: Work, season: Season, outlook: Outlook): void {
  const measured = work.limb.cut
  let barrier: Barrier | null = null
  let possible = false
  if (measured !== null && measured < work.diameter && work.loss === 0) {
    const share = cutShare(measured, work.diameter)
    const lateral = work.limb.lateral
    const needed = lateralFraction(measured, season.rules)
    const lateralRatio = Math.min(1, lateral === null ? needed : aspectRatio(lateral, measured))
    barrier =
      lateral !== null && lateral < lateralMin(measured, needed) - 1e-9
        ? 'lateral'
        : addReduction(work, season, outlook, { share, cut: measured, lateralRatio, lateral: null })
    possible = barrier === null
  } else {
    for (const child of work.children) if (addCutToLateral(work, child, season, outlook)) possible = true
    for (const share of season.steps) {
      if (hasLateralNear(work, share)) continue
      const cut = cutDiameter(work.diameter, share)
      const lateralRatio = lateralFraction(cut, season.rules)
      const against = addReduction(work, season, outlook, { share, cut, lateralRatio, lateral: null })
      if (against === null) possible = true
      else barrier ??= against
    }
  }
  work.barrier = possible ? null : barrier
}

/** A listed limb that fits is the lateral: it stands for the step of the table that is nearest. */
function hasLateralNear(work: Work, share: number): boolean {
  for (const { lateral, share: listed } of work.options)
    if (lateral !== null && Math.abs(listed - share) < 1 / 16) return true
  return false
}

/** A cut back to a listed limb that is thick enough to take over: it becomes the tip. */
function addCutToLateral(work: Work, child: Work, season: Season, outlook: Outlook): boolean {
  const along = alongParent(child, work)
  if (child.gone || !(along > 0 && along < 1)) return false
  const cut = diameterAlong(work.diameter, along)
  const share = cutShare(cut, work.diameter)
  const { steps } = season
  if (share < (steps[0] ?? 0) - 1e-9 || share > (steps.at(-1) ?? 0) + 1e-9) return false
  const ratio = aspectRatio(child.diameter, cut)
  if (ratio < lateralFraction(cut, season.rules) - 1e-9) return false
  return (
    addReduction(work, season, outlook, { share, cut, lateralRatio: Math.min(1, ratio), lateral: child }) ===
    null
  )
}

/** A reduction to be judged: what it takes, where it is made, and what takes over as the tip. */
interface Reduction {
  share: number
  cut: number
  /** Lateral over cut. */
  lateralRatio: number
  lateral: Work | null
}

/** Offers one reduction if it can be made and lowers the next priority enough; gives what stands against it. */
function addReduction(
  work: Work,
  season: Season,
  outlook: Outlook,
  { share, cut, lateralRatio, lateral }: Reduction
): Barrier | null {
  const cutHeight = heightOfCut(work, share)
  const expected = tipAfterCut(work, share, lateralRatio)
  const tipAfter = lateral === null ? expected : Math.min(work.tip, Math.max(lateral.tip, cutHeight))
  const against = whyNotReduced(work, season, cut, cutHeight, tipAfter)
  if (against !== null) return against
  const present = carried(work)
  const gain = growthAfterLoss(outlook.growth, lossAfterCut(present, share), season.years, 0, work.fade)
  const nextRatio = ratioAfterGrowth({ diameter: work.diameter, gain }, outlook.stem)
  const nextPriority = priorityOf(nextRatio, work, tipAfter, season)
  if (work.nextPriority - nextPriority < outlook.least) return null
  const option = optionPool.take()
  option.kind = 'reduce'
  option.share = share
  option.cut = cut
  option.cutHeight = work.tip > work.origin ? cutHeight : NaN
  option.tipAfter = tipAfter
  option.dose = shareDose(share, work.share) * present
  option.nextRatio = nextRatio
  option.nextPriority = nextPriority
  option.asked = outlook.asked ? 1 : 0
  option.lateral = lateral
  work.options.push(option)
  return null
}

/** What stands against a reduction: too small a cut, below the foliage, or a stub; null where nothing does. */
function whyNotReduced(
  work: Work,
  season: Season,
  cut: number,
  cutHeight: number,
  tipAfter: number
): Barrier | null {
  const { rules } = season
  if (cut < rules.leastCut - 1e-9) return 'small'
  if (work.tip > work.origin) {
    const lateral = work.limb.lateralHeight
    const floor = lateral !== null && lateral > season.crownBase ? lateral : season.crownBase
    if (cutHeight < floor - 1e-9) return 'bare'
  }
  const surveyed = work.firstTip - work.origin
  if (surveyed !== 0 && (tipAfter - work.origin) / surveyed < rules.leastLength - 1e-9) return 'short'
  return null
}
