import { visitInterval, type Rules } from '../../shared/rules'
import type { LifeStage } from '../../shared/choices'
import { atLeast } from '../formulas/boundary'
import { allowedRemoval } from '../formulas/removal'
import { choosingForVisit, cutOf, priorityAfter, type VisitChoice } from './chooseForVisit'
import { clearanceForecast, clearanceLater, clearanceNow } from './clearanceReached'
import { setShares } from './crown'
import { describeVisit } from './describeVisit'
import { growTree, makeCuts } from './growTree'
import { followLimbs, followVisit, keepAsLeft, type LimbTrack } from './limbTracks'
import { outcomesOf, type AfterLastVisit } from './outcomes'
import type { ClearanceReached, Outcome, Visit } from './plan'
import type { PreparedTree } from './prepareTree'
import type { InTurns } from './turns'
import { conditionsOf, type VisitConditions } from './visitConditions'

/** Which visits to plan and by which rules. */
export interface VisitsWanted {
  readonly rules: Rules
  /** ISO date of the plan; the first visit falls in its year. */
  readonly date: string
  readonly year: number
  /** Visits to plan at most. */
  readonly visits: number
  /** Is shown the choice of every planned visit, before its second pass is applied. */
  readonly watch?: (choice: VisitChoice, conditions: VisitConditions) => void
}

/** The visits of a tree, how its limbs end, how far its clearance is reached, and its competing leaders before any cut. */
export interface PlannedVisits {
  readonly visits: readonly Visit[]
  readonly outcomes: readonly Outcome[]
  readonly clearance: ClearanceReached | null
  readonly leaders: number
}

/** Plans the visits at their interval, in turns; a later one only where it is worth the trip. */
export function* planVisits(
  tree: PreparedTree,
  allowedFirst: number,
  wanted: VisitsWanted
): InTurns<PlannedVisits> {
  if (tree.tree.limbs.length === 0) return { visits: [], outcomes: [], clearance: null, leaders: 0 }
  const { rules, year: surveyYear } = wanted
  const visits: Visit[] = []
  let tracks: readonly LimbTrack[] = []
  let clearance: ClearanceReached | null = null
  let last: AfterLastVisit | null = null
  let leaders = 0
  let lost: readonly Outcome[] = []
  let { crownBase, stage } = tree
  let year = surveyYear
  for (let slot = 1; slot <= wanted.visits; slot++) {
    const first = slot === 1
    const years = visitInterval(rules, stage)
    const allowed = first ? allowedFirst : allowedLater(tree, stage, rules)
    const conditions = conditionsOf(tree, { rules, stage, crownBase, year, years, allowed, first })
    setShares(tree)
    const choice = yield* choosingForVisit(tree, conditions)
    if (first) {
      tracks = followLimbs(choice)
      leaders = choice.leaders
      lost = lostLeaders(choice)
    }
    const when = first || isWorthTheTrip(choice, conditions) ? { visit: visits.length + 1, year } : null
    followVisit(tracks, choice, conditions, when)
    if (when !== null) {
      wanted.watch?.(choice, conditions)
      visits.push(describeVisit(tree, conditions, choice, when))
      makeCuts(choice.assessed, choice)
      crownBase = choice.crownBaseAfter
      const isSameCrown = crownBase === conditions.crownBase
      const after = isSameCrown
        ? conditions
        : conditionsOf(tree, { rules, stage, crownBase, year, years, allowed, first })
      clearance = first ? clearanceNow(tree, choice, after, year) : clearanceLater(clearance, after, year)
      last = { conditions: after, year }
      keepAsLeft(tracks)
    }
    if (slot < wanted.visits) growTree(conditions)
    year += years
    if (stage === 'planting') stage = 'young'
  }
  if (last === null) return { visits, outcomes: [], clearance, leaders }
  return {
    visits,
    outcomes: [...lost, ...outcomesOf(tracks, surveyYear, last)],
    clearance: clearanceForecast(clearance, tree, last.conditions, surveyYear),
    leaders
  }
}

function allowedLater({ vigor, tree }: PreparedTree, stage: LifeStage, rules: Rules): number {
  return allowedRemoval(stage, vigor, 0, tree.localLimit ?? 1, rules)
}

/** A later visit has an obligation, lowers the priorities by 10 points together, or lowers one of 40 or more. */
function isWorthTheTrip(choice: VisitChoice, { rules }: VisitConditions): boolean {
  const { pass, assessed, limbsCut } = choice
  if (pass.made.length > 0) return true
  if (limbsCut.length === 0) return false
  let lowered = 0
  for (const each of assessed) {
    if (cutOf(choice, each.limb) !== undefined && atLeast(each.priority, rules.urgentFrom)) return true
    lowered += each.nextPriority - priorityAfter(each, choice)
  }
  return atLeast(lowered, rules.visitGain)
}

/** A broken leader that was cut back: what took over is told beside the leader, and nothing else is wanted of it. */
function lostLeaders({ pass }: VisitChoice): Outcome[] {
  return pass.made.flatMap(({ surveyed, limb }): Outcome[] =>
    limb === null
      ? [
          {
            limb: surveyed,
            outcome: 'done',
            visit: null,
            year: null,
            heldBy: null,
            priority: 0,
            priorityAfter: 0,
            isStem: false
          }
        ]
      : []
  )
}
