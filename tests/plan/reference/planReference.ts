/** A tree's plan by the reference, in the shape that the command line prints. */
import { defaultRules, type Rules } from '../../../shared/rules'
import type { Tree } from '../../../src/inventory/inventory'
import { clearanceReached } from './clearanceReached'
import { brokenLeaderCut } from './leader'
import type { Taken, TreeNow } from './model'
import { atLeast } from './near'
import { priorityNow, ratioNow } from './options'
import { outcomes } from './outcomes'
import { surveyed } from './survey'
import { enumerate, visitsOf, type Solve, type VisitHeld } from './visits'

export const mostChoices = 3000

/** The plan, or null where the tree cannot be planned. */
export function planReference(
  tree: Tree,
  date: string,
  rules: Rules = defaultRules,
  solve: Solve = enumerate(mostChoices)
) {
  const model = surveyed(tree, rules, date)
  if (model === null) return null
  const visits = visitsOf(model, solve)
  const { leaders } = model
  const lost = brokenLeaderCut(leaders.lost === null ? -1 : tree.limbs.indexOf(leaders.lost), leaders, rules)
  return {
    tree: tree.id,
    form: model.form,
    allowedRemoval: visits[0]!.allowed,
    liveCrownRatio: (model.height - model.crownBase) / model.height,
    clearance: clearanceReached(visits),
    visits: visits
      .filter(({ held }) => held)
      .map((visit, index) => printed(visit, index + 1, index === 0 ? lost : null)),
    outcomes: [
      ...(lost === null ? [] : [{ ...done, limb: tree.limbs[lost.at]!.id, priority: 0 }]),
      ...outcomes(visits)
    ]
  }
}

export type ReferencePlan = NonNullable<ReturnType<typeof planReference>>

/** A broken leader that is cut back has met its obligation. */
const done = { outcome: 'done', visit: null, year: null, heldBy: null } as const

function printed(visit: VisitHeld, number: number, lost: Taken | null) {
  const { tree, asked, taken } = visit
  return {
    visit: number,
    year: visit.year,
    dose: taken.reduce((total, { dose }) => total + dose, 0),
    cuts: [...(lost === null ? [] : [lost]), ...taken]
      .sort((a, b) => a.at - b.at || (a.kind === 'raise' ? -1 : 1))
      .map((cut) => printedCut(tree, cut)),
    objective: visit.objective,
    ties: visit.answer.ties,
    choices: asked.limbs.length
  }
}

function printedCut(tree: TreeNow, cut: Taken) {
  const limb = tree.limbs.find(({ at }) => at === cut.at)
  // Dead wood and a lost leader have no priority.
  const isLive = limb !== undefined && !limb.limb.dead
  const priority = isLive ? priorityNow(tree, limb) : 0
  const later = limb?.shortenedInPlan === true
  return {
    limb: tree.tree.limbs[cut.at]!.id,
    kind: cut.kind,
    obligation: cut.obligation,
    must: cut.obligation !== null || atLeast(priority, tree.rules.urgentFrom),
    share: cut.share,
    count: cut.count,
    cutDiameterMm: later ? null : cut.cutDiameter,
    heightM: later ? null : cut.height,
    distanceM: later ? null : cut.distance,
    lateralMinMm: later ? null : cut.lateralMin,
    dose: cut.dose,
    aspectRatio: limb === undefined || limb.limb.stem === null ? null : ratioNow(limb),
    projectedAspectRatio: cut.nextRatio,
    priority,
    nextPriority: cut.nextPriority
  }
}
