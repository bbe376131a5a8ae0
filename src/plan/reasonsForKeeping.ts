import { atLeast, atMost } from '../formulas/boundary'
import { Figure } from '../../shared/words/figures'
import type { VisitChoice } from './chooseForVisit'
import type { Hold } from './obligation'
import type { AssessedLimb } from './assessLimb'
import { isCandidate } from './options'
import type { Barrier } from './possibleCut'
import { priorityText } from './priorityWords'
import type { VisitConditions } from './visitConditions'

/** The ratio of a limb, as `ratio` has it, with the words behind it. */
const ofStem = new Figure(2, 2, false, ' of the stem, priority ')
const forFoliage = new Figure(2, 2, false, ' of the stem: kept for its foliage')

/** A limb that needs work which no cut offers: hold, or decide removal on site; or one to be inspected first. */
export function isHeld(assessed: AssessedLimb, conditions: VisitConditions): boolean {
  const { limb, priority, barrier, possible } = assessed
  if (limb.surveyed.decay) return atLeast(priority, conditions.rules.clearedBelow)
  return barrier !== null && possible === 0
}

const held: Record<Hold, string> = {
  allowance: 'waits: its cut does not fit into what is left of the allowance',
  'crown ratio': 'waits: its removal would raise the crown too far',
  'inspect first': 'decay or a crack is noted: inspect first',
  permanent: 'waits: it is permanent, and no reduction of it fits',
  size: 'waits: it is too large to remove and cannot be reduced further'
}

/** Why a limb is kept as it is. */
export function reasonForKeeping(
  assessed: AssessedLimb,
  { pass }: Pick<VisitChoice, 'pass'>,
  conditions: VisitConditions
): string {
  const { limb, aspectRatio: ratio, priority } = assessed
  const hold = pass.obliged.get(limb) ?? null
  if (hold === null && !limb.surveyed.decay && !atLeast(priority, conditions.rules.clearedBelow))
    return forFoliage.of(ratio)
  const why = hold === null ? whyUncut(assessed, pass.left, conditions) : held[hold]
  return `${ofStem.of(ratio)}${priorityText(priority, conditions.rules)}: ${why}`
}

function whyUncut(assessed: AssessedLimb, left: number, conditions: VisitConditions): string {
  const { limb, cuts, possible, barrier, settled } = assessed
  if (limb.surveyed.decay) return 'decay or a crack is noted: inspect first'
  if (limb.isStem) return 'a stem of a multi-stem tree, not reduced for the others'
  if (settled)
    return limb.surveyed.bark === 'none'
      ? 'settled, at most half its stem'
      : 'settled, at most half its stem; inspect the union for its included bark'
  if (conditions.waitsForLeader) return 'waits for the choice of the leader'
  if (cuts.length > 0) return 'waits, the allowance does more on other limbs'
  if (atMost(left, 0) && isCandidate(assessed, conditions)) return 'no live foliage to spare'
  if (possible > 0) return 'kept, no cut would lower it by enough to be worth its foliage or its wound'
  return barrier === null
    ? 'kept, no cut would lower it enough'
    : `hold, or decide removal on site; ${barrierWords[barrier]}`
}

/** What stands against reducing a limb. */
export const barrierWords: Record<Barrier, string> = {
  small: 'every reduction cut would be too small to make',
  bare: 'every reduction cut would be below its foliage',
  short: 'reduced further it would be a stub',
  lateral: 'the lateral at the measured cut is too small to take over'
}
