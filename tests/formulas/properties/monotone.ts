import fc from 'fast-check'
import { isRefusal, type Refusal } from '../../../shared/refusal'
import { runs } from '../../plan/trees'

/** A number of the domain, to a thousandth of its span: enough to reach corners, few enough to shrink well. */
export function between(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1000 }).map((step) => low + ((high - low) * step) / 1000)
}

/** The value of a formula that must have one: a refusal or NaN fails the property by name. */
export function valueOf(result: number | Refusal): number {
  if (isRefusal(result)) throw new Error(`refused: ${result.sentence}`)
  if (!Number.isFinite(result)) throw new Error(`not a number: ${result}`)
  return result
}

const hair = 1e-9

type Formula<T extends unknown[]> = (moving: number, ...others: T) => number | Refusal

interface Movement<T extends unknown[]> {
  /** The input that moves. */
  over: fc.Arbitrary<number>
  /** All others, held. */
  others: fc.Arbitrary<T>
  formula: Formula<T>
  /** Which inputs are in the domain together, where not all are. */
  valid?: (moving: number, ...others: T) => boolean
  /** Where the formula truly moves; elsewhere it may stay level. Everywhere unless given. */
  moves?: (moving: number, ...others: T) => boolean
  /** For a formula in steps: how many values it has to take at least, so that a constant fails. */
  steps?: number
}

function check<T extends unknown[]>(movement: Movement<T>, sign: 1 | -1): void {
  const { over, others, formula, valid = () => true, moves = () => true, steps = 0 } = movement
  let moved = 0
  const seen = new Set<number>()
  fc.assert(
    fc.property(over, over, others, (a, b, held) => {
      const [low, high] = a < b ? [a, b] : [b, a]
      fc.pre(valid(low, ...held) && valid(high, ...held))
      const before = valueOf(formula(low, ...held))
      const after = valueOf(formula(high, ...held))
      seen.add(before).add(after)
      const step = sign * (after - before)
      expect(step).toBeGreaterThanOrEqual(-hair * Math.max(1, Math.abs(before)))
      if (high - low > hair && moves(low, ...held) && moves(high, ...held)) {
        moved++
        expect(step).toBeGreaterThan(0)
      }
    }),
    runs(300)
  )
  if (steps === 0) expect(moved).toBeGreaterThan(0)
  else expect(seen.size).toBeGreaterThanOrEqual(steps)
}

/** Never falls as the input rises, and truly rises where it is meant to move. */
export function rises<T extends unknown[]>(movement: Movement<T>): void {
  check(movement, 1)
}

/** Never rises as the input rises, and truly falls where it is meant to move. */
export function falls<T extends unknown[]>(movement: Movement<T>): void {
  check(movement, -1)
}

/** Holds for every input drawn. */
export function always<T extends unknown[]>(inputs: fc.Arbitrary<T>, holds: (...inputs: T) => void): void {
  fc.assert(
    fc.property(inputs, (drawn) => holds(...drawn)),
    runs(300)
  )
}
