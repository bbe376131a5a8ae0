import { foliagePart } from '../../../shared/words/foliageParts'
import { ratio as ratioText } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { percent } from '../../../shared/words/percent'
import { isOver } from '../../formulas/boundary'
import { raisedShare } from '../../formulas/crown'
import { noCuts } from '../chooseForVisit'
import { carried } from '../growingLimb'
import type { Hold } from '../obligation'
import type { ObligedCut } from '../obligations/passState'
import { reductionsOf } from '../reductions'
import { allowanceWords } from './limitWords'
import { removalRefused } from './removalWords'
import type { SeenLimb } from './seenLimb'

/** Why an obligation is met by this cut and not by more or by less. The limb is as it was before the cut. */
export function obligationWords(
  seen: SeenLimb,
  { cut, obligation }: ObligedCut,
  hold: Hold | null
): string[] {
  const { limb } = seen.assessed
  const { rules, system } = seen.conditions
  if (obligation === 'broken')
    return [
      cut.kind === 'remove'
        ? 'Not only cut back: no sound lateral is listed below the break.'
        : 'Not cut back further: below the break the limb is sound.'
    ]
  if (obligation === 'temporary')
    return [
      `Removed now: a temporary limb goes before it is over ${showDiameter(rules.temporaryCut, system)} or ${ratioText(rules.temporaryRatio)} of its stem.`
    ]
  if (cut.kind === 'raise') {
    const whole = percent(limb.share * carried(limb))
    return [
      `Not removed: its hanging side branches are ${percent(cut.dose)} of the tree’s foliage, the whole limb ${whole}, and either clears as much.`
    ]
  }
  const raised = obligation === 'clearance' ? notRaised(seen) : []
  if (cut.kind === 'remove')
    return obligation === 'rubbing'
      ? ['Not only reduced: of limbs that rub the lesser is removed where it may be.']
      : raised
  return [...raised, notRemoved(seen, hold), notFurther(seen, cut.share)].filter((text) => text !== '')
}

/** Raising was weighed first: it takes too much of the limb. */
function notRaised({ assessed, conditions }: SeenLimb): string[] {
  const { lowest, tip } = assessed.limb
  const { clearance, rules, system } = conditions
  if (clearance === null) return []
  const share = raisedShare(lowest, tip, clearance)
  const below = share >= 1 ? 'all' : foliagePart(share)
  return [
    `Not only raised: ${below} of its foliage hangs below ${showHeight(clearance, system, 'at least')}, and ${foliagePart(rules.raiseUpTo)} at most is taken so.`
  ]
}

function notRemoved(seen: SeenLimb, hold: Hold | null): string {
  const refused = removalRefused(seen)
  if (refused !== null) return `Not removed: ${refused}.`
  return hold === 'crown ratio'
    ? `Not removed: the crown would be too short, and a live-crown ratio of ${ratioText(seen.conditions.rules.crownRatioGoal)} is kept.`
    : ''
}

function notFurther({ assessed, conditions }: SeenLimb, share: number): string {
  const { cuts } = reductionsOf(assessed, conditions)
  const isHeavier = cuts.some((cut) => isOver(cut.share, share))
  return isHeavier ? 'Not cut back further: more does not fit into what is left of the allowance.' : ''
}

/** No live cut is planned on a limb with decay or a crack. */
export const inspectFirst = 'Inspect first: decay or a crack is noted, and no live cut is planned on it.'

/** Why an obligation waits. */
export function waitingWords(seen: SeenLimb, hold: Hold): string {
  const { assessed, choice, conditions } = seen
  switch (hold) {
    case 'allowance':
      return `Waits: its cut does not fit, as ${allowanceWords({ ...choice, ...noCuts }, assessed.limb, conditions)}.`
    case 'crown ratio':
      return `Waits: the crown would be too short, and a live-crown ratio of ${ratioText(conditions.rules.crownRatioGoal)} is kept.`
    case 'inspect first':
      return inspectFirst
    case 'permanent':
      return 'Waits: it is permanent, and no reduction of it can be made.'
    case 'size':
      return `Waits: it may not be removed (${removalRefused(seen) ?? 'too large'}) and cannot be reduced further.`
  }
}
