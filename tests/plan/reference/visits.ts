/** The visits of a tree, one after the other (design, section 3, "Later visits"). */
import { allowance } from './allowance'
import { withCut } from './cutLimb'
import { grown } from './growth'
import { crownBaseAfter, isTakenAway } from './limits'
import type { LimbNow, Taken, TreeModel, TreeNow } from './model'
import { atLeast } from './near'
import { obligations, type Obliged } from './obligations'
import { priorityNow } from './options'
import {
  bestChoice,
  choicesOf,
  isLive,
  nextPriorityOf,
  objective,
  question,
  type Answer,
  type Question
} from './structure'
import { atVisit, limbsAtSurvey } from './survey'

/** What a visit comes to, whether the trip is made or not. */
export interface VisitHeld {
  readonly tree: TreeNow
  readonly year: number
  readonly allowed: number
  readonly obliged: Obliged
  readonly asked: Question
  readonly answer: Answer
  /** What is done, obligations first. */
  readonly taken: readonly Taken[]
  readonly objective: number
  /** The trip is worth it. */
  readonly held: boolean
  /** Where the crown starts after it. */
  readonly baseAfter: number
}

/** More choices than can be tried one by one. */
export class TooManyChoices extends Error {}

export type Solve = (asked: Question) => Answer

/** Tries every choice, up to so many. */
export function enumerate(most: number): Solve {
  return (asked) => {
    if (choicesOf(asked) > most) throw new TooManyChoices()
    return bestChoice(asked)
  }
}

/** Every visit that the plan looks at. */
export function visitsOf(model: TreeModel, solve: Solve): VisitHeld[] {
  const visits: VisitHeld[] = []
  let [limbs, year, base] = [limbsAtSurvey(model), model.year, model.crownBase]
  for (let slot = 0; slot < model.rules.horizonVisits; slot++) {
    const visit = visitTo(atVisit(model, limbs, slot, base), year, solve)
    visits.push(visit)
    const done = visit.held ? visit.taken : []
    const { tree, obliged } = visit
    base = visit.baseAfter
    limbs = limbsAfter(tree, done, tree.interval, visit.held ? obliged.corrected : [])
    year += visit.tree.interval
  }
  return visits
}

function visitTo(tree: TreeNow, year: number, solve: Solve): VisitHeld {
  const allowed = allowance(tree)
  const obliged = obligations(tree, allowed)
  const asked = question(tree, obliged)
  const answer = solve(asked)
  const taken = [...obliged.taken, ...answer.taken]
  const held = tree.slot === 0 || isWorthTheTrip(tree, asked, obliged, answer.taken)
  return {
    tree,
    year,
    allowed,
    obliged,
    asked,
    answer,
    taken,
    objective: objective(asked, answer.taken),
    held,
    // The obligations are met first, and then the structure.
    baseAfter: held
      ? crownBaseAfter({ ...asked.tree, crownBase: asked.tree.crownBaseNow }, answer.taken)
      : tree.crownBase
  }
}

/** An obligation, priorities lowered by 10 points together, or one of 40 or more lowered. */
function isWorthTheTrip(tree: TreeNow, asked: Question, obliged: Obliged, taken: readonly Taken[]): boolean {
  if (obliged.taken.length > 0) return true
  const lowered = asked.tree.limbs.filter(isLive).map((limb) => ({
    by: asked.without[limb.at]! - nextPriorityOf(asked.tree, asked.without, taken, limb),
    today: priorityNow(tree, limb)
  }))
  const together = lowered.reduce((total, { by }) => total + by, 0)
  return (
    atLeast(together, tree.rules.visitGain) ||
    lowered.some(({ by, today }) => by > 1e-6 && atLeast(today, tree.rules.urgentFrom))
  )
}

/** The limbs with what was cut, years later. */
export function limbsAfter(
  tree: TreeNow,
  taken: readonly Taken[],
  years: number,
  corrected: readonly number[] = []
): LimbNow[] {
  return tree.limbs.map((limb) => {
    const cuts = taken.filter(({ at }) => at === limb.at)
    const gone = limb.gone || isTakenAway(tree.limbs, taken, limb)
    const seenTo = { ...limb, corrected: limb.corrected || corrected.includes(limb.at) }
    const cut = cuts.reduce((now, each) => (each.kind === 'remove' ? now : withCut(tree, now, each)), seenTo)
    if (gone || limb.limb.dead) return { ...cut, gone }
    return { ...cut, ...grown(tree, cut, years), since: cut.since + years }
  })
}
