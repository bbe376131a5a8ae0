import type { Cell } from './cells'
import { looksLikeDate } from './dates'
import { unitFromWord } from './units'

export type DecimalSign = '.' | ','

/**
 * Which sign stands before the decimals in a column or on a sheet: never told from one cell. "either" where spaces or
 * apostrophes part the thousands, so that a point or comma can only stand before decimals; null where nothing tells.
 */
export type NumberStyle = DecimalSign | 'either' | null

/** A text such as "1,016" where nothing tells whether it is a little over 1 or a thousand and more. */
export interface TwoReadings {
  readonly why: 'two-ways'
  readonly low: string
  readonly high: string
  /** How to type the low reading so that it can be read in one way only. */
  readonly clear: string
  readonly sign: 'comma' | 'point'
}

/** Why there is no number in a cell. */
export type NumberFault = TwoReadings | { readonly why: 'not-finite' | 'date' | 'no-number' }

/** What a number may carry on the surface it is typed on. */
export interface NumberForms {
  /** A percent sign, which divides by a hundred: only where a share is meant. */
  readonly percent?: boolean
  /** The sign of a currency before or behind it: only where money is meant. */
  readonly money?: boolean
}

const faults = {
  notFinite: { why: 'not-finite' },
  date: { why: 'date' },
  none: { why: 'no-number' }
} as const satisfies Record<string, NumberFault>

/** A space, or a space of print (no-break, figure, thin, narrow), or an apostrophe. */
const gap = "[ \\u00a0\\u2007\\u2009\\u202f'’]"
const spaced = new RegExp(`^([1-9]\\d{0,2})(${gap})(\\d{3})((?:\\2\\d{3})*)(?:([.,])(\\d+))?$`)
const groupedByComma = /^[1-9]\d{0,2}(?:,\d{3})+\.\d+$|^[1-9]\d{0,2}(?:,\d{3}){2,}$/
const groupedByPoint = /^[1-9]\d{0,2}(?:\.\d{3})+,\d+$|^[1-9]\d{0,2}(?:\.\d{3}){2,}$/
const oneSign = /^(\d*)([.,])(\d*)$/

/** One to three digits before the sign, not led by 0, and three behind it: it could part thousands. */
function couldGroup(before: string, after: string): boolean {
  return after.length === 3 && /^[1-9]\d{0,2}$/.test(before)
}

/** Digits without a sign, as plain decimals. */
function plainDigits(body: string, style: NumberStyle): string | TwoReadings | null {
  if (/^\d+$/.test(body)) return body
  const single = oneSign.exec(body)
  if (single !== null) return oneSigned(single[1] ?? '', single[2] as DecimalSign, single[3] ?? '', style)
  const apart = spaced.exec(body)
  if (apart !== null) {
    const whole = body.slice(0, apart[5] === undefined ? undefined : body.lastIndexOf(apart[5]))
    return whole.replace(/\D/g, '') + (apart[6] === undefined ? '' : `.${apart[6]}`)
  }
  if (groupedByComma.test(body)) return body.replaceAll(',', '')
  if (groupedByPoint.test(body)) return body.replaceAll('.', '').replace(',', '.')
  return null
}

function oneSigned(
  before: string,
  sign: DecimalSign,
  after: string,
  style: NumberStyle
): string | TwoReadings | null {
  if (before === '' && after === '') return null
  if (after === '') return sign === '.' ? before : null
  const low = `${before === '' ? '0' : before}.${after}`
  if (!couldGroup(before, after) || style === sign || style === 'either') return low
  const high = before + after
  if (style !== null) return high
  const clear = `${before}${sign}${after}0`
  return { why: 'two-ways', low, high, clear, sign: sign === ',' ? 'comma' : 'point' }
}

/**
 * The number of a text as plain decimals ("1.016,5" gives "1016.5"), the two numbers it can be, or null. Points and
 * commas may stand before decimals or part thousands, as the style of its column tells; powers of ten ("1e3") are
 * refused on every surface, as a tree's measurements never need them and an id such as 1E5 is often mistaken for one.
 */
export function readDecimal(text: string, style: NumberStyle): string | TwoReadings | null {
  const trimmed = text.trim()
  const sign = /^[+\-−]/.exec(trimmed)?.[0] ?? ''
  const digits = plainDigits(trimmed.slice(sign.length), style)
  if (digits === null) return null
  const minus = sign === '-' || sign === '−'
  if (typeof digits !== 'string')
    return minus
      ? { ...digits, low: `-${digits.low}`, high: `-${digits.high}`, clear: `-${digits.clear}` }
      : digits
  return minus && Number(digits) !== 0 ? `-${digits}` : digits
}

/** The digits of a number in a cell as plain decimals, so that money stays exact, or why there are none. */
export function digitsIn(cell: Cell, style: NumberStyle, forms: NumberForms = {}): string | NumberFault {
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) return faults.notFinite
    const text = String(cell + 0)
    return text.includes('e') ? cell.toFixed(12).replace(/\.?0+$/, '') : text
  }
  if (typeof cell !== 'string') return faults.none
  let text = cell.trim()
  if (forms.money === true) text = text.replace(/^[$€£¥]\s*|\s*[$€£¥]$/g, '')
  const percent = forms.percent === true && text.endsWith('%')
  const digits = readDecimal(percent ? text.slice(0, -1) : text, style)
  if (digits === null) return looksLikeDate(text) ? faults.date : faults.none
  if (typeof digits !== 'string' || !percent) return digits
  return String(Number((Number(digits) / 100).toPrecision(15)))
}

/** The number in a cell, never NaN, infinite or -0, or why there is none. */
export function numberIn(cell: Cell, style: NumberStyle, forms: NumberForms = {}): number | NumberFault {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell + 0 : faults.notFinite
  const digits = digitsIn(cell, style, forms)
  if (typeof digits !== 'string') return digits
  const value = Number(digits)
  return Number.isFinite(value) ? value : faults.notFinite
}

const numberToken = new RegExp(`\\d{1,3}(?:${gap}\\d{3})+(?!\\d)(?:[.,]\\d+)?|[\\d.,]*\\d`, 'g')

/** What one number tells of the style: only what can be read in no other way. */
function evidenceOf(token: string): NumberStyle {
  const single = oneSign.exec(token)
  if (single !== null) {
    const [, before = '', sign, after = ''] = single
    return couldGroup(before, after) ? null : (sign as DecimalSign)
  }
  if (groupedByComma.test(token)) return '.'
  if (groupedByPoint.test(token)) return ','
  const apart = spaced.exec(token)
  return apart === null ? null : ((apart[5] as DecimalSign | undefined) ?? 'either')
}

/** Digits with something between or before them that may be a decimal sign or part thousands. */
const twoParted = new RegExp(`[.,]\\d|\\d${gap}\\d`)

/** What may stand between and beside the numbers of a cell: marks of units, of a second reading, of money, of a share. */
const besideNumbers = /[\s+×&;/%°$€£¥"″”]+|['′’]-?/

/**
 * The numbers of a cell that holds nothing but numbers, which may have a unit or a second reading. A date, a guess or a
 * remark tells nothing: the comma of "limbs 3,4" stands before no decimals.
 */
function tokensOf(text: string): readonly string[] {
  if (oneSign.test(text)) return [text]
  if (looksLikeDate(text)) return []
  const tokens = text.match(numberToken) ?? []
  const rest = text.trim().replace(/^[-−]/, '').replace(numberToken, ' ').split(besideNumbers)
  const known = rest.every((word) => /^(|x|and)$/i.test(word) || unitFromWord(word) !== null)
  return known ? tokens : []
}

/** The style of the numbers in these cells; null also where they contradict each other. */
export function styleOf(cells: Iterable<unknown>): NumberStyle {
  let style: NumberStyle = null
  for (const cell of cells) {
    if (typeof cell !== 'string' || !twoParted.test(cell)) continue
    for (const token of tokensOf(cell)) {
      const told = evidenceOf(token)
      if (told === null || told === style) continue
      if (style === null || style === 'either') style = told
      else if (told !== 'either') return null
    }
  }
  return style
}
