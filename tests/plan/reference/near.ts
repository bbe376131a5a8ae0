/** A value on the boundary of a class or rule belongs to it, within this. */
export const hair = 1e-6

export function atMost(value: number, limit: number): boolean {
  return value <= limit + hair
}

export function atLeast(value: number, limit: number): boolean {
  return value >= limit - hair
}

export function over(value: number, limit: number): boolean {
  return !atMost(value, limit)
}

export function under(value: number, limit: number): boolean {
  return !atLeast(value, limit)
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
