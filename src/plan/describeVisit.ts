import type { Rules } from '../../shared/rules'
import { liveCrownRatio, shareBelow } from '../formulas/crown'
import { lateralFraction, lateralMin } from '../formulas/cuts'
import { standing } from '../formulas/priority'
import type { Tree } from '../inventory/inventory'
import type { AssessedLimb } from './assessLimb'
import { priorityAfter, type VisitChoice } from './chooseForVisit'
import { inClearance } from './clearance'
import { carried, foliageFrom } from './growingLimb'
import type { Cut, Decision, LimbState, Visit } from './plan'
import type { PossibleCut } from './possibleCut'
import type { MeasuredDeadwood, PreparedTree } from './prepareTree'
import {
  deadWoodSource,
  isHeld,
  reasonForCut,
  reasonForDeadWood,
  reasonForKeeping,
  refusedFor,
  sourceOf
} from './reasons'
import { ratioAsSurveyed } from './unionStem'
import type { VisitConditions } from './visitConditions'

/** Which of a tree's visits it is, counted from 1, and when it falls. */
export type VisitTime = Pick<Visit, 'visit' | 'year'>

/** The visit in words and numbers, once its choice is made. Dead wood comes off at the first visit. */
export function describeVisit(
  tree: PreparedTree,
  conditions: VisitConditions,
  choice: VisitChoice,
  { visit, year }: VisitTime
): Visit {
  const { crown, crownBaseAfter: base } = choice
  const cuts: Cut[] = []
  const limbs: LimbState[] = []
  let dose = 0
  let objective = 0
  for (const assessed of choice.assessed) {
    const next = priorityAfter(assessed, choice)
    const cut = choice.cuts.get(assessed.limb)
    objective += next * next
    if (cut !== undefined) {
      dose += cut.dose
      cuts.push(cutOf(assessed, cut, conditions))
    }
    limbs.push(stateOf(assessed, next, choice, conditions))
  }
  cuts.sort((a, b) => b.priority - a.priority)
  if (visit === 1) for (const limb of tree.dead) cuts.push(deadCut(tree.tree, limb, conditions.rules))
  return {
    visit,
    year,
    allowedRemoval: conditions.allowed,
    dose: Math.min(dose, conditions.allowed),
    objective,
    cuts,
    limbs,
    crownBaseAfter: base,
    liveCrownRatioAfter: liveCrownRatio(conditions.height, base),
    lowerFoliageBefore: crown.lowerShare,
    lowerFoliageAfter: lowerAfter(choice, conditions)
  }
}

function cutOf(assessed: AssessedLimb, cut: PossibleCut, conditions: VisitConditions): Cut {
  const { limb, aspectRatio, priority } = assessed
  const { kind, cutDiameter } = cut
  const { rules } = conditions
  const removed = kind === 'remove'
  return {
    limb: limb.surveyed,
    kind,
    share: cut.share,
    cutDiameter,
    lateralMin: removed ? null : lateralMin(cutDiameter, lateralFraction(cutDiameter, rules)),
    cutHeight: cut.cutHeight,
    tipAfter: removed ? null : cut.tipAfter,
    dose: cut.dose,
    aspectRatio,
    projectedAspectRatio: removed ? null : cut.nextRatio,
    priority,
    nextPriority: cut.nextPriority,
    standing: standing(aspectRatio, limb.surveyed.bark, rules),
    live: true,
    inClearance: inClearance(limb, conditions),
    marked: cutDiameter > rules.markedCut,
    needsReason: cutDiameter > rules.reasonedCut,
    reason: reasonForCut(assessed, cut, conditions),
    refused: refusedFor(assessed, cut, conditions),
    source: sourceOf(assessed, cut, conditions)
  }
}

/** A dead limb comes off without costing live foliage. */
function deadCut(tree: Tree, limb: MeasuredDeadwood, rules: Rules): Cut {
  const { diameter } = limb
  const ratio = ratioAsSurveyed(tree, limb)
  return {
    limb,
    kind: 'remove',
    share: 1,
    cutDiameter: diameter,
    lateralMin: null,
    cutHeight: null,
    tipAfter: null,
    dose: 0,
    aspectRatio: ratio,
    projectedAspectRatio: null,
    priority: 0,
    nextPriority: 0,
    standing: ratio === null ? null : standing(ratio, limb.bark, rules),
    live: false,
    inClearance: false,
    marked: diameter > rules.markedCut,
    needsReason: diameter > rules.reasonedCut,
    reason: reasonForDeadWood(),
    refused: [],
    source: deadWoodSource
  }
}

function stateOf(
  assessed: AssessedLimb,
  nextPriority: number,
  choice: VisitChoice,
  conditions: VisitConditions
): LimbState {
  const { limb, aspectRatio, priority, nextRatio } = assessed
  const cut = choice.cuts.get(limb)
  const goes = choice.goneWithParent.has(limb)
  return {
    limb: limb.surveyed,
    aspectRatio,
    standing: standing(aspectRatio, limb.surveyed.bark, conditions.rules),
    priority,
    foliageShare: limb.share * carried(limb),
    decision: goes ? 'remove' : decisionOf(assessed, cut, conditions),
    nextPriority,
    nextRatio: goes ? 0 : (cut?.nextRatio ?? nextRatio),
    reason: goes ? `goes with limb ${limb.parent?.surveyed.id ?? ''}` : reasonOf(assessed, cut, conditions)
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

/** Why no cut is made; a cut carries its own reason. */
function reasonOf(assessed: AssessedLimb, cut: PossibleCut | undefined, conditions: VisitConditions): string {
  return cut === undefined ? reasonForKeeping(assessed, conditions) : ''
}

/** Share of what is left that is in the lower two-thirds of the crown. */
function lowerAfter({ assessed, cuts, crown }: VisitChoice, { height, third }: VisitConditions): number {
  let all = crown.leaderShare
  let low = crown.leaderShare * shareBelow(crown.leaderFrom, height, third)
  for (const { limb } of assessed) {
    const cut = cuts.get(limb)
    if (limb.parent !== null || cut?.kind === 'remove') continue
    const left = limb.share * carried(limb) - (cut?.dose ?? 0)
    const tip = cut?.tipAfter ?? limb.tip
    all += left
    low += left * shareBelow(foliageFrom(limb, tip), tip, third)
  }
  return all > 0 ? low / all : 0
}
