/**
 * What a value may be off a boundary and still lie on it: inches and millimeters of one size differ in the last digits. In
 * the unit of the values (house rule).
 */
export const hair = 1e-6

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

/** The lesser first; 0 for two of one size, which keep the order they have. */
export function inOrder(a: number, b: number): number {
  return Math.abs(a - b) <= hair ? 0 : a - b
}

/** The least whole number at the value or above: 3.0000000001 of them are 3. */
export function wholeUp(value: number): number {
  // Without the sign that 0 less a hair would leave.
  return Math.ceil(value - hair) + 0
}

/** Short of the boundary, which belongs to what lies above it. */
export function isUnder(value: number, boundary: number): boolean {
  return value < boundary - hair
}
