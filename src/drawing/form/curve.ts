import type { Point } from '../shapes'

/** A cubic curve through four points, as a limb's center line. */
export type Curve = readonly [Point, Point, Point, Point]

function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }
}

/** The point at parameter t, 0 at the start and 1 at the end. */
export function pointAt(curve: Curve, t: number): Point {
  const [a, b, c, d] = curve
  const ab = between(a, b, t)
  const bc = between(b, c, t)
  const cd = between(c, d, t)
  return between(between(ab, bc, t), between(bc, cd, t), t)
}

/** The direction at t, of length 1. */
export function directionAt(curve: Curve, t: number): Point {
  const step = 1e-3
  const from = pointAt(curve, Math.max(0, t - step))
  const to = pointAt(curve, Math.min(1, t + step))
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  return length > 0 ? { x: (to.x - from.x) / length, y: (to.y - from.y) / length } : { x: 0, y: 1 }
}

/** The least t in 0 to 1 at which a rising measure reaches a value; 0 or 1 where it lies outside. */
export function parameterWhere(measure: (t: number) => number, value: number): number {
  let low = 0
  let high = 1
  if (!(measure(0) < value)) return 0
  if (measure(1) < value) return 1
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2
    if (measure(middle) < value) low = middle
    else high = middle
  }
  return high
}
