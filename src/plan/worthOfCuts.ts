import type { Rules } from '../../shared/rules'
import { atLeast, inOrder, isOver, isUnder } from '../formulas/boundary'
import { pointsForFoliage, pointsNeeded } from '../formulas/worth'
import type { AssessedLimb } from './assessLimb'
import type { PossibleCut } from './possibleCut'
import type { VisitConditions } from './visitConditions'

/**
 * The cuts of a limb that are worth making: each lowers the next priority by what its foliage and its size ask, and each
 * step from a smaller one is worth the foliage that it takes more. Least foliage first.
 */
export function worthyCuts(
  assessed: AssessedLimb,
  cuts: readonly PossibleCut[],
  conditions: VisitConditions
): PossibleCut[] {
  const { rules } = conditions
  const worthy: PossibleCut[] = []
  const { priority, nextPriority: kept } = assessed
  for (const cut of byDose(cuts)) {
    const needed = pointsNeeded({ dose: cut.dose, cutDiameter: cut.cutDiameter, priority }, rules)
    if (!atLeast(kept - cut.nextPriority, needed) || isTwig(assessed, cut, conditions)) continue
    if (isWorthEachStep(cut, worthy, rules)) worthy.push(cut)
  }
  return worthy
}

/** Least foliage first, as they mostly stand. */
function byDose(cuts: readonly PossibleCut[]): readonly PossibleCut[] {
  let before = 0
  for (const { dose } of cuts) {
    if (isUnder(dose, before)) return [...cuts].sort((a, b) => inOrder(a.dose, b.dose))
    before = dose
  }
  return cuts
}

/** Worth the foliage that it takes more than every smaller cut that is offered. */
function isWorthEachStep(cut: PossibleCut, smaller: readonly PossibleCut[], rules: Rules): boolean {
  for (const { dose, nextPriority } of smaller) {
    const isStep = isOver(cut.dose, dose)
    if (isStep && !atLeast(nextPriority - cut.nextPriority, pointsForFoliage(cut.dose - dose, rules)))
      return false
  }
  return true
}

/** A cut too small to be worth a climb: more than 2.4 m above ground and under 20 mm, on a limb of little priority. */
function isTwig({ limb, priority }: AssessedLimb, cut: PossibleCut, { rules }: VisitConditions): boolean {
  const height = cut.kind === 'remove' ? limb.origin : limb.tip - cut.beyond * (limb.tip - limb.origin)
  return (
    isOver(height, rules.smallCutAbove / 1000) &&
    isUnder(cut.cutDiameter, rules.leastHighCut) &&
    isUnder(priority, rules.smallCutPriority)
  )
}
