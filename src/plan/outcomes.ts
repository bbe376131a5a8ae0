import { aspectRatio } from '../formulas/diameters'
import { atMost, isOver, isUnder } from '../formulas/boundary'
import { isSettled } from '../formulas/priority'
import { growthAfterLoss } from '../formulas/growth'
import { growthRate } from './growthRate'
import type { GrowingLimb } from './growingLimb'
import type { LimbTrack } from './limbTracks'
import type { Outcome, WaitsFor } from './plan'
import { priorityOf, type VisitConditions } from './visitConditions'

/** A shortened limb as a visit leaves it, as far as its growth goes. */
export type AsLeft = Pick<GrowingLimb, 'diameter' | 'stem' | 'loss' | 'lossAge'>

/** The shortened limbs as the last planned visit leaves them, and the year it falls in. */
export interface AfterLastVisit {
  readonly conditions: VisitConditions
  readonly year: number
  readonly limbs: ReadonlyMap<GrowingLimb, AsLeft>
}

type End = Pick<Outcome, 'outcome' | 'visit' | 'year' | 'heldBy'>

/** How every limb ends that had a priority over 10 at the survey, or an obligation. */
export function outcomesOf(
  tracks: readonly LimbTrack[],
  surveyYear: number,
  last: AfterLastVisit
): Outcome[] {
  const { rules } = last.conditions
  const outcomes: Outcome[] = []
  for (const track of tracks) {
    const { limb, priority, priorityAfter, obliged } = track
    const { surveyed, isStem } = limb
    if (!isOver(priority, rules.clearedBelow) && !obliged) continue
    const { outcome, visit, year, heldBy } = endOf(track, surveyYear, last)
    outcomes.push({ limb: surveyed, outcome, visit, year, heldBy, priority, priorityAfter, isStem })
  }
  return outcomes
}

function endsAt(outcome: Outcome['outcome'], visit: number | null, year: number | null): End {
  return { outcome, visit, year, heldBy: null }
}

const done: End = endsAt('done', null, null)
const keep: End = endsAt('keep', null, null)

/** The first of the ends that is true; a limb whose obligation waits is neither settled nor expected to be. */
function endOf(track: LimbTrack, surveyYear: number, last: AfterLastVisit): End {
  const { removed, settled, obliged, hold, priorityAfter } = track
  const { rules } = last.conditions
  if (removed !== null) return endsAt('removed', removed.visit, removed.year)
  if (hold === null) {
    if (settled !== null) return endsAt('settled', settled.visit, settled.year)
    const year = settlesIn(track.limb, surveyYear, last)
    if (year !== null) return endsAt('expected', null, year)
    if (obliged && isUnder(priorityAfter, rules.clearedBelow)) return done
  }
  const heldBy = waitsFor(track, last.conditions)
  return heldBy === null ? keep : { outcome: 'wait', visit: null, year: null, heldBy }
}

function waitsFor({ limb, hold, waits }: LimbTrack, conditions: VisitConditions): WaitsFor | null {
  if (limb.surveyed.decay) return 'inspect first'
  if (conditions.waitsForLeader && hold === null && !limb.isStem) return 'leader'
  return waits || hold === 'allowance' ? 'allowance' : null
}

/** The year in which a shortened limb is settled by growth alone, or null where it is not within 25 years. */
function settlesIn(limb: GrowingLimb, surveyYear: number, last: AfterLastVisit): number | null {
  const after = last.limbs.get(limb)
  if (after === undefined || !isSettledAt(limb, 0, last.conditions)) return null
  const { conditions } = last
  const { rules, years, stemGrowth } = conditions
  let { diameter, stem, lossAge } = after
  const end = surveyYear + rules.expectedYears
  for (let year = last.year; year < end;) {
    const rate = growthRate(limb, aspectRatio(diameter, stem), limb.tip, true, conditions)
    for (let passed = 0; passed < years && year < end; passed++) {
      diameter += growthAfterLoss(rate, after.loss, 1, lossAge, limb.fade)
      stem += stemGrowth
      lossAge++
      year++
      if (isSettledAt(limb, aspectRatio(diameter, stem), conditions)) return year
    }
  }
  return null
}

/** Settled at a ratio, its tip where the last cut left it. */
function isSettledAt(limb: GrowingLimb, ratio: number, conditions: VisitConditions): boolean {
  const { rules } = conditions
  if (!atMost(ratio, rules.settledRatio)) return false
  return isSettled(ratio, priorityOf(limb, ratio, limb.tip, conditions), limb.surveyed.bark, rules)
}
