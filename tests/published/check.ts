import { readLength } from '../../shared/lengths'
import { isRefusal, type Refusal } from '../../shared/refusal'
import type { Certainty } from '../../shared/sourced'

/** One number of ours against one that stands outside: what it is, how near it must come, and who says so. */
export interface Check {
  what: string
  got: () => number | Refusal
  expected: number
  within: number
  /** Where the number stands; "arithmetic ours" where only its parts stand there. */
  source: string
  certainty: Exclude<Certainty, 'house'>
  /** Why the tolerance is wider than the printed number asks for. */
  because?: string
}

/** A length as it is typed, in the unit it is typed in; NaN where it cannot be read. */
export function lengthTyped(text: string): number {
  const length = readLength(text, '.')
  return length !== null && 'unit' in length ? length.value : NaN
}

/** A number as it is printed: half a unit of its last digit is as near as it can be checked. */
export function printed(text: string): Pick<Check, 'expected' | 'within'> {
  const decimals = text.split('.')[1]?.length ?? 0
  return { expected: Number(text), within: 0.5 * 10 ** -decimals * (1 + 1e-9) }
}

/** A number that is exact by definition: only floating point may stand between. */
export function exactly(expected: number): Pick<Check, 'expected' | 'within'> {
  return { expected, within: Math.max(1e-15, Math.abs(expected) * 1e-12) }
}

/** A number that an independent measurement should come near, with the share it may be off. */
export function near(expected: number, share: number): Pick<Check, 'expected' | 'within'> {
  return { expected, within: Math.abs(expected) * share }
}

/** How far off a check is; NaN where a formula refused. */
export function distance({ got, expected }: Check): number {
  const value = got()
  return isRefusal(value) ? NaN : Math.abs(value - expected)
}

/** True where the number of ours is as near as the source allows. A refusal or NaN never is. */
export function agrees(check: Check): boolean {
  return distance(check) <= check.within
}
