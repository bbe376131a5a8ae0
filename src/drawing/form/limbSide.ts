import type { PresentLimb } from './limbsAtVisit'

/** What of a limb already drawn counts for the room beside the trunk. */
export interface Standing {
  present: PresentLimb
  side: 1 | -1
}

/** On which side a limb is drawn, and what share of its reach is seen from the south. */
export interface Side {
  side: 1 | -1
  shown: number
}

/** A limb that points at the viewer or away is still drawn this far to one side, to be seen (house rule). */
const leastShown = 0.45
/** Of a limb whose bearing is not known. */
export const unknownShown = 0.8

/** Exactly in the line of sight, within half a degree, a limb may be drawn on either side, where there is more room. */
export function isFree(bearing: number | null): boolean {
  return bearing === null || Math.abs(Math.sin((bearing * Math.PI) / 180)) < 0.009
}

/** How much of a rise is already taken on one side. */
function crowding(
  side: 1 | -1,
  { origin, tip }: PresentLimb,
  drawn: readonly Standing[],
  lean: number
): number {
  const shared = (other: PresentLimb): number =>
    Math.max(0, Math.min(tip, other.tip) - Math.max(origin, other.origin))
  const leader = lean * side > 0 ? 0.4 * Math.abs(tip - origin) : 0
  return drawn.reduce((sum, form) => sum + (form.side === side ? shared(form.present) : 0), leader)
}

/** Looking north: to the right for a limb toward the east, to the left toward the west; else where there is more room. */
export function sideOf(present: PresentLimb, drawn: readonly Standing[], lean: number): Side {
  const { bearing } = present.limb
  const roomier = crowding(1, present, drawn, lean) > crowding(-1, present, drawn, lean) ? -1 : 1
  if (bearing === null) return { side: roomier, shown: unknownShown }
  const across = Math.sin((bearing * Math.PI) / 180)
  const side = isFree(bearing) ? roomier : across > 0 ? 1 : -1
  return { side, shown: Math.max(leastShown, Math.abs(across)) }
}
