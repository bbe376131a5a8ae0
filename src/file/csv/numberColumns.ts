import { exactDigits, type Notice } from './records'
import type { Cell } from '../../../shared/cells'
import { readDecimal, styleOf, type DecimalSign, type NumberStyle } from '../../../shared/numbers'

const [zero, nine, plus, comma, minus, point] = [48, 57, 43, 44, 45, 46]

/** A number and nothing else. Ids such as 007 or 1E5 stay text, as a surveyor typed them. */
type Plain = number | DecimalSign | null

/** A whole number, the sign before the decimals of a fraction, or null for every other text; blank is none of them. */
function plainNumber(text: string): Plain {
  const first = text.charCodeAt(0)
  const start = first === minus || first === plus ? 1 : 0
  let at = start
  let value = 0
  let code = text.charCodeAt(at)
  for (; code >= zero && code <= nine; code = text.charCodeAt(++at)) value = value * 10 + code - zero
  const digits = at - start
  if (digits > 1 && text.charCodeAt(start) === zero) return null
  if (at === text.length) {
    if (digits === 0 || digits > exactDigits) return null
    return first === minus && value > 0 ? -value : value
  }
  if (code !== point && code !== comma) return null
  const decimals = at + 1
  for (at = decimals; at < text.length; at++) {
    const digit = text.charCodeAt(at)
    if (digit < zero || digit > nine) return null
  }
  return at === decimals ? null : code === point ? '.' : ','
}

/** What the cells of a column tell of its decimal sign. */
class Column {
  /** Texts that tell something, or may: of fractions that can be read in one way only, one for each sign. */
  readonly fractions: string[] = []
  readonly others: string[] = []
  private readonly signs = { '.': false, ',': false }

  fraction(text: string, sign: DecimalSign): void {
    // With other than three decimals it can be read in no other way, and most fractions are so.
    if (text.length - text.indexOf(sign) === 4) this.fractions.push(text)
    else if (!this.signs[sign]) {
      this.signs[sign] = true
      this.fractions.push(text)
    }
  }

  get style(): NumberStyle {
    return styleOf([...this.fractions, ...this.others])
  }
}

/** A text that was written as the formula ="007", so that a spreadsheet leaves it a text. */
function keptText(text: string): string {
  return /^="([^"]*)"$/.exec(text)?.[1] ?? text
}

/** The number of a text such as "12.5": of so few digits the quotient is the nearest number there is, as `Number` gives it. */
function pointed(text: string): number {
  if (text.length > exactDigits) return Number(text) + 0
  let digits = 0
  let tens = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code >= zero && code <= nine) {
      digits = digits * 10 + code - zero
      tens *= 10
    } else if (code === point) tens = 1
  }
  return text.charCodeAt(0) === minus && digits > 0 ? -digits / tens : digits / tens
}

/** A fraction as the style of its column and the separator allow; what could be read in two ways stays text. */
function fractionOf(text: string, style: NumberStyle, separator: string): Cell {
  const sign = plainNumber(text)
  if (sign === null || typeof sign === 'number' || style === null) return text
  if (sign === ',' && (separator === ',' || style === '.')) return text
  if (sign === style && sign === '.') return pointed(text)
  const digits = readDecimal(text, style)
  return typeof digits === 'string' ? Number(digits) + 0 : text
}

/** Columns of cells while they are read and, once all of them are, the numbers of their texts. */
export class NumberColumns {
  private readonly columns: Column[] = []

  constructor(private readonly separator: string) {}

  /** A whole number, null for a blank, or the text: a fraction waits until its column is known. */
  readonly notice: Notice = (text, at) => {
    if (text === '') return null
    const plain = plainNumber(text)
    if (typeof plain === 'number') return plain
    const column = (this.columns[at] ??= new Column())
    if (plain !== null) column.fraction(text, plain)
    else if (text.startsWith('="')) return keptText(text)
    else column.others.push(text)
    return text
  }

  /**
   * Puts fractions in the place of their texts, in the rows given. Which sign stands before the decimals is told from the
   * numbers of each column, or of the whole file where a column does not tell.
   */
  readFractions(rows: readonly Cell[][]): void {
    const known = [...this.columns.entries()].filter(([, column]) => column?.fractions.length > 0)
    const ofFile = styleOf(known.flatMap(([, { fractions }]) => fractions))
    const styled = known.flatMap(([at, column]) => {
      const own = column.style
      // Thousands parted by spaces in some rows leave open what a sign means in the others; the rest of the file may tell.
      const style = own === null || own === 'either' ? (ofFile ?? own) : own
      return style === null ? [] : [{ at, style }]
    })
    for (const row of rows)
      for (const { at, style } of styled) {
        const text = row[at]
        if (typeof text === 'string') row[at] = fractionOf(text, style, this.separator)
      }
  }
}
