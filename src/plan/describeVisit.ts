import { liveCrownRatio, shareBelow } from '../formulas/crown'
import { standing } from '../formulas/priority'
import type { AssessedLimb } from './assessLimb'
import { cutOf, isGoneWithParent, priorityAfter, type VisitChoice } from './chooseForVisit'
import { deadCut, describeCut, lostLeaderCut } from './describeCut'
import { foliageFrom, presentShare } from './growingLimb'
import type { Cut, Decision, LimbState, Visit } from './plan'
import type { PossibleCut } from './possibleCut'
import type { PreparedTree } from './prepareTree'
import { isHeld, reasonForKeeping } from './reasonsForKeeping'
import type { VisitConditions } from './visitConditions'

/** Which of a tree's visits it is, counted from 1, and when it falls. */
export type VisitTime = Pick<Visit, 'visit' | 'year'>

/**
 * The visit in words and numbers, once its choice is made and before its second pass is applied. The cuts stand in the
 * order in which they are seen to: dead wood (at the first visit), the other obligations, then structure by priority.
 */
export function describeVisit(
  tree: PreparedTree,
  conditions: VisitConditions,
  choice: VisitChoice,
  { visit, year }: VisitTime
): Visit {
  const { pass, crownBefore, crownBaseAfter: base } = choice
  const cuts: Cut[] = []
  let dose = 0
  if (visit === 1) for (const limb of tree.dead) cuts.push(deadCut(tree.tree, limb, conditions.rules))
  for (const { surveyed, assessed, cut, obligation } of pass.made) {
    dose += cut.dose
    cuts.push(
      assessed === null
        ? lostLeaderCut(surveyed, cut, conditions)
        : describeCut(assessed, cut, obligation, conditions)
    )
  }
  const structure: Cut[] = []
  let objective = 0
  for (const assessed of choice.assessed) {
    const next = priorityAfter(assessed, choice)
    objective += next * next
    const cut = cutOf(choice, assessed.limb)
    if (cut === undefined) continue
    dose += cut.dose
    structure.push(describeCut(assessed, cut, null, conditions))
  }
  cuts.push(...structure.sort((a, b) => b.priority - a.priority))
  return {
    visit,
    year,
    allowedRemoval: conditions.allowed,
    dose: Math.min(dose, conditions.allowed),
    objective,
    cuts,
    limbs: statesOf(choice, conditions),
    crownBaseAfter: base,
    liveCrownRatioAfter: liveCrownRatio(conditions.height, base),
    lowerFoliageBefore: crownBefore.lowerShare,
    lowerFoliageAfter: lowerAfter(choice, conditions)
  }
}

/** Every limb that was there before any cut, with what was decided. */
function statesOf(choice: VisitChoice, conditions: VisitConditions): LimbState[] {
  const { before, pass, assessed } = choice
  if (pass.made.length === 0)
    return assessed.map((each) => stateOf(each, each, undefined, choice, conditions))
  const left = new Map(assessed.map((each) => [each.limb, each]))
  const made = new Map(pass.made.map((each) => [each.limb, each]))
  return before.map((each) => {
    const obliged = made.get(each.limb)
    return stateOf(obliged?.assessed ?? each, left.get(each.limb) ?? each, obliged?.cut, choice, conditions)
  })
}

function stateOf(
  before: AssessedLimb,
  after: AssessedLimb,
  obliged: PossibleCut | undefined,
  choice: VisitChoice,
  conditions: VisitConditions
): LimbState {
  const { aspectRatio, priority } = before
  const { limb } = after
  const chosen = cutOf(choice, limb)
  const cut = chosen ?? obliged
  const isGone = isGoneWithParent(choice, limb) || (limb.gone && cut === undefined)
  const goes = isGone || cut?.kind === 'remove'
  return {
    limb: limb.surveyed,
    aspectRatio,
    standing: standing(aspectRatio, limb.surveyed.bark, conditions.rules),
    priority,
    foliageShare: presentShare(before.limb),
    decision: isGone ? 'remove' : decisionOf(after, cut, conditions),
    nextPriority: goes ? 0 : priorityAfter(after, choice),
    nextRatio: goes ? 0 : (chosen?.nextRatio ?? after.nextRatio),
    reason: isGone
      ? `goes with limb ${limb.parent?.surveyed.id ?? ''}`
      : cut === undefined
        ? reasonForKeeping(after, choice, conditions)
        : ''
  }
}

function decisionOf(
  assessed: AssessedLimb,
  cut: PossibleCut | undefined,
  conditions: VisitConditions
): Decision {
  if (cut !== undefined) return cut.kind
  return isHeld(assessed, conditions) ? 'hold' : 'retain'
}

/** Share of what is left that is in the lower two-thirds of the crown. */
function lowerAfter(choice: VisitChoice, { height, third }: VisitConditions): number {
  const { assessed, crownBefore } = choice
  const { leaderShare, leaderFrom } = crownBefore
  let all = leaderShare
  let low = leaderShare * shareBelow(leaderFrom, height, third)
  for (const { limb } of assessed) {
    const cut = cutOf(choice, limb)
    if (limb.parent !== null || cut?.kind === 'remove') continue
    const left = presentShare(limb) - (cut?.dose ?? 0)
    const tip = cut?.tipAfter ?? limb.tip
    all += left
    low += left * shareBelow(foliageFrom(limb, tip), tip, third)
  }
  return all > 0 ? low / all : 0
}
