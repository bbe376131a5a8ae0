import { convertLength, unitFromWord, type LengthUnit } from './units'

/** A length as a person typed it: its value in the unit written beside it, or in none. */
export interface TypedLength {
  value: number
  unit: LengthUnit | null
}

const plain = /^[+-]?(\d+(\.\d*)?|\.\d+)$/
const decimalComma = /^[+-]?\d+,\d{1,2}$/
const thousands = /^\d{1,3}(,\d{3})+(\.\d+)?$/

/** A plain number as text, with a decimal point or comma; NaN for anything else ("0x10", "1e3", "about 3"). */
export function typedNumber(text: string): number {
  const trimmed = text.trim()
  if (plain.test(trimmed)) return Number(trimmed)
  if (decimalComma.test(trimmed)) return Number(trimmed.replace(',', '.'))
  if (thousands.test(trimmed)) return Number(trimmed.replaceAll(',', ''))
  return NaN
}

/** A number that may carry a vulgar fraction, as tapes are read in inches: "4 1/2", "3/4". */
function withFraction(text: string): number {
  const parts = /^(?:(\d+)[ -])?(\d+)\/(2|4|8|16)$/.exec(text.trim())
  if (parts === null) return typedNumber(text)
  const top = Number(parts[2])
  const bottom = Number(parts[3])
  return top < bottom ? Number(parts[1] ?? 0) + top / bottom : NaN
}

function oneLength(text: string): TypedLength | null {
  const feetInches =
    /^(\d+(?:\.\d+)?)\s*(?:'|′|’|ft\.?|feet)\s*(\d+(?:\.\d+)?(?: \d+\/\d+)?)\s*(?:"|″|”|in\.?|inches)?$/i.exec(
      text
    )
  if (feetInches?.[1] !== undefined && feetInches[2] !== undefined)
    return { value: Number(feetInches[1]) + withFraction(feetInches[2]) / 12, unit: 'ft' }
  const bare = withFraction(text)
  if (!Number.isNaN(bare)) return { value: bare, unit: null }
  const parts = /^([^a-z"'″′”’]+?)\s*([a-z]+\.?|["'″′”’])$/i.exec(text)
  if (parts?.[1] === undefined || parts[2] === undefined) return null
  const unit = unitFromWord(parts[2])
  const value = withFraction(parts[1])
  return unit === null || Number.isNaN(value) ? null : { value, unit }
}

/**
 * A length as typed: "12.5", "12,5", "4 1/2 in", "17 cm", "12' 6\"", or two readings whose mean is taken
 * ("10.2 x 9.8", "10.2/9.8"). Null for anything else.
 */
export function typedLength(text: string): TypedLength | null {
  const trimmed = text.trim()
  const single = oneLength(trimmed)
  if (single !== null) return single
  const pair = trimmed.split(/\s*(?:×|\bx\b|&|;|\/|\band\b)\s*|(?<=\d)x(?=[\d.])/i)
  if (pair.length !== 2 || pair[0] === undefined || pair[1] === undefined) return null
  const first = oneLength(pair[0])
  const second = oneLength(pair[1])
  if (first === null || second === null || !(first.value > 0 && second.value > 0)) return null
  const unit = first.unit ?? second.unit
  if (unit === null) return { value: (first.value + second.value) / 2, unit }
  const inUnit = (length: TypedLength): number => convertLength(length.value, length.unit ?? unit, unit)
  return { value: (inUnit(first) + inUnit(second)) / 2, unit }
}

const compass = [
  'n',
  'nne',
  'ne',
  'ene',
  'e',
  'ese',
  'se',
  'sse',
  's',
  'ssw',
  'sw',
  'wsw',
  'w',
  'wnw',
  'nw',
  'nnw'
]
const longCompass: Record<string, string> = {
  north: 'n',
  northeast: 'ne',
  east: 'e',
  southeast: 'se',
  south: 's',
  southwest: 'sw',
  west: 'w',
  northwest: 'nw'
}

/** Degrees from a compass point: "NE" gives 45; NaN for anything else. */
export function compassDegrees(text: string): number {
  const word = text.trim().toLowerCase().replace(/[\s-]/g, '')
  const at = compass.indexOf(longCompass[word] ?? word)
  return at < 0 ? NaN : at * 22.5
}

/** The year of a date cell: a year, an Excel serial, or a text that begins or ends with a year; NaN otherwise. */
export function yearOf(cell: number | string): number {
  const value = typeof cell === 'number' ? cell : typedNumber(cell)
  if (value >= 1900 && value <= 2200 && Number.isInteger(value)) return value
  if (value > 2200 && value < 120000) return new Date(Math.round((value - 25569) * 86400000)).getUTCFullYear()
  const named = typeof cell === 'string' ? /^(\d{4})[-/.]|[-/. ](\d{4})$/.exec(cell.trim()) : null
  return named === null ? NaN : Number(named[1] ?? named[2])
}
