import type { Cell } from '../../../shared/cells'
import { readDecimal, styleOf, type DecimalSign, type NumberStyle } from '../../../shared/numbers'

/** The most digits of a whole number that a spreadsheet keeps exactly; a longer one is an id. */
const exactDigits = 15

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

/** Whether a text begins as a number with something beside it does: "12,5 cm", "$1,016", "“", but no word. */
function mayTell(text: string): boolean {
  const code = text.charCodeAt(0)
  return code < 65 || code > 122
}

/** A text that was written as the formula ="007", so that a spreadsheet leaves it a text. */
function keptText(text: string): string {
  return /^="([^"]*)"$/.exec(text)?.[1] ?? text
}

/** Puts whole numbers in the place of their texts, and null for blanks; fractions wait until their columns are known. */
function readWholes(rows: Cell[][]): Column[] {
  const columns: Column[] = []
  for (const row of rows)
    for (let at = 0; at < row.length; at++) {
      const text = row[at] as string
      const column = (columns[at] ??= new Column())
      if (text === '') row[at] = null
      else if (mayTell(text)) {
        const plain = plainNumber(text)
        if (typeof plain === 'number') row[at] = plain
        else if (plain !== null) column.fraction(text, plain)
        else if (text.startsWith('="')) row[at] = keptText(text)
        else column.others.push(text)
      }
    }
  return columns
}

/** A fraction as the style of its column and the separator allow; what could be read in two ways stays text. */
function fractionOf(text: string, style: NumberStyle, separator: string): Cell {
  const sign = plainNumber(text)
  if (sign === null || typeof sign === 'number' || style === null) return text
  if (sign === ',' && (separator === ',' || style === '.')) return text
  if (sign === style && sign === '.') return Number(text) + 0
  const digits = readDecimal(text, style)
  return typeof digits === 'string' ? Number(digits) + 0 : text
}

/**
 * Puts numbers in the place of their texts, in the rows given. Which sign stands before the decimals is told from the
 * numbers of each column, or of the whole file where a column does not tell.
 */
export function readNumbers(rows: Cell[][], separator: string): void {
  const columns = readWholes(rows)
  const ofFile = styleOf(columns.flatMap(({ fractions }) => fractions))
  const styles = columns.map((column) => {
    const own = column.fractions.length === 0 ? null : column.style
    // Thousands parted by spaces in some rows leave open what a sign means in the others; the rest of the file may tell.
    return column.fractions.length === 0 ? null : own === null || own === 'either' ? (ofFile ?? own) : own
  })
  for (const row of rows)
    for (let at = 0; at < row.length; at++) {
      const style = styles[at]
      const text = row[at]
      if (style && typeof text === 'string') row[at] = fractionOf(text, style, separator)
    }
}
