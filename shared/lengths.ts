import { readDecimal, type NumberStyle, type TwoReadings } from './numbers'
import { convertLength, unitFromWord, type LengthUnit } from './units'

/** A length as a person typed it: its value in the unit written beside it, or in none. */
export interface TypedLength {
  readonly value: number
  readonly unit: LengthUnit | null
  /** It is the mean of two readings. */
  readonly mean?: true
}

type LengthReading = TypedLength | TwoReadings | null

const signs: Record<string, string> = {
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
  '⅓': ' 1/3',
  '⅔': ' 2/3'
}

/** One way of writing: fractions spelled out, two single marks as the mark of inches. */
function spelled(text: string): string {
  return text
    .replace(/\s*([½¼¾⅛⅜⅝⅞⅓⅔])/g, (_whole, sign: string) => signs[sign] ?? sign)
    .replaceAll('⁄', '/')
    .replace(/(['’′])\1/g, '"')
    .trim()
}

function isTwoWays(reading: LengthReading | number): reading is TwoReadings {
  return typeof reading === 'object' && reading !== null && 'why' in reading
}

/** A number that may carry a vulgar fraction, as tapes are read in inches: "4 1/2", "3/4". */
function withFraction(text: string, style: NumberStyle): number | TwoReadings | null {
  const parts = /^(?:(\d+)[ -])?(\d+)\/(2|3|4|8|16|32)$/.exec(text.trim())
  if (parts === null) {
    const digits = readDecimal(text, style)
    return typeof digits === 'string' ? Number(digits) : digits
  }
  const top = Number(parts[2])
  const bottom = Number(parts[3])
  return top < bottom ? Number(parts[1] ?? 0) + top / bottom : null
}

const feetAndInches =
  /^(\d+(?:[.,]\d+)?)\s*(?:'|′|’|ft\.?|feet)[\s-]*(\d+(?:[.,]\d+)?(?: \d+\/\d+)?|\d+\/\d+)\s*(?:"|″|”|in\.?|inches)?$/i
const oneUnit = /^([^\p{L}"'″′”’]+?)\s*(\p{L}+\.?|["'″′”’])$/iu
/** "10m20", as heights are spoken in French. */
const metersAndCentimeters = /^(\d+)\s*m\s*(\d{2})(?:\s*cm)?$/i

function oneLength(text: string, style: NumberStyle): LengthReading {
  const bare = withFraction(text, style)
  if (typeof bare === 'number') return { value: bare, unit: null }
  if (bare !== null) return bare
  const both = feetAndInches.exec(text)
  if (both?.[1] !== undefined && both[2] !== undefined) {
    const feet = withFraction(both[1], style)
    const inches = withFraction(both[2], style)
    if (typeof feet !== 'number') return feet
    return typeof inches === 'number' ? { value: feet + inches / 12, unit: 'ft' } : inches
  }
  const meters = metersAndCentimeters.exec(text)
  if (meters !== null) return { value: Number(meters[1]) + Number(meters[2]) / 100, unit: 'm' }
  const parts = oneUnit.exec(text)
  const unit = parts?.[2] === undefined ? null : unitFromWord(parts[2])
  if (parts?.[1] === undefined || unit === null) return null
  const value = withFraction(parts[1], style)
  return typeof value === 'number' ? { value, unit } : value
}

/**
 * A length as typed: "12.5", "12,5", "4 1/2 in", "17 cm", "12' 6\"", or two readings whose mean is taken
 * ("10.2 x 9.8", "10.2/9.8"); the two lengths it can be where nothing in its column tells ("1,016 mm"); or null.
 */
export function readLength(text: string, style: NumberStyle): LengthReading {
  const typed = spelled(text)
  const single = oneLength(typed, style)
  if (single !== null) return single
  const pair = typed.split(/\s*(?:×|\bx\b|&|;|\/|\band\b)\s*|(?<=\d)x(?=[\d.])/i)
  if (pair.length !== 2 || pair[0] === undefined || pair[1] === undefined) return null
  const first = oneLength(pair[0], style)
  const second = oneLength(pair[1], style)
  if (first === null || second === null) return null
  if (isTwoWays(first) || isTwoWays(second)) return isTwoWays(first) ? first : second
  if (!(first.value > 0 && second.value > 0)) return null
  return meanOf(first, second)
}

function meanOf(first: TypedLength, second: TypedLength): TypedLength {
  const unit = first.unit ?? second.unit
  if (unit === null) return { value: (first.value + second.value) / 2, unit, mean: true }
  const inUnit = (length: TypedLength): number => convertLength(length.value, length.unit ?? unit, unit)
  return { value: (inUnit(first) + inUnit(second)) / 2, unit, mean: true }
}
