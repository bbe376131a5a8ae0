import {
  cutDiameter,
  cutHeight as heightOfCut,
  cutShare,
  diameterAlong,
  lateralFraction,
  lateralMin,
  shareDose,
  tipAfterCut
} from '../formulas/cuts'
import { aspectRatio } from '../formulas/diameters'
import { growthAfterLoss, lossAfterCut, ratioAfterGrowth } from '../formulas/growth'
import { alongParent, carried, type GrowingLimb } from './growingLimb'
import type { Barrier, OfferedCuts, PossibleCut, Prospect } from './possibleCut'
import { priorityOf, type VisitConditions } from './visitConditions'

/** The reductions that can be made on a limb: the one measured on it where there is one, otherwise the table's. */
export function reductionsOf(prospect: Prospect, conditions: VisitConditions): OfferedCuts {
  const cuts: PossibleCut[] = []
  const measured = measuredCut(prospect)
  const barrier =
    measured === null
      ? addSteps(cuts, prospect, conditions)
      : addMeasured(cuts, prospect, measured, conditions)
  return { cuts, barrier }
}

/** The cut that the surveyor measured on a limb that has not been cut since, or null. */
function measuredCut({ limb }: Prospect): number | null {
  const { cut } = limb.surveyed
  return cut !== null && cut < limb.diameter && limb.loss === 0 ? cut : null
}

/** Offers the cut measured on the limb, in place of the table's. */
function addMeasured(
  cuts: PossibleCut[],
  prospect: Prospect,
  measured: number,
  conditions: VisitConditions
): Barrier | null {
  const { lateral } = prospect.limb.surveyed
  const needed = lateralFraction(measured, conditions.rules)
  if (lateral !== null && lateral < lateralMin(measured, needed) - 1e-9) return 'lateral'
  const share = cutShare(measured, prospect.limb.diameter)
  const lateralRatio = Math.min(1, lateral === null ? needed : aspectRatio(lateral, measured))
  const reduction = { share, cutDiameter: measured, lateralRatio, lateral: null }
  return addReduction(cuts, prospect, reduction, conditions)
}

/** Offers the cuts back to listed limbs, then the table's; gives what stands against them where none can be made. */
function addSteps(cuts: PossibleCut[], prospect: Prospect, conditions: VisitConditions): Barrier | null {
  const { limb } = prospect
  let barrier: Barrier | null = null
  let possible = false
  for (const child of limb.children) if (addCutToLateral(cuts, prospect, child, conditions)) possible = true
  for (const share of conditions.steps) {
    if (limb.children.length > 0 && hasLateralNear(cuts, share)) continue
    const diameter = cutDiameter(limb.diameter, share)
    const lateralRatio = lateralFraction(diameter, conditions.rules)
    const reduction = { share, cutDiameter: diameter, lateralRatio, lateral: null }
    const against = addReduction(cuts, prospect, reduction, conditions)
    if (against === null) possible = true
    else barrier ??= against
  }
  return possible ? null : barrier
}

/** A listed limb that fits is the lateral: it stands for the step of the table that is nearest. */
function hasLateralNear(cuts: readonly PossibleCut[], share: number): boolean {
  for (const { lateral, share: listed } of cuts)
    if (lateral !== null && Math.abs(listed - share) < 1 / 16) return true
  return false
}

/** A cut back to a listed limb that is thick enough to take over: it becomes the tip. */
function addCutToLateral(
  cuts: PossibleCut[],
  prospect: Prospect,
  lateral: GrowingLimb,
  conditions: VisitConditions
): boolean {
  const { limb } = prospect
  const { steps, rules } = conditions
  const along = alongParent(lateral, limb)
  if (lateral.gone || !(along > 0 && along < 1)) return false
  const diameter = diameterAlong(limb.diameter, along)
  const share = cutShare(diameter, limb.diameter)
  if (share < (steps[0] ?? 0) - 1e-9 || share > (steps.at(-1) ?? 0) + 1e-9) return false
  const ratio = aspectRatio(lateral.diameter, diameter)
  if (ratio < lateralFraction(diameter, rules) - 1e-9) return false
  const reduction = { share, cutDiameter: diameter, lateralRatio: Math.min(1, ratio), lateral }
  return addReduction(cuts, prospect, reduction, conditions) === null
}

/** A reduction to be judged: what it takes, where it is made, and what takes over as the tip. */
interface Reduction {
  readonly share: number
  readonly cutDiameter: number
  /** Lateral over cut. */
  readonly lateralRatio: number
  readonly lateral: GrowingLimb | null
}

/** Offers one reduction if it can be made and lowers the next priority enough; gives what stands against it. */
function addReduction(
  cuts: PossibleCut[],
  prospect: Prospect,
  { share, cutDiameter: diameter, lateralRatio, lateral }: Reduction,
  conditions: VisitConditions
): Barrier | null {
  const { limb, growth, stem, nextPriority: unpruned, least, asked } = prospect
  const height = heightOfCut(limb, share)
  const expected = tipAfterCut(limb, share, lateralRatio)
  const tipAfter = lateral === null ? expected : Math.min(limb.tip, Math.max(lateral.tip, height))
  const against = whyNotReduced(limb, diameter, height, tipAfter, conditions)
  if (against !== null) return against
  const kept = carried(limb)
  const gain = growthAfterLoss(growth, lossAfterCut(kept, share), conditions.years, 0, limb.fade)
  const nextRatio = ratioAfterGrowth({ diameter: limb.diameter, gain }, stem)
  const nextPriority = priorityOf(limb, nextRatio, tipAfter, conditions)
  if (unpruned - nextPriority < least) return null
  cuts.push({
    kind: 'reduce',
    share,
    cutDiameter: diameter,
    cutHeight: limb.tip > limb.origin ? height : null,
    tipAfter,
    dose: shareDose(share, limb.share) * kept,
    nextRatio,
    nextPriority,
    asked: asked ? 1 : 0,
    lateral
  })
  return null
}

/** What stands against a reduction: too small a cut, below the foliage, or a stub; null where nothing does. */
function whyNotReduced(
  limb: GrowingLimb,
  diameter: number,
  height: number,
  tipAfter: number,
  { rules, crownBase }: VisitConditions
): Barrier | null {
  if (diameter < rules.leastCut - 1e-9) return 'small'
  if (limb.tip > limb.origin) {
    const lateral = limb.surveyed.lateralHeight
    const floor = lateral !== null && lateral > crownBase ? lateral : crownBase
    if (height < floor - 1e-9) return 'bare'
  }
  const surveyed = limb.firstTip - limb.origin
  if (surveyed !== 0 && (tipAfter - limb.origin) / surveyed < rules.leastLength - 1e-9) return 'short'
  return null
}
