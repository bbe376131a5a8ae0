import { foliagePart } from '../../../shared/words/foliageParts'
import { points, ratio as ratioText } from '../../../shared/words/figures'
import { percent } from '../../../shared/words/percent'
import { atLeast, isOver } from '../../formulas/boundary'
import { cutOf } from '../chooseForVisit'
import { isCandidate } from '../options'
import type { Barrier, PossibleCut } from '../possibleCut'
import { barrierWords } from '../reasonsForKeeping'
import { reductionsOf, whyNoStep } from '../reductions'
import { isGrown, stepsFor } from '../visitConditions'
import { allowanceWords, limitWords } from './limitWords'
import { inspectFirst } from './obligationWords'
import { notRemoved } from './removalWords'
import { cutWords, type SeenLimb } from './seenLimb'
import { unworthyWords } from './unworthyWords'

/** The reductions that can be made on a limb, worth it or not, lightest first. */
function possibleReductions({ assessed, conditions }: SeenLimb): readonly PossibleCut[] {
  const { cuts } = reductionsOf(assessed, conditions)
  return [...cuts].sort((a, b) => a.share - b.share)
}

/** Why this and not more, of a limb in the pass for structure: what was refused and by which rule. */
export function structureWords(seen: SeenLimb, priorityBefore: number): string[] {
  const hold = seen.choice.pass.obliged.get(seen.assessed.limb) ?? null
  const { assessed, choice, conditions } = seen
  const { limb } = assessed
  const { rules } = conditions
  if (limb.surveyed.decay) return hold === 'inspect first' ? [] : [inspectFirst]
  if (!atLeast(priorityBefore, rules.clearedBelow)) return []
  if (limb.isStem) return ['Not reduced: a stem of a multi-stem tree is not reduced for the others.']
  if (choice.goneWithParent.has(limb)) return [`Goes with limb ${limb.parent?.surveyed.id ?? ''}.`]
  if (assessed.settled)
    return [
      `Not cut: it is settled, ${ratioText(assessed.nextRatio)} of its stem at the next visit, and little else speaks for a cut.`
    ]
  if (conditions.waitsForLeader) return ['Not cut: which stem leads is decided first.']
  if (choice.pass.left <= 0 && isCandidate(assessed, conditions))
    return [`Not cut: ${allowanceWords(choice, limb, conditions)}.`]
  const cut = cutOf(choice, limb)
  if (cut?.kind === 'remove') return [notMerelyReduced(seen, cut)]
  const why = cut === undefined ? notReduced(seen) : notFurther(seen, cut)
  return [why, `Not removed: ${notRemoved(seen)}.`]
}

function notReduced(seen: SeenLimb): string {
  const { assessed, conditions } = seen
  const reductions = possibleReductions(seen)
  const offered = assessed.cuts.find(({ kind }) => kind === 'reduce')
  if (offered !== undefined) return `Not reduced: ${limitWords(seen, offered)}.`
  const [lightest] = reductions
  if (lightest !== undefined)
    return `Not reduced: ${unworthyWords(seen, best(reductions, seen) ?? lightest) ?? ''}.`
  const barrier = assessed.barrier
  if (barrier !== null) return `Not reduced: ${barrierWords[barrier]}.`
  return `Not reduced: no cut of ${foliagePart(stepsFor(assessed.limb, conditions)[0] ?? 0)} of its foliage or more can be made.`
}

/** Of cuts that are not worth making the one that comes nearest to it: the one that lowers the priority most. */
function best(cuts: readonly PossibleCut[], { assessed }: SeenLimb): PossibleCut | undefined {
  return cuts.reduce<PossibleCut | undefined>((most, cut) => {
    if (most === undefined) return cut
    const gain = (each: PossibleCut) => assessed.nextPriority - each.nextPriority
    return gain(cut) / Math.max(cut.dose, 1e-9) > gain(most) / Math.max(most.dose, 1e-9) ? cut : most
  }, undefined)
}

function notFurther(seen: SeenLimb, cut: PossibleCut): string {
  const { assessed, conditions } = seen
  const start = 'Not cut back further'
  const heavier = possibleReductions(seen).find(({ share }) => isOver(share, cut.share))
  if (heavier !== undefined) {
    const isOffered = assessed.cuts.some(({ kind, share }) => kind === 'reduce' && share === heavier.share)
    return `${start}: ${isOffered ? limitWords(seen, heavier) : (unworthyWords(seen, heavier) ?? limitWords(seen, heavier))}.`
  }
  if (assessed.limb.surveyed.cut !== null) return `${start}: the cut measured on it is the one that is made.`
  const next = stepsFor(assessed.limb, conditions).find((share) => isOver(share, cut.share))
  if (next === undefined) {
    const most = foliagePart(stepsFor(assessed.limb, conditions).at(-1) ?? cut.share)
    return isGrown(conditions.stage)
      ? `${start}: ${most} of a limb’s foliage is the most that is taken from a mature tree.`
      : `${start}: ${most} of a limb’s foliage is the most that a reduction cut takes.`
  }
  const barrier = whyNoStep(assessed, next, conditions)
  return `${start}: ${barrier === null ? 'no cut lies there' : furtherWords[barrier]}.`
}

const furtherWords: Record<Barrier, string> = {
  small: 'the cut would be too small to make',
  bare: 'it would be cut below its foliage',
  short: 'what is left would be a stub',
  lateral: barrierWords.lateral
}

function notMerelyReduced(seen: SeenLimb, removal: PossibleCut): string {
  const { assessed } = seen
  const start = 'Removed and not only reduced'
  const offered = assessed.cuts.filter(({ kind }) => kind === 'reduce').at(-1)
  if (offered !== undefined)
    return `${start}: with ${cutWords(offered)} off it would keep a priority of ${points(offered.nextPriority)}; its removal takes ${percent(removal.dose - offered.dose)} more of the tree’s foliage and leaves none.`
  const heaviest = possibleReductions(seen).at(-1)
  if (heaviest === undefined)
    return `${start}: ${assessed.barrier === null ? 'no reduction cut can be made on it' : barrierWords[assessed.barrier]}.`
  return `${start}: ${unworthyWords(seen, heaviest) ?? 'no reduction cut does as much'}.`
}
