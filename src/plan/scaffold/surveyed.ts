import type { Limb } from '../../inventory/inventory'

/** The survey says that the limb is permanent: its column does, or else its role. */
export function isMarkedPermanent({ permanent, role }: Limb): boolean {
  return permanent === null ? role === 'permanent' : permanent === 'yes'
}

/** The survey says that the limb is not permanent. */
export function isMarkedTemporary({ permanent, role }: Limb): boolean {
  return permanent === null ? role === 'temporary' : permanent === 'no'
}

/** The survey says of the limb what it is to the scaffold. */
export function isMarked(limb: Limb): boolean {
  return isMarkedPermanent(limb) || isMarkedTemporary(limb)
}
