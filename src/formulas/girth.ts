/**
 * Diameter from a girth taken with a tape: girth / π, in the girth’s unit. An oval stem reads a little large.
 *
 * Source: geometry of the circle.
 */
export function diameterFromGirth(girth: number): number {
  return girth / Math.PI
}
