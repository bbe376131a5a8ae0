import { isOver } from '../../formulas/boundary'
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

/** The reduction that takes most, of those that keep within what is left of the allowance; null where none does. */
function largestThatFits(pass: FirstPass, cuts: readonly PossibleCut[]): PossibleCut | null {
  let largest: PossibleCut | null = null
  for (const cut of cuts)
    if (fits(pass, cut) && (largest === null || isOver(cut.share, largest.share))) largest = cut
  return largest
}

/**
 * Removes a limb where it may be removed; otherwise shortens it by the largest share that fits. A limb whose cut does not
 * fit waits, and what holds it is kept.
 */
export function removeOrShorten(
  pass: FirstPass,
  limb: GrowingLimb,
  obligation: ObligedCut['obligation']
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
  const cut = largestThatFits(pass, cuts)
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
