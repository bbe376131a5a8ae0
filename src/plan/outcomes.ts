import { aspectRatio } from '../formulas/diameters'
import { isOver } from '../formulas/boundary'
import { isSettled } from '../formulas/priority'
import { growLimb } from './growTree'
import type { GrowingLimb } from './growingLimb'
import type { LimbTrack } from './limbTracks'
import { outcomeWords } from './outcomeWords'
import type { Outcome, WaitsFor } from './plan'
import { priorityOf, type VisitConditions } from './visitConditions'

/** The limbs as the last planned visit leaves them, and the year it falls in. */
export interface AfterLastVisit {
  readonly conditions: VisitConditions
  readonly year: number
  readonly limbs: ReadonlyMap<GrowingLimb, GrowingLimb>
}

type End = Pick<Outcome, 'outcome' | 'visit' | 'year' | 'heldBy'>

/** How every limb ends that had a priority over 10 at the survey, or an obligation. */
export function outcomesOf(
  tracks: readonly LimbTrack[],
  surveyYear: number,
  last: AfterLastVisit
): Outcome[] {
  const { rules } = last.conditions
  const told = tracks.filter(({ priority, obliged, limb }) => {
    return isOver(priority, rules.clearedBelow) || obliged || (limb.surveyed.broken && limb.surveyed.decay)
  })
  return told.map((track) => {
    const end = endOf(track, surveyYear, last)
    const { limb, priority, priorityAfter } = track
    const words = outcomeWords(end, track, rules)
    return { limb: limb.surveyed, ...end, priority, priorityAfter, words }
  })
}

/** The first of the ends that is true. */
function endOf(track: LimbTrack, surveyYear: number, last: AfterLastVisit): End {
  const { removed, settled, obliged, hold, priorityAfter } = track
  const { rules } = last.conditions
  const none = { visit: null, year: null, heldBy: null }
  if (removed !== null) return { ...none, outcome: 'removed', visit: removed.visit, year: removed.year }
  if (settled !== null && hold === null)
    return { ...none, outcome: 'settled', visit: settled.visit, year: settled.year }
  const year = hold === null ? settlesIn(track.limb, surveyYear, last) : null
  if (year !== null) return { ...none, outcome: 'expected', year }
  if (obliged && hold === null && priorityAfter < rules.clearedBelow) return { ...none, outcome: 'done' }
  const heldBy = waitsFor(track, last.conditions)
  return heldBy === null ? { ...none, outcome: 'keep' } : { ...none, outcome: 'wait', heldBy }
}

function waitsFor({ limb, hold, waits }: LimbTrack, conditions: VisitConditions): WaitsFor | null {
  if (limb.surveyed.decay) return 'inspect first'
  if (conditions.waitsForLeader && hold === null && !limb.isStem) return 'leader'
  return waits || hold === 'allowance' ? 'allowance' : null
}

/** The year in which a shortened limb is settled by growth alone, or null where it is not within 25 years. */
function settlesIn(limb: GrowingLimb, surveyYear: number, last: AfterLastVisit): number | null {
  const after = last.limbs.get(limb)
  if (after === undefined || !after.shortened) return null
  const { conditions } = last
  const { rules, years } = conditions
  const then = { ...after }
  for (let year = last.year; year < surveyYear + rules.expectedYears; year += years) {
    const before = { ...then }
    growLimb(then, years, conditions)
    for (let passed = 1; passed <= years && year + passed <= surveyYear + rules.expectedYears; passed++) {
      const each = { ...before }
      growLimb(each, passed, conditions)
      if (isSettledNow(each, conditions)) return year + passed
    }
  }
  return null
}

function isSettledNow(limb: GrowingLimb, conditions: VisitConditions): boolean {
  const ratio = aspectRatio(limb.diameter, limb.stem)
  const priority = priorityOf(limb, ratio, limb.tip, conditions)
  return isSettled(ratio, priority, limb.surveyed.bark, conditions.rules)
}
