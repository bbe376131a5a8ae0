import { quantity } from '../../shared/words/figures'
import { isBlank, quoted, type Cell } from '../../shared/cells'
import { digitsIn, type NumberFault, type NumberStyle } from '../../shared/numbers'
import { problem, type Problem, type ProblemCode } from '../../shared/problems'
import { rateEntry, type RateName } from './rateBook'
import type { RateEntry } from './rateEntry'
import { rateKinds } from './rateKinds'

/** A rate's value as a sentence says it. */
export function shownRate(name: RateName, value: string): string {
  return rateEntry(name).kind === 'share'
    ? `${String(Number((Number(value) * 100).toPrecision(12)))} %`
    : value
}

/** What a rate may be, in words. */
export function allowedRange({ kind, low, high, choices }: RateEntry): string {
  if (kind === 'choice') return choices.join(' or ')
  if (kind === 'code') return 'three letters'
  if (kind === 'share') return `${String(low * 100)} % to ${String(high * 100)} %`
  const range = `${String(low)} to ${quantity(high)}`
  return kind === 'whole' ? `a whole number, ${range}` : range
}

function readWord(name: RateName, cell: Cell, address: string, start: string): string | Problem {
  const entry = rateEntry(name)
  const text = String(cell).trim()
  const found =
    entry.kind === 'code'
      ? /^[a-z]{3}$/i.test(text) && text.toUpperCase()
      : entry.choices.find((choice) => choice === text.toLowerCase())
  if (typeof found === 'string') return found
  const facts = { name: entry.name, text: quoted(cell), choices: allowedRange(entry), value: start }
  return problem('rate-not-a-choice', address, facts)
}

const faultCodes = {
  'not-finite': 'rate-not-finite',
  date: 'rate-date',
  'no-number': 'rate-not-a-number'
} as const satisfies Record<Exclude<NumberFault['why'], 'two-ways'>, ProblemCode>

/**
 * The value of a rate in a cell, or what is wrong with it; `start` is what is used then, `style` which sign stands before
 * the decimals on the sheet.
 */
export function readRate(
  name: RateName,
  cell: Cell,
  address: string,
  start: string,
  style: NumberStyle
): string | Problem {
  const entry = rateEntry(name)
  const value = shownRate(name, start)
  if (isBlank(cell)) return problem('rate-missing', address, { name: entry.name, value })
  if (rateKinds[entry.kind].holds === 'word') return readWord(name, cell, address, start)
  const digits = digitsIn(cell, style, { percent: entry.kind === 'share', money: entry.kind === 'money' })
  if (typeof digits !== 'string') {
    const facts = { name: entry.name, text: quoted(cell), value }
    return digits.why === 'two-ways'
      ? problem('rate-two-ways', address, { ...facts, ...digits })
      : problem(faultCodes[digits.why], address, facts)
  }
  const number = Number(digits)
  const whole = entry.kind !== 'whole' || Number.isInteger(number)
  if (whole && number >= entry.low && number <= entry.high) return digits
  const facts = { name: entry.name, text: shownRate(name, digits), range: allowedRange(entry), value }
  return problem('rate-out-of-range', address, facts)
}
