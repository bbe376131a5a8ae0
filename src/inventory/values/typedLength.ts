import { takeApart, type Manner } from '../../../shared/approximate'
import { readLength, type TypedLength } from '../../../shared/lengths'
import { withoutMeasure, type Measure } from '../../../shared/measureWords'
import type { NumberStyle, TwoReadings } from '../../../shared/numbers'
import { convertLength, type LengthUnit } from '../../../shared/units'

/** A length as typed in a cell: its value in the column's unit, and how it was meant. */
export interface LengthInCell {
  readonly value: number
  /** The cell itself names another unit. */
  readonly converted: boolean
  /** It is no plain measured number. */
  readonly manner: Manner | 'two readings' | null
  /** What the cell says that it measured. */
  readonly measure: Measure | null
}

/** A bare "7/8" in a column of centimeters: a fraction, or two readings. */
export interface FractionOrTwo {
  readonly why: 'fraction-or-two'
}

export type LengthFault = TwoReadings | FractionOrTwo

/** How the cells of a column are to be read. */
export interface LengthStyle {
  readonly style: NumberStyle
  readonly unit: LengthUnit
  /** Words such as "dia" and "girth" may stand beside the number. */
  readonly across: boolean
}

const bareFraction = /^\d+\s*\/\s*(?:2|3|4|8|16|32)$/
const isMetric = (unit: LengthUnit): boolean => unit === 'mm' || unit === 'cm' || unit === 'm'

function inUnit({ value, unit }: TypedLength, column: LengthUnit): number {
  return convertLength(value, unit ?? column, column)
}

function exact(text: string, { style, unit }: LengthStyle): LengthInCell | LengthFault | null {
  const typed = readLength(text, style)
  if (typed === null || 'why' in typed) return typed
  const slashed = typed.mean === true && /\d\s*\/\s*\d/.test(text) && !/[x×&;]|and/i.test(text)
  if (bareFraction.test(text) && isMetric(unit) && typed.mean !== true && Number.parseInt(text, 10) > 1)
    return { why: 'fraction-or-two' }
  return {
    value: inUnit(typed, unit),
    converted: typed.unit !== null && typed.unit !== unit,
    manner: slashed ? 'two readings' : null,
    measure: null
  }
}

function range(low: string, high: string, how: LengthStyle): LengthInCell | LengthFault | null {
  const top = readLength(high, how.style)
  const bottom = readLength(low, how.style)
  if (top === null || bottom === null) return null
  if ('why' in top) return top
  if ('why' in bottom) return bottom
  if (top.mean === true || bottom.mean === true) return null
  const from = inUnit({ ...bottom, unit: bottom.unit ?? top.unit }, how.unit)
  const to = inUnit(top, how.unit)
  if (!(from < to)) return null
  const converted = top.unit !== null && top.unit !== how.unit
  return { value: (from + to) / 2, converted, manner: 'range', measure: null }
}

function approximate(text: string, how: LengthStyle): LengthInCell | LengthFault | null {
  const found = takeApart(text)
  if (found === null) return null
  const [first = '', second] = found.texts
  if (second !== undefined) return range(first, second, how)
  const { text: bare, measure } = how.across ? withoutMeasure(first) : { text: first, measure: null }
  const read = exact(bare, how)
  if (read === null || 'why' in read) return read
  return read.manner === null ? { ...read, manner: found.manner, measure } : null
}

/**
 * The length in a text: plain ("12.5", "4 1/2 in", "4'-6\"", "Ø 12", "girth 94 cm"), an estimate ("~12", "12 est."), a
 * bound ("<12", "12+"; the value is the bound) or a range ("12-14"; its middle); the reasons why it can be two; or null.
 */
export function lengthInCell(text: string, how: LengthStyle): LengthInCell | LengthFault | null {
  const plain = exact(text.trim(), how)
  if (plain !== null) return plain
  const { text: bare, measure } = how.across ? withoutMeasure(text) : { text: text.trim(), measure: null }
  const read = measure === null ? null : exact(bare, how)
  if (read !== null) return 'why' in read ? read : { ...read, measure }
  const inexact = approximate(bare, how)
  if (inexact === null || 'why' in inexact) return inexact
  return { ...inexact, measure: measure ?? inexact.measure }
}

const between = /\s*(?:[+/;&]|(?<=\s)(?:and|und|et|y)(?=\s)|,(?=\s))\s*/i
/** "5,6,8": three numbers and more without a space, none of which could be a group of thousands. */
const tight = /^\d{1,2}(?:\.\d+)?(?:,\d{1,2}(?:\.\d+)?){2,}$/
const oneFraction = /^\d+\s*\/\s*\d+$/

/**
 * The stems in a text such as "5 + 6 + 8", "10/9" or "5, 6, 8", in the column's unit; null where it gives one
 * length or none. A unit behind the last counts for all.
 */
export function stemsInCell(
  text: string,
  { style, unit }: LengthStyle
): readonly number[] | TwoReadings | null {
  const bare = withoutMeasure(text).text
  const texts = tight.test(bare) ? bare.split(',') : bare.split(between)
  if (texts.length < 2 || texts.some((each) => each === '')) return null
  if (!oneFraction.test(bare)) {
    const single = readLength(bare, style)
    if (single !== null && !('why' in single) && single.mean !== true) return null
  }
  const read = texts.map((each) => readLength(each, style))
  const last = read.at(-1)
  const behind = last === null || last === undefined || 'why' in last ? null : last.unit
  const lengths: number[] = []
  for (const each of read) {
    if (each === null) return null
    if ('why' in each) return each
    if (!(each.value > 0) || each.mean === true) return null
    lengths.push(inUnit({ ...each, unit: each.unit ?? behind }, unit))
  }
  return lengths
}
