/** The visits of a tree, one after the other (design, section 3, "Later visits"). */
import { allowance } from './allowance'
import { grown } from './growth'
import { crownBaseAfter, isTakenAway } from './limits'
import type { LimbNow, Taken, TreeModel, TreeNow } from './model'
import { atLeast } from './near'
import { obligations, type Obliged } from './obligations'
import { priorityNow } from './options'
import {
  bestChoice,
  choicesOf,
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
    base = crownBaseAfter(visit.tree, done)
    limbs = limbsAfter(visit.tree, done, visit.tree.interval)
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
  return {
    tree,
    year,
    allowed,
    obliged,
    asked,
    answer,
    taken,
    objective: objective(asked, taken),
    held: tree.slot === 0 || isWorthTheTrip(tree, asked, obliged, taken)
  }
}

/** An obligation, priorities lowered by 10 points together, or one of 40 or more lowered. */
function isWorthTheTrip(tree: TreeNow, asked: Question, obliged: Obliged, taken: readonly Taken[]): boolean {
  if (obliged.taken.length > 0) return true
  const lowered = tree.limbs
    .filter(({ gone, limb }) => !gone && !limb.dead)
    .map((limb) => ({
      by: asked.without[limb.at]! - nextPriorityOf(tree, asked.without, taken, limb),
      today: priorityNow(tree, limb)
    }))
  const together = lowered.reduce((total, { by }) => total + by, 0)
  return (
    atLeast(together, tree.rules.visitGain) ||
    lowered.some(({ by, today }) => by > 1e-6 && atLeast(today, tree.rules.urgentFrom))
  )
}

/** The limbs with what was cut, years later. */
export function limbsAfter(tree: TreeNow, taken: readonly Taken[], years: number): LimbNow[] {
  return tree.limbs.map((limb) => {
    const cuts = taken.filter(({ at }) => at === limb.at)
    const gone = limb.gone || isTakenAway(tree.limbs, taken, limb)
    const cut = cuts.reduce(afterCut, limb)
    if (gone || limb.limb.dead) return { ...cut, gone }
    const older = (losses: LimbNow['losses']) =>
      losses.map((loss) => ({ ...loss, years: loss.years + years }))
    return {
      ...cut,
      ...grown(tree, cut, years),
      losses: older(cut.losses),
      lossesOfPlan: older(cut.lossesOfPlan)
    }
  })
}

function afterCut(limb: LimbNow, { kind, share, tipAfter, height }: Taken): LimbNow {
  const loss = { share, years: 0 }
  const after = {
    ...limb,
    losses: [...limb.losses, loss],
    lossesOfPlan: [...limb.lossesOfPlan, loss],
    cutBefore: true
  }
  if (kind === 'raise') return { ...after, raisedTo: height }
  if (kind === 'remove') return after
  return { ...after, tip: tipAfter ?? limb.tip, shortened: true, shortenedInPlan: true }
}
