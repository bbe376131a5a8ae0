import { refuse, type Refusal } from './refusal'
import type { Certainty } from './sourced'

/**
 * A published finding that explains the trade: where it comes from, how far it reaches, and what may not be read from
 * it. Meant for the pages that say why; no limb is judged by it.
 */
export interface Evidence {
  finding: string
  source: string
  certainty: Certainty
  range: string
  caution: string
}

/** Null where the value is within the range the evidence covers, else the sentence that refuses it. */
export function outside(what: string, value: number, low: number, high: number, unit = ''): Refusal | null {
  if (value >= low && value <= high) return null
  const to = unit === '' ? `${high}` : `${high} ${unit}`
  return refuse(
    `${what} is ${value}; the evidence here covers ${low} to ${to}: nothing may be read beyond it.`
  )
}
