import { isOver } from '../formulas/boundary'
import { points, ratio as ratioText } from '../../shared/words/figures'
import { showDiameter } from '../../shared/words/lengths'
import { ceilingPercent, percent } from '../../shared/words/percent'
import type { Obligation } from './obligation'
import type { AssessedLimb } from './assessLimb'
import type { PossibleCut } from './possibleCut'
import { removalReason } from './removalReason'
import { stepsFor, type VisitConditions } from './visitConditions'

/** Texts that a plan needs the same few thousands of times are made once and kept. */
function kept(texts: Map<number, string>, key: number, make: () => string): string {
  let text = texts.get(key)
  if (text === undefined) texts.set(key, (text = make()))
  return text
}

const heavierTexts = new Map<number, string>()
const worthTexts = new Map<number, string>()
const woundTexts = new Map<number, string>()

/** What was weighed and refused for a limb that is cut, and by which rule. */
export function refusedFor(
  assessed: AssessedLimb,
  cut: PossibleCut,
  obligation: Obligation | null,
  conditions: VisitConditions
): string[] {
  if (obligation === 'broken') return []
  if (cut.kind === 'raise') return ['removal refused: raising it takes less foliage and clears as much']
  if (cut.kind === 'remove') return ['shortening refused: it would leave a limb that is better gone']
  const refused = [removalRefused(assessed, cut, conditions)]
  const heaviest = stepsFor(assessed.limb, conditions).at(-1) ?? 0
  if (obligation === null && isOver(heaviest, cut.share) && assessed.limb.surveyed.cut === null)
    refused.push(heavierRefused(assessed, cut, conditions))
  return refused
}

/** More was not worth its foliage, or the allowance does more elsewhere. */
function heavierRefused(
  { cuts }: AssessedLimb,
  cut: PossibleCut,
  { allowed, rules }: VisitConditions
): string {
  const isOffered = cuts.some((other) => other.kind === 'reduce' && isOver(other.share, cut.share))
  return isOffered
    ? kept(
        heavierTexts,
        Math.floor(allowed * 1000 + 1e-6),
        () =>
          `a heavier cut refused: the allowance of ${ceilingPercent(allowed)} lowers the tree’s priorities more this way`
      )
    : kept(
        worthTexts,
        Math.round(rules.dosePerPoint * 1e6) * 1000 + Math.round(rules.leastGain * 10),
        () =>
          `a heavier cut refused: taking more has to lower the priority by ${points(rules.leastGain)} points, and by 1 for each ${percent(rules.dosePerPoint)} of the tree’s foliage`
      )
}

function removalRefused(assessed: AssessedLimb, cut: PossibleCut, conditions: VisitConditions): string {
  const { rules, system } = conditions
  const { limb, aspectRatio: ratio } = assessed
  if (removalReason(limb, ratio, conditions) === null) {
    if (isOver(ratio, rules.removeUpToRatio))
      return kept(
        woundTexts,
        Math.round(ratio * 100),
        () => `removal refused: ${ratioText(ratio)} of the stem, large wound`
      )
    if (isOver(limb.diameter, rules.removeUpTo))
      return `removal refused: ${showDiameter(limb.diameter, system)} is over ${showDiameter(rules.removeUpTo, system)}, large wound`
    return 'removal refused: there is no reason to remove the limb'
  }
  const dose = percent(cut.share > 0 ? cut.dose / cut.share : 0)
  return `removal refused: it would take ${dose} of the tree’s foliage, is not worth that, or breaks another limit`
}
