import { cutHeight, lateralFraction, tipAfterCut } from '../measure/cuts'
import { lowAndHigh, priority } from '../assess/priority'
import { standing } from '../assess/standing'
import { limbGrowth } from './growth'
import { carried, growthYears, type Season, type Work } from './work'

/** What may be done with one limb at one visit, and what it comes to. */
export interface Option {
  kind: 'retain' | 'reduce' | 'remove'
  /** Share of the limb's present foliage that goes. */
  share: number
  cut: number
  /** Lateral over cut diameter that the tip was reckoned with. */
  lateralRatio: number
  cutHeight: number | null
  tipAfter: number
  /** Share of the tree's live foliage. */
  dose: number
  nextRatio: number
  nextPriority: number
  /** Answers something that was asked for (clearance, a broken or a rubbing limb): 1 by shortening, 2 by removal. */
  asked: 0 | 1 | 2
}

/** Everything offered for a limb, retaining it first. */
export interface Offer {
  work: Work
  ratio: number
  priority: number
  options: Option[]
}

/** Shares that a reduction may take: eighths, up to 6/8 on younger trees and 2/8 on mature and old ones. */
export function reductionShares(season: Season): readonly number[] {
  return season.stage === 'mature' || season.stage === 'old'
    ? [1 / 8, 2 / 8]
    : [2 / 8, 3 / 8, 4 / 8, 5 / 8, 6 / 8]
}

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
    if (lowAndHigh(work.origin, work.tip, season.height, season.crownBase) > 0)
      return 'starts low and reaches high'
    const crowding = crowdedBy(work, season)
    if (crowding !== null) return `within 300 mm of the larger limb ${crowding.limb.id}`
  }
  const small =
    (season.stage === 'planting' || season.stage === 'young') && work.diameter <= rules.smallRemoval
  return small ? 'small limb of a young tree' : null
}

/** Its lowest foliage hangs below the height required on its side. */
export function inClearance(work: Work, season: Season): boolean {
  return (
    season.clearance !== null &&
    work.lowest < season.clearance - 1e-9 &&
    onSide(work.limb.bearing, season.clearanceSide)
  )
}

const sides: Record<string, number> = { n: 0, ne: 45, e: 90, se: 135, s: 180, sw: 225, w: 270, nw: 315 }

/** A limb within 60° of the side meant; unknown bearings and sides count, which errs on the safe side. */
function onSide(bearing: number | null, side: string): boolean {
  const word = side
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace('north', 'n')
    .replace('south', 's')
    .replace('east', 'e')
    .replace('west', 'w')
  const middle = sides[word]
  if (bearing === null || middle === undefined) return true
  const apart = Math.abs(bearing - middle) % 360
  return Math.min(apart, 360 - apart) <= 60
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

function nextPriorityOf(ratio: number, work: Work, tip: number, season: Season): number {
  return priority(ratio, work.origin, tip, season.height, season.crownBase, work.limb.bark, season.rules)
}

/** At planting only dead, broken and competing stems are cut. */
function leftAlone(work: Work, ratio: number, season: Season): boolean {
  if (season.allowed <= 0) return true
  if (season.stage !== 'planting' || work.limb.broken) return false
  const place = standing(ratio, work.limb.bark, season.rules)
  return place === 'subordinate' || place === 'gaining'
}

/** Everything offered for a live limb at this visit. A live cut lowers the next priority by 2 points or more. */
export function offerFor(work: Work, season: Season): Offer {
  const ratio = work.diameter / work.stem
  const now = nextPriorityOf(ratio, work, work.tip, season)
  const growth = unprunedGrowth(work, ratio, season)
  const stemNext = work.stem + season.years * season.stemGrowth
  const retainRatio = (work.diameter + growth * growthYears(work.loss, work.lossAge, season.years)) / stemNext
  const retain = nextPriorityOf(retainRatio, work, work.tip, season)
  const options: Option[] = [
    {
      kind: 'retain',
      share: 0,
      cut: 0,
      lateralRatio: 0,
      cutHeight: null,
      tipAfter: work.tip,
      dose: 0,
      nextRatio: retainRatio,
      nextPriority: retain,
      asked: 0
    }
  ]
  const offer = { work, ratio, priority: now, options }
  const asked = isAsked(work, season)
  if (leftAlone(work, ratio, season) || (retain < season.rules.leastGain && !asked)) return offer
  const least = asked ? 0 : season.rules.leastGain - 1e-9
  addReductions(offer, season, growth, stemNext, retain, least, asked)
  if (removalReason(work, ratio, season) !== null && retain >= least)
    options.push({
      kind: 'remove',
      share: 1,
      cut: work.diameter,
      lateralRatio: 0,
      cutHeight: null,
      tipAfter: work.origin,
      dose: work.share * carried(work),
      nextRatio: 0,
      nextPriority: 0,
      asked: asked ? 2 : 0
    })
  return offer
}

function addReductions(
  offer: Offer,
  season: Season,
  growth: number,
  stemNext: number,
  retain: number,
  least: number,
  asked: boolean
): void {
  const { work } = offer
  const present = carried(work)
  for (const candidate of reductionCandidates(work, season)) {
    if (whyNotReduced(work, candidate, season) !== null) continue
    const loss = 1 - present * (1 - candidate.share)
    const nextRatio = (work.diameter + growth * growthYears(loss, 0, season.years)) / stemNext
    const nextPriority = nextPriorityOf(nextRatio, work, candidate.tipAfter, season)
    if (retain - nextPriority < least) continue
    const dose = candidate.share * work.share * present
    offer.options.push({ kind: 'reduce', ...candidate, dose, nextRatio, nextPriority, asked: asked ? 1 : 0 })
  }
}

/** A reduction before it is judged. */
export interface Candidate {
  share: number
  cut: number
  lateralRatio: number
  cutHeight: number | null
  tipAfter: number
}

function candidate(work: Work, share: number, cut: number, lateralRatio: number): Candidate {
  return {
    share,
    cut,
    lateralRatio,
    cutHeight: work.tip > work.origin ? cutHeight(work.origin, work.tip, share) : null,
    tipAfter: tipAfterCut(work.origin, work.tip, share, lateralRatio)
  }
}

/** The reductions to look at: the one measured on the limb where there is one, otherwise the table's. */
export function reductionCandidates(work: Work, season: Season): Candidate[] {
  const measured = work.limb.cut
  if (measured !== null && measured < work.diameter && work.loss === 0) {
    const ratio =
      work.limb.lateral === null
        ? lateralFraction(measured, season.rules)
        : Math.min(1, work.limb.lateral / measured)
    return [candidate(work, (measured / work.diameter) ** 2, measured, ratio)]
  }
  return reductionShares(season).map((share) => {
    const cut = work.diameter * Math.sqrt(share)
    return candidate(work, share, cut, lateralFraction(cut, season.rules))
  })
}

/** Why a reduction is not offered, in the trade's words, or null where it is. */
export function whyNotReduced(
  work: Work,
  reduction: Candidate,
  season: Season
): 'small' | 'bare' | 'short' | 'lateral' | null {
  const { rules } = season
  if (reduction.cut < rules.leastCut - 1e-9) return 'small'
  if (work.limb.cut === reduction.cut && work.limb.lateral !== null) {
    if (work.limb.lateral < lateralFraction(reduction.cut, rules) * reduction.cut - 1e-9) return 'lateral'
  }
  if (reduction.cutHeight !== null) {
    const floor = Math.max(season.crownBase, work.limb.lateralHeight ?? 0)
    if (reduction.cutHeight < floor - 1e-9) return 'bare'
  }
  const left = (reduction.tipAfter - work.origin) / (work.firstTip - work.origin)
  if (work.firstTip !== work.origin && left < rules.leastLength - 1e-9) return 'short'
  return null
}
