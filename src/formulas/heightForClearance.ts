/**
 * Height a tree must reach before its crown may be raised to a clearance and keep a live-crown ratio: clearance /
 * (1 − ratio), in the clearance’s unit.
 *
 * Source: the live-crown ratio turned round; the ratio 0.60 is Gilman, EDIS EP276, UF/IFAS, strategy 6.
 */
export function heightForClearance(clearance: number, ratio = 0.6): number {
  return clearance / (1 - ratio)
}
