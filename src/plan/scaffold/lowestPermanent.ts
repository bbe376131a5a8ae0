import type { Rules } from '../../../shared/rules'
import type { Tree } from '../../inventory/inventory'
import { onSide } from '../clearance'
import type { Scaffold } from './scaffold'

/** From what height limbs of a tree can be permanent, in m. */
export type LowestPermanent = Pick<Scaffold, 'lowest' | 'lowestElsewhere' | 'lowestFrom'>

/**
 * As the owner says; otherwise from the clearance that is asked for, and on the sides for which none is asked from about
 * 8 ft, or lower where the clearance is. Null where neither is given.
 *
 * Source: about 8 ft where no clearance is asked for, text of the ISA consumer brochure Pruning Young Trees.
 */
export function lowestPermanent(
  { lowestPermanent: owners, clearance, clearanceSide }: Tree,
  rules: Rules
): LowestPermanent {
  if (owners !== null) return { lowest: owners, lowestElsewhere: owners, lowestFrom: 'owner' }
  if (clearance === null || clearance <= 0) return { lowest: null, lowestElsewhere: null, lowestFrom: null }
  const oneSided = clearanceSide !== null && clearanceSide.degrees !== null
  const elsewhere = oneSided ? Math.min(clearance, rules.lowestElsewhere / 1000) : clearance
  return { lowest: clearance, lowestElsewhere: elsewhere, lowestFrom: 'clearance' }
}

/** The height from which a limb on this side can be permanent; one of unknown bearing counts as on the side meant. */
export function lowestAt(
  bearing: number | null,
  { lowest, lowestElsewhere }: LowestPermanent,
  { clearanceSide }: Tree,
  rules: Rules
): number {
  const isMeant = onSide(bearing, { clearanceSide: clearanceSide?.degrees ?? null, rules })
  return (isMeant ? lowest : lowestElsewhere) ?? Infinity
}
