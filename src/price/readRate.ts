import { quantity } from '../../shared/words/figures'
import { isBlank, quoted, type Cell } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { rateEntry, type RateEntry, type RateName } from './rateBook'

/** A plain decimal, with a comma or a point for the fraction or with groups of three; nothing else is a number. */
export function decimalOf(text: string): string | null {
  const bare = text.replace(/[\s\u00a0\u202f]/g, '')
  const grouped = /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare) ? bare.replaceAll(',', '') : bare
  const pointed = grouped.replace(/^(-?\d*),(\d+)$/, '$1.$2')
  return /^-?(\d+\.?\d*|\.\d+)$/.test(pointed) ? pointed : null
}

/** The number of a cell as text, its digits as typed; a per cent sign divides by a hundred. */
function numberText(cell: Cell): string | null {
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) return null
    const text = String(cell)
    return text.includes('e') ? cell.toFixed(12).replace(/\.?0+$/, '') : text
  }
  if (typeof cell !== 'string') return null
  const trimmed = cell.trim().replace(/^[$€£¥]\s*|\s*[$€£¥]$/g, '')
  const percent = /^(.*)%$/.exec(trimmed)
  if (percent === null) return decimalOf(trimmed)
  const digits = decimalOf(percent[1] ?? '')
  return digits === null ? null : String(Number((Number(digits) / 100).toPrecision(15)))
}

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

/** The value of a rate in a cell, or what is wrong with it; `start` is what is used then. */
export function readRate(name: RateName, cell: Cell, address: string, start: string): string | Problem {
  const entry = rateEntry(name)
  const value = shownRate(name, start)
  if (isBlank(cell)) return problem('rate-missing', address, { name: entry.name, value })
  if (entry.kind === 'choice' || entry.kind === 'code') return readWord(name, cell, address, start)
  const text = numberText(cell)
  if (text === null)
    return problem('rate-not-a-number', address, { name: entry.name, text: quoted(cell), value })
  const number = Number(text)
  const whole = entry.kind !== 'whole' || Number.isInteger(number)
  if (whole && number >= entry.low && number <= entry.high) return text
  const facts = { name: entry.name, text: shownRate(name, text), range: allowedRange(entry), value }
  return problem('rate-out-of-range', address, facts)
}
