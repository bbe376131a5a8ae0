import { inOrder } from '../../formulas/boundary'
import type { GrowingLimb } from '../growingLimb'
import type { FirstPass } from './passState'
import { removeOrShorten, wait } from './shorten'

/**
 * Rubbing limbs: the lesser of two is removed; where it may not be removed, it is shortened clear of the other. Where two
 * or more are marked, the thickest of them stays, and the last that is left rubs on nothing any more; a limb that is marked
 * alone rubs on one that is not, and is shortened by no more than the least there is, as nobody knows where it rubs.
 */
export function cutRubbingLimbs(pass: FirstPass): void {
  const marked = pass.conditions.limbs.filter(({ surveyed }) => surveyed.rubbing)
  const rubbing = marked.filter(({ gone, corrected }) => !gone && !corrected)
  const [last] = rubbing
  if (last === undefined) return
  const hadPartner = marked.length > 1 || pass.tree.dead.some((limb) => limb.rubbing)
  if (rubbing.length === 1 && hadPartner) {
    last.corrected = true
    return
  }
  // Of equally thick ones the later in the inventory is the lesser.
  const lesser = [...rubbing].reverse().sort((a, b) => inOrder(a.diameter, b.diameter))
  const stays = lesser.length > 1 ? lesser.pop() : undefined
  let open = false
  const by = stays === undefined ? 'least' : 'most'
  for (const limb of lesser) if (!isDealtWith(pass, limb, by)) open = true
  if (stays !== undefined && !open) stays.corrected = true
}

function isDealtWith(pass: FirstPass, limb: GrowingLimb, by: 'most' | 'least'): boolean {
  if (limb.gone) return true
  if (limb.surveyed.decay) {
    wait(pass, limb, 'inspect first')
    return false
  }
  const before = pass.made.length
  removeOrShorten(pass, limb, 'rubbing', by)
  if (pass.made.length === before) return false
  limb.corrected = true
  pass.obliged.set(limb, null)
  return true
}
