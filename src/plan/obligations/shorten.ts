import { isOver, isUnder } from '../../formulas/boundary'
import type { GrowingLimb } from '../growingLimb'
import type { PossibleCut } from '../possibleCut'
import { reductionsOf } from '../reductions'
import { removalOf } from '../removal'
import { removalReason } from '../removalReason'
import type { Hold } from '../obligation'
import { fits, keepsCrown, make, type FirstPass, type ObligedCut } from './passState'

/** The reductions that can be made on a limb, worth it or not. */
function reductions(pass: FirstPass, limb: GrowingLimb): readonly PossibleCut[] {
  return reductionsOf({ limb, aspectRatio: limb.diameter / limb.stem }, pass.conditions).cuts
}

/** The reduction that takes most, or least, of those that keep within what is left of the allowance; null where none does. */
function thatFits(pass: FirstPass, cuts: readonly PossibleCut[], by: 'most' | 'least'): PossibleCut | null {
  let found: PossibleCut | null = null
  for (const cut of cuts) {
    if (!fits(pass, cut)) continue
    const isBetter =
      found === null || (by === 'most' ? isOver(cut.share, found.share) : isUnder(cut.share, found.share))
    if (isBetter) found = cut
  }
  return found
}

/**
 * Removes a limb where it may be removed; otherwise shortens it by the largest share that fits, or by the least. A limb whose
 * cut does not fit waits, and what holds it is kept.
 */
export function removeOrShorten(
  pass: FirstPass,
  limb: GrowingLimb,
  obligation: ObligedCut['obligation'],
  by: 'most' | 'least' = 'most'
): Hold | null {
  const mayGo = removalReason(limb, limb.diameter / limb.stem, pass.conditions) !== null
  const crownAllows = keepsCrown(pass, limb)
  if (mayGo && crownAllows) {
    const cut = removalOf(limb)
    if (!fits(pass, cut)) return wait(pass, limb, 'allowance')
    make(pass, limb, cut, obligation)
    return null
  }
  const cuts = reductions(pass, limb)
  const cut = thatFits(pass, cuts, by)
  const hold = mayGo ? 'crown ratio' : limb.permanence === 'permanent' ? 'permanent' : 'size'
  if (cut === null) return wait(pass, limb, cuts.length > 0 ? 'allowance' : hold)
  make(pass, limb, cut, obligation)
  return hold
}

/** A limb that does not fit waits. */
export function wait(pass: FirstPass, limb: GrowingLimb, hold: Hold): Hold {
  pass.obliged.set(limb, hold)
  return hold
}
