import { points, tenth } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { percent } from '../../../shared/words/percent'
import { isOver } from '../../formulas/boundary'
import { pointsForFoliage, pointsNeeded } from '../../formulas/worth'
import type { PossibleCut } from '../possibleCut'
import { stepNotWorth, whyUnworthy } from '../worthOfCuts'
import { cutWords, pointsText, type SeenLimb } from './seenLimb'

/** Less than this is shown as nothing. */
const nothing = 0.05

/** Why a cut that can be made is not worth making, and by which rule; null where it is worth making. */
export function unworthyWords(seen: SeenLimb, cut: PossibleCut): string | null {
  const { assessed, conditions } = seen
  const smaller = assessed.cuts.filter((other) => other !== cut && !isOver(other.dose, cut.dose))
  switch (whyUnworthy(assessed, cut, smaller, conditions)) {
    case 'gain':
      return tooLittleGained(seen, cut)
    case 'twig':
      return twigWords(seen, cut)
    case 'step':
      return stepWords(seen, cut, smaller)
    case null:
      return null
  }
}

function tooLittleGained({ assessed, conditions }: SeenLimb, cut: PossibleCut): string {
  const { rules, system } = conditions
  const { dose, cutDiameter } = cut
  const gain = assessed.nextPriority - cut.nextPriority
  const what = cutWords(cut)
  if (gain < nothing) return `${what} would not lower its priority`
  const needed = pointsNeeded({ dose, cutDiameter, priority: assessed.priority }, rules)
  const gained = pointsText(gain, 'at most')
  if (isOver(needed, pointsForFoliage(dose, rules)))
    return `${what} would lower its priority by ${gained}, and a cut of ${showDiameter(cutDiameter, system)} is asked for ${tenth(needed, 'at least')}`
  if (isOver(needed, rules.leastGain))
    return `${what} would take ${percent(dose)} of the tree’s foliage for ${gained}; 1 point is asked for each ${percent(rules.dosePerPoint)}`
  return `${what} would lower its priority by ${gained}; at least ${tenth(needed, 'at least')} are asked of a cut`
}

function twigWords({ conditions }: SeenLimb, cut: PossibleCut): string {
  const { rules, system } = conditions
  const size = showDiameter(cut.cutDiameter, system)
  const least = showDiameter(rules.leastHighCut, system)
  const above = showHeight(rules.smallCutAbove / 1000, system)
  return `${cutWords(cut)} would be a cut of ${size}; more than ${above} up none under ${least} is made below a priority of ${points(rules.smallCutPriority)}`
}

function stepWords(
  { conditions: { rules } }: SeenLimb,
  cut: PossibleCut,
  smaller: readonly PossibleCut[]
): string | null {
  const other = stepNotWorth(cut, smaller, rules)
  if (other === null) return null
  const more = cut.dose - other.dose
  const gain = other.nextPriority - cut.nextPriority
  const what = `${cutWords(cut)} would take ${percent(more)} more of the tree’s foliage than ${cutWords(other)}`
  if (gain < nothing) return `${what} and not lower its priority further`
  return `${what} for ${pointsText(gain, 'at most')} more; ${tenth(pointsForFoliage(more, rules), 'at least')} are asked`
}
