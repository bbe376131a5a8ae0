import { visitInterval, type Rules } from '../../shared/rules'
import { allowedRemoval } from '../formulas/removal'
import type { Limb } from '../inventory/inventory'
import { chooseForVisit, priorityAfter, type VisitChoice } from './chooseForVisit'
import { inClearance } from './clearance'
import { setShares } from './crown'
import { describeVisit } from './describeVisit'
import { isDefective } from './growingLimb'
import { growTree } from './growTree'
import type { Remaining, Visit } from './plan'
import type { PreparedTree } from './prepareTree'
import { whatWouldClear } from './reasons'
import { conditionsOf, type VisitConditions } from './visitConditions'

/** Which visits to plan and by which rules. */
export interface VisitsWanted {
  readonly rules: Rules
  /** Year of the first visit. */
  readonly year: number
  /** Visits to plan, and to look at beyond the last one planned. */
  readonly visits: number
  readonly lookAhead: number
}

/** The visits of a tree, what remains after them, and its competing leaders before any cut. */
export interface PlannedVisits {
  readonly visits: readonly Visit[]
  readonly remaining: readonly Remaining[]
  readonly leaders: number
}

/**
 * Plans the visits at their interval until every next priority is cleared or the horizon ends, and looks ahead for when
 * the limbs that remain would be cleared.
 */
export function planVisits(tree: PreparedTree, allowedFirst: number, wanted: VisitsWanted): PlannedVisits {
  if (tree.tree.limbs.length === 0) return { visits: [], remaining: [], leaders: 0 }
  const { rules, year, visits: planned, lookAhead } = wanted
  const years = visitInterval(rules, tree.stage)
  const visits: Visit[] = []
  let remaining: readonly Remaining[] = []
  let crownBase = tree.crownBase
  let leaders = 0
  for (let number = 1; number <= planned + lookAhead; number++) {
    const first = number === 1
    const allowed = first ? allowedFirst : allowedLater(tree, rules)
    const conditions = conditionsOf(tree, { rules, crownBase, years, allowed, first })
    setShares(tree)
    const choice = chooseForVisit(tree, conditions)
    const outOfFoliage = allowed <= 0 && !first
    if (first) leaders = choice.leaders
    if (number <= planned) {
      const time = { visit: number, year: year + (number - 1) * years }
      visits.push(describeVisit(tree, conditions, choice, time))
      const done = outOfFoliage || isDone(choice, conditions)
      if (done || number === planned) remaining = remainingAfter(choice, conditions)
      if (done) break
    } else {
      remaining = withCleared(remaining, number, choice, rules)
      if (outOfFoliage || remaining.every(({ clearedByVisit }) => clearedByVisit !== null)) break
    }
    growTree(choice.assessed, choice, conditions)
    crownBase = choice.crownBaseAfter
  }
  while (visits.length > 1 && visits.at(-1)?.cuts.length === 0) visits.pop()
  return { visits, remaining, leaders }
}

function allowedLater({ stage, vigor, tree }: PreparedTree, rules: Rules): number {
  return allowedRemoval(stage, vigor, 0, tree.localLimit ?? 1, rules)
}

/** Nothing left to do: every limb cleared, and nothing that was asked for is open. */
function isDone(choice: VisitChoice, conditions: VisitConditions): boolean {
  return choice.assessed.every((assessed) => {
    const { limb } = assessed
    const cut = choice.cuts.get(limb)
    if (cut?.kind === 'remove' || choice.goneWithParent.has(limb)) return true
    if (priorityAfter(assessed, choice) >= conditions.rules.clearedBelow) return false
    return !inClearance(limb, conditions) && (cut !== undefined || !isDefective(limb))
  })
}

/** The limbs that carry a next priority of 10 or more after a visit, highest first. */
function remainingAfter(choice: VisitChoice, conditions: VisitConditions): Remaining[] {
  const remaining: Remaining[] = []
  for (const assessed of choice.assessed) {
    const priority = priorityAfter(assessed, choice)
    if (priority < conditions.rules.clearedBelow) continue
    const remedy = whatWouldClear(assessed, conditions)
    remaining.push({ limb: assessed.limb.surveyed, priority, clearedByVisit: null, remedy })
  }
  return remaining.sort((a, b) => b.priority - a.priority)
}

/** Beyond the last visit planned: the same limbs, with the visit by which each would be cleared. */
function withCleared(
  remaining: readonly Remaining[],
  visit: number,
  choice: VisitChoice,
  rules: Rules
): Remaining[] {
  const uncleared = new Set<Limb>()
  for (const assessed of choice.assessed)
    if (priorityAfter(assessed, choice) >= rules.clearedBelow) uncleared.add(assessed.limb.surveyed)
  return remaining.map((left) =>
    left.clearedByVisit !== null || uncleared.has(left.limb) ? left : { ...left, clearedByVisit: visit }
  )
}
