import { aspectRatio } from '../formulas/diameters'
import { atMost, isOver, isUnder } from '../formulas/boundary'
import { isSettled } from '../formulas/priority'
import { growthAfterLoss } from '../formulas/growth'
import { growthRate } from './growthRate'
import type { GrowingLimb } from './growingLimb'
import type { LimbTrack } from './limbTracks'
import type { Outcome, WaitsFor } from './plan'
import { priorityOf, type VisitConditions } from './visitConditions'

/** What holds after the last planned visit, and the year it falls in. */
export interface AfterLastVisit {
  readonly conditions: VisitConditions
  readonly year: number
}

/** How every limb ends that had a priority over 10 at the survey, or an obligation. */
export function outcomesOf(
  tracks: readonly LimbTrack[],
  surveyYear: number,
  last: AfterLastVisit
): Outcome[] {
  const { rules } = last.conditions
  const outcomes: Outcome[] = []
  for (const track of tracks)
    if (isOver(track.priority, rules.clearedBelow) || track.obliged)
      outcomes.push(endOf(track, surveyYear, last))
  return outcomes
}

/** The first of the ends that is true; a limb whose obligation waits is neither settled nor expected to be. */
function endOf(track: LimbTrack, surveyYear: number, last: AfterLastVisit): Outcome {
  const { removed, settled, obliged, hold, priorityAfter } = track
  const { rules } = last.conditions
  if (removed !== null) return ends(track, 'removed', removed.visit, removed.year)
  if (hold === null) {
    if (settled !== null) return ends(track, 'settled', settled.visit, settled.year)
    const year = settlesIn(track, surveyYear, last)
    if (year !== null) return ends(track, 'expected', null, year)
    if (obliged && isUnder(priorityAfter, rules.clearedBelow)) return ends(track, 'done', null, null)
  }
  const heldBy = waitsFor(track, last.conditions)
  return ends(track, heldBy === null ? 'keep' : 'wait', null, null, heldBy)
}

function ends(
  { limb, priority, priorityAfter }: LimbTrack,
  outcome: Outcome['outcome'],
  visit: number | null,
  year: number | null,
  heldBy: WaitsFor | null = null
): Outcome {
  const { surveyed, isStem } = limb
  return { limb: surveyed, outcome, visit, year, heldBy, priority, priorityAfter, isStem }
}

function waitsFor({ limb, hold, waits }: LimbTrack, conditions: VisitConditions): WaitsFor | null {
  if (limb.surveyed.decay) return 'inspect first'
  if (conditions.waitsForLeader && hold === null && !limb.isStem) return 'leader'
  return waits || hold === 'allowance' ? 'allowance' : null
}

/** The year in which a shortened limb is settled by growth alone, or null where it is not within 25 years. */
function settlesIn({ limb, left }: LimbTrack, surveyYear: number, last: AfterLastVisit): number | null {
  if (left === null || !isSettledAt(limb, 0, last.conditions)) return null
  const { conditions } = last
  const { rules, years, stemGrowth } = conditions
  let { diameter, stem, lossAge } = left
  const end = surveyYear + rules.expectedYears
  for (let year = last.year; year < end;) {
    const rate = growthRate(limb, aspectRatio(diameter, stem), limb.tip, true, conditions)
    for (let passed = 0; passed < years && year < end; passed++) {
      diameter += growthAfterLoss(rate, left.loss, 1, lossAge, limb.fade)
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
