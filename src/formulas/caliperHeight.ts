const inch = 25.4

/**
 * Height above ground at which a nursery caliper is taken, in mm: 6 in up to a caliper of 4 in, 12 in above it.
 *
 * Source: nursery rule as quoted in the Dallas tree code (read); ANSI Z60.1, from memory.
 */
export function caliperHeight(caliperMillimeters: number): number {
  return (caliperMillimeters <= 4 * inch ? 6 : 12) * inch
}
