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
  const worthy: PossibleCut[] = []
  for (const cut of byDose(cuts))
    if (whyUnworthy(assessed, cut, worthy, conditions) === null) worthy.push(cut)
  return worthy
}

/** Why a cut is not worth making: it lowers the priority too little, is a twig high up, or its step from a smaller one is not. */
export type Unworthy = 'gain' | 'twig' | 'step'

/** What the worth of a cut is judged by. */
export type JudgedCut = Pick<PossibleCut, 'kind' | 'cutDiameter' | 'beyond' | 'dose' | 'nextPriority'>

/** What stands against the worth of a cut, given the smaller ones that are worth making; null where nothing does. */
export function whyUnworthy(
  assessed: AssessedLimb,
  cut: JudgedCut,
  smaller: readonly PossibleCut[],
  conditions: VisitConditions
): Unworthy | null {
  const { rules } = conditions
  if (!gainsEnough(assessed, cut.dose, cut.cutDiameter, cut.nextPriority, rules)) return 'gain'
  if (isTwig(assessed, cut, conditions)) return 'twig'
  return stepNotWorth(cut, smaller, rules) === null ? null : 'step'
}

/** Whether a cut lowers the next priority of a limb by what its foliage and its size ask. */
function gainsEnough(
  { priority, nextPriority: kept }: AssessedLimb,
  dose: number,
  cutDiameter: number,
  nextPriority: number,
  rules: Rules
): boolean {
  return atLeast(kept - nextPriority, pointsNeeded({ dose, cutDiameter, priority }, rules))
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

/** The smaller cut that is offered from which this one is not worth the foliage that it takes more; null where none is. */
export function stepNotWorth(
  cut: JudgedCut,
  smaller: readonly PossibleCut[],
  rules: Rules
): PossibleCut | null {
  for (const other of smaller) {
    const more = cut.dose - other.dose
    const isStep = isOver(cut.dose, other.dose)
    if (isStep && !atLeast(other.nextPriority - cut.nextPriority, pointsForFoliage(more, rules))) return other
  }
  return null
}

/** A cut too small to be worth a climb: more than 2.4 m above ground and under 20 mm, on a limb of little priority. */
function isTwig({ limb, priority }: AssessedLimb, cut: JudgedCut, { rules }: VisitConditions): boolean {
  const height = cut.kind === 'remove' ? limb.origin : limb.tip - cut.beyond * (limb.tip - limb.origin)
  return (
    isOver(height, rules.smallCutAbove / 1000) &&
    isUnder(cut.cutDiameter, rules.leastHighCut) &&
    isUnder(priority, rules.smallCutPriority)
  )
}
