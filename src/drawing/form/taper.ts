import { parameterWhere, pointAt, type Curve } from './curve'

/**
 * A piece of wood that thins in proportion to what is left of it, as the plan computes it: at the share s of its rise its
 * diameter is d·(1 − s). Where it hardly rises, s is the share of its length instead. Meters.
 */
export interface Taper {
  curve: Curve
  /** At its base. */
  diameter: number
  byHeight: boolean
}

/** The share of the piece that lies before the parameter t. */
export function shareBefore(taper: Taper, t: number): number {
  if (!taper.byHeight) return t
  const [start, , , end] = taper.curve
  return (pointAt(taper.curve, t).y - start.y) / (end.y - start.y)
}

/** The parameter at which the share s of the piece lies behind. */
export function parameterAtShare(taper: Taper, share: number): number {
  return taper.byHeight ? parameterWhere((t) => shareBefore(taper, t), share) : share
}

export function diameterAt(taper: Taper, t: number): number {
  return taper.diameter * Math.max(0, 1 - shareBefore(taper, t))
}
