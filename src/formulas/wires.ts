/**
 * Least distance in feet between an unqualified worker, or anything the worker holds, and an energized overhead line:
 * 10 ft up to 50 kV to ground, and 4 in more for every 10 kV above. Lower voltages do not lower it. Where only the
 * voltage between lines is known, using it errs on the safe side.
 *
 * Source: 29 CFR 1910.269, definition of line-clearance tree trimming (read); 29 CFR 1910.333(c)(3) gives the same
 * numbers (from memory).
 */
export function wireDistance(kilovoltsToGround: number): number {
  const over = Math.max(0, kilovoltsToGround - 50)
  return 10 + ((over / 10) * 4) / 12
}
