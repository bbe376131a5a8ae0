import type fc from 'fast-check'
import type { ShapeSheet } from '../shape'

/** What holds whatever is drawn: a few cases with the tests, many with `npm run fuzz`. */
export interface Property<Drawn> {
  readonly name: string
  readonly drawn: fc.Arbitrary<Drawn>
  /** What does not hold: the kind of fault, a colon, and what there is to say. */
  readonly faultsOf: (drawn: Drawn) => readonly string[]
  /** The sheets that were read, to be shown. */
  readonly sheetsOf: (drawn: Drawn) => readonly ShapeSheet[]
  /** How many shapes of an inventory it looks at. */
  readonly casesOf: (drawn: Drawn) => number
  /** How many are drawn with the tests, and at length. */
  readonly usual: number
  readonly long: number
}

/** A property among others, whatever it draws. */
export type AnyProperty = Property<unknown>

export function property<Drawn>(stated: Property<Drawn>): AnyProperty {
  return stated as unknown as AnyProperty
}

/** The kind of a fault: what stands before its colon. */
export function kindOf(fault: string): string {
  return /^[^:]*/.exec(fault)?.[0] ?? fault
}
