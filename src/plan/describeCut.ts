import type { Rules } from '../../shared/rules'
import { atLeast, isOver } from '../formulas/boundary'
import { lateralFraction, lateralMin } from '../formulas/cuts'
import { standing } from '../formulas/priority'
import type { Limb, Tree } from '../inventory/inventory'
import { inClearance } from './clearance'
import { lengthLeft, type GrowingLimb } from './growingLimb'
import type { Obligation } from './obligation'
import type { AssessedLimb } from './assessLimb'
import type { Cut, CutWork } from './plan'
import type { PossibleCut } from './possibleCut'
import type { MeasuredDeadwood } from './prepareTree'
import { deadWoodSource, reasonForCut, reasonForDeadWood, reasonForLostLeader, sourceOf } from './reasons'
import { ratioAsSurveyed } from './unionStem'
import type { VisitConditions } from './visitConditions'

/** A chosen cut in words and numbers. A limb that this plan cut before has no positions: it is measured then. */
export function describeCut(
  assessed: AssessedLimb,
  cut: PossibleCut,
  obligation: Obligation | null,
  conditions: VisitConditions
): Cut {
  const { limb, aspectRatio, priority } = assessed
  const { kind, cutDiameter, tipAfter } = cut
  const { rules } = conditions
  const isForecast = limb.earlier !== null
  const place = isForecast || kind === 'raise' ? null : cutDiameter
  const isReduced = kind === 'reduce'
  return {
    limb: limb.surveyed,
    kind,
    obligation,
    must: obligation !== null || atLeast(priority, rules.urgentFrom),
    share: cut.share,
    count: cut.count,
    cutDiameter: place,
    lateralMin: place !== null && isReduced ? lateralMin(place, lateralFraction(place, rules)) : null,
    cutHeight: isForecast ? null : cut.cutHeight,
    distance: isForecast ? null : cut.distance,
    tipAfter: isReduced && !isForecast ? tipAfter : null,
    endsAt: kind === 'remove' ? null : tipAfter,
    work: workOf(limb, cut, isForecast),
    dose: cut.dose,
    aspectRatio,
    projectedAspectRatio: kind === 'remove' ? null : cut.nextRatio,
    priority,
    nextPriority: cut.nextPriority,
    standing: standing(aspectRatio, limb.surveyed.bark, rules),
    live: true,
    inClearance: obligation === 'clearance' || inClearance(limb, conditions),
    marked: isOver(place ?? 0, rules.markedCut),
    needsReason: isOver(place ?? 0, rules.reasonedCut),
    reason: reasonForCut(assessed, cut, obligation, conditions),
    source: sourceOf(assessed, cut, obligation, conditions)
  }
}

/** Hours are estimated by the larger of d·√f and the earlier cut grown with its limb, weights by the length that is left. */
function workOf(limb: GrowingLimb, cut: PossibleCut, isForecast: boolean): CutWork {
  const { earlier, diameter, origin, tip } = limb
  const grown = isForecast && earlier !== null ? (earlier.diameter * diameter) / earlier.limb : 0
  const height = cut.kind === 'remove' ? origin : (cut.cutHeight ?? tip - cut.beyond * (tip - origin))
  const section = Math.max(cut.cutDiameter * Math.sqrt(cut.count), grown)
  return {
    diameter: Math.max(cut.cutDiameter, cut.count > 1 ? 0 : grown),
    count: cut.count,
    height,
    section,
    part: lengthLeft(limb) * cut.beyond
  }
}

/** A dead limb comes off without costing live foliage. */
export function deadCut(tree: Tree, limb: MeasuredDeadwood, rules: Rules): Cut {
  const ratio = ratioAsSurveyed(tree, limb)
  const onIt = tree.limbs.filter(({ dead, parent }) => !dead && parent === limb.id)
  return {
    ...bareCut(limb, limb.diameter, rules),
    kind: 'remove',
    obligation: 'dead',
    work: { diameter: limb.diameter, count: 1, height: limb.origin, section: limb.diameter, part: 1 },
    aspectRatio: ratio,
    standing: ratio === null ? null : standing(ratio, limb.bark, rules),
    live: false,
    reason: reasonForDeadWood(limb, onIt),
    source: deadWoodSource
  }
}

/** A leader that is broken is cut back; what lies beyond is lost already. */
export function lostLeaderCut(limb: Limb, cut: PossibleCut, conditions: VisitConditions): Cut {
  const { rules } = conditions
  const diameter = limb.diameter === null || cut.cutHeight === null ? null : cut.cutDiameter
  const size = diameter ?? limb.diameter ?? 0
  return {
    ...bareCut(limb, diameter, rules),
    kind: 'reduce',
    obligation: 'broken',
    share: cut.share,
    lateralMin: diameter === null ? null : lateralMin(diameter, lateralFraction(diameter, rules)),
    cutHeight: cut.cutHeight,
    endsAt: cut.tipAfter,
    work: { diameter: size, count: 1, height: cut.cutHeight ?? limb.tip, section: size, part: cut.beyond },
    aspectRatio: null,
    standing: null,
    live: true,
    reason: reasonForLostLeader(limb, cut, conditions),
    source: deadWoodSource
  }
}

function bareCut(limb: Limb, diameter: number | null, rules: Rules) {
  return {
    limb,
    must: true,
    share: 1,
    count: 1,
    cutDiameter: diameter,
    lateralMin: null,
    cutHeight: null,
    distance: null,
    tipAfter: null,
    endsAt: null,
    dose: 0,
    projectedAspectRatio: null,
    priority: 0,
    nextPriority: 0,
    inClearance: false,
    marked: isOver(diameter ?? 0, rules.markedCut),
    needsReason: isOver(diameter ?? 0, rules.reasonedCut)
  }
}
