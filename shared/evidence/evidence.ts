import { refuse, type Refusal } from '../refusal'
import type { Certainty } from '../sourced'

/**
 * A published finding that explains the trade and that no formula of the plan uses: where it comes from, how far it
 * reaches, and what may not be read from it. Meant for the pages that say why.
 */
export interface Evidence {
  finding: string
  source: string
  certainty: Certainty
  range: string
  caution: string
}

/** Null where the value is within the range the finding covers, else the sentence that refuses it. */
export function outside(
  what: string,
  value: number,
  low: number,
  high: number,
  unit: string
): Refusal | null {
  return value >= low && value <= high
    ? null
    : refuse(
        `${what} is ${value} ${unit}; the published range is ${low} to ${high} ${unit}: nothing may be read beyond it.`
      )
}
