/**
 * What a value may be off a boundary and still lie on it: inches and millimeters of one size differ in the last digits. In
 * the unit of the values (house rule).
 */
const hair = 1e-6

/** At the boundary or above. */
export function atLeast(value: number, boundary: number): boolean {
  return value >= boundary - hair
}

/** At the boundary or below. */
export function atMost(value: number, boundary: number): boolean {
  return value <= boundary + hair
}

/** Beyond the boundary, which belongs to what lies below it. */
export function isOver(value: number, boundary: number): boolean {
  return value > boundary + hair
}

/** Short of the boundary, which belongs to what lies above it. */
export function isUnder(value: number, boundary: number): boolean {
  return value < boundary - hair
}
