import { quoted } from '../shared/cells'
import { choices, listChoices, readChoice, type Choice, type ChoiceName } from '../shared/choices'
import { refuse, type Refusal } from '../shared/refusal'
import { readSerial } from '../shared/dates'
import { numberIn, styleOf, type NumberFault, type NumberStyle } from '../shared/numbers'
import type { UnitSystem } from '../shared/units'
import type { Cells } from './grid'
import { plainCell } from './plainCell'

/**
 * One parameter of a cell function: what it is called, whether it may be left out, and how a cell of it is read. Its name
 * is the parameter's own, letter by letter: the runner takes its cells by that name, and another does not compile.
 */
export interface Argument<T, Name extends string = string> {
  name: Name
  /** What a blank cell, or the parameter left out, stands for; undefined where a value is required. */
  fallback: T | undefined
  /** Numbers above `over` and up to `most`, other than 0, need no further look. */
  over: number
  most: number
  /** A 0 counts as blank: some spreadsheets hand blank cells over as 0. */
  zeroIsBlank: boolean
  /** Texts whose value is known without reading. */
  known?: ReadonlyMap<string, T>
  /**
   * The value of a cell that is neither blank nor an error. The cells of its range tell which sign stands before the
   * decimals where the cell is a text.
   */
  read: (cell: string | number | boolean, range?: Cells) => T | Refusal
}

/** What a sentence says of a cell that holds no number, with what to do about it. */
function whyNoNumber(cell: string | number | boolean, fault: NumberFault): string {
  const reads = `reads “${quoted(cell)}”, which`
  switch (fault.why) {
    case 'two-ways':
      return `${reads} can be ${fault.high} or ${fault.low}: give ${fault.high} without the ${fault.sign}, or “${fault.clear}”.`
    case 'date':
      return `${reads} is a date: give the number alone.`
    case 'not-finite':
    case 'no-number':
      return `${reads} is not a number: give the number alone.`
  }
}

/** The arguments of a formula: one for each of its values, in its order. */
export type Arguments<V extends unknown[], Name extends string> = {
  [K in keyof V]-?: Argument<Exclude<V[K], undefined>>
} & readonly { readonly name: Name }[]

/** What the spreadsheet gave for each parameter, by its name. */
export type Given<Name extends string> = Readonly<Record<Name, unknown>>

const styles = new WeakMap<Cells, NumberStyle>()

/** Which sign stands before the decimals in a range, told once from all its cells. */
function styleOfRange(range: Cells | undefined): NumberStyle {
  if (range === undefined) return null
  let style = styles.get(range)
  if (style === undefined) styles.set(range, (style = styleOf(range.flat().map(plainCell))))
  return style
}

interface Limits {
  /** Must be above this. */
  over?: number
  /** Must be this or more. */
  least?: number
  most?: number
  fallback?: number
  /** A text such as 25% is taken as 0.25. */
  percent?: boolean
  /** What the sentence adds for a value outside: how it should be given. */
  advice?: string
}

function rangeOf({ over, least, most }: Limits): string {
  const low = over === undefined ? (least === undefined ? '' : `${least} or more`) : `more than ${over}`
  if (most === undefined) return low
  return low === '' ? `at most ${most}` : `${low} and at most ${most}`
}

/** A number within limits. */
export function number<Name extends string>(name: Name, given: Limits = {}): Argument<number, Name> {
  const {
    over = -Infinity,
    least = -Infinity,
    most = Infinity,
    fallback,
    percent = false,
    advice = 'check it'
  } = given
  const limits = rangeOf(given)
  return {
    name,
    fallback,
    over: Math.max(over, least),
    most: Math.min(most, Number.MAX_VALUE),
    zeroIsBlank: fallback !== undefined && (over >= 0 || least > 0),
    read(cell, range) {
      const style = typeof cell === 'string' ? styleOfRange(range) : null
      const value = numberIn(cell, style, { percent })
      if (typeof value !== 'number') return refuse(`${name} ${whyNoNumber(cell, value)}`)
      if (value > over && value >= least && value <= most) return value
      return refuse(`${name} is ${value}; it must be ${limits}: ${advice}.`)
    }
  }
}

/** A diameter or a distance: more than 0, in any unit, the same for all lengths of one call. */
export function length<Name extends string>(name: Name): Argument<number, Name> {
  return number(name, { over: 0, advice: 'measure it again' })
}

/** A height above ground: 0 or more. */
export function height<Name extends string>(name: Name): Argument<number, Name> {
  return number(name, { least: 0, advice: 'measure it again' })
}

const shareAdvice = 'give 25 % as 0.25 or 25%'

/** A share from 0 to 1. */
export function share<Name extends string>(name: Name, fallback?: number): Argument<number, Name> {
  return number(name, { least: 0, most: 1, fallback, percent: true, advice: shareAdvice })
}

/** A share above 0, up to 1. */
export function positiveShare<Name extends string>(name: Name, fallback?: number): Argument<number, Name> {
  return number(name, { over: 0, most: 1, fallback, percent: true, advice: shareAdvice })
}

/** One of the words of a choice. */
export function word<N extends ChoiceName, Name extends string>(
  name: Name,
  choice: N,
  fallback?: Choice<N>
): Argument<Choice<N>, Name> {
  return {
    name,
    fallback,
    over: Infinity,
    most: -Infinity,
    zeroIsBlank: true,
    known: knownWords(choice),
    read: (cell) =>
      readChoice(choice, String(cell)) ??
      refuse(`${name} reads “${quoted(cell)}”: give ${listChoices(choice)}.`)
  }
}

function knownWords<N extends ChoiceName>(choice: N): ReadonlyMap<string, Choice<N>> {
  const words = Object.entries<readonly string[]>(choices[choice])
  return new Map(words.flatMap(([value, spellings]) => spellings.map((word) => [word, value as Choice<N>])))
}

/** Which lengths a call is in, where that matters: in-ft for inches and feet, cm-m for centimeters and meters. */
export const unitsArgument: Argument<UnitSystem, 'units'> = {
  name: 'units',
  fallback: 'in-ft',
  over: Infinity,
  most: -Infinity,
  zeroIsBlank: true,
  read: (cell) => {
    const given = String(cell).trim().toLowerCase()
    return given === 'in-ft' || given === 'cm-m'
      ? given
      : refuse(`units reads “${quoted(cell)}”: give in-ft or cm-m.`)
  }
}

/** Any text; a number counts as its digits. */
export function text<Name extends string>(name: Name, fallback?: string): Argument<string, Name> {
  return {
    name,
    fallback,
    over: Infinity,
    most: -Infinity,
    zeroIsBlank: true,
    read: (cell) => String(cell).trim()
  }
}

/** A date: a spreadsheet's serial number, or a text such as 2024-03-31. */
export function date<Name extends string>(name: Name): Argument<number, Name> {
  return {
    name,
    fallback: undefined,
    over: Infinity,
    most: -Infinity,
    zeroIsBlank: true,
    read: (cell) =>
      readSerial(cell) ??
      refuse(
        `${name} reads “${quoted(cell)}”, which is not a date: give a date, or a text such as 2024-03-31.`
      )
  }
}
