import type { Cell } from '../../shared/cells'
import { readDecimal, styleOf, type NumberStyle } from '../../shared/numbers'
import { separatorOf, textRows, withoutMark } from './file-library/separatedValues'

/** The text of a file: UTF-8 or UTF-16 by its mark, else UTF-8, else Windows-1252 as older spreadsheets save it. */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return withoutMark(new TextDecoder('utf-16le').decode(bytes))
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return withoutMark(new TextDecoder('utf-16be').decode(bytes))
  try {
    return withoutMark(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}

/** A number and nothing else. Ids such as 007 or 1E5 stay text, as a surveyor typed them. */
const whole = /^[+-]?(0|[1-9]\d*)$/
const fraction = /^[+-]?(0|[1-9]\d*)?[.,]\d+$/

/** A number as the style of its column and the separator allow; what could be read in two ways stays text. */
function cellOf(text: string, style: NumberStyle, delimiter: string): Cell {
  if (text === '') return null
  if (whole.test(text)) return Number(text) + 0
  if (style === null || !fraction.test(text)) return text
  if (text.includes(',') && (delimiter === ',' || style === '.')) return text
  const digits = readDecimal(text, style)
  return typeof digits === 'string' ? Number(digits) : text
}

/**
 * Rows of a file of separated values. The separator (comma, semicolon, tab, bar) is told from the header line; which sign
 * stands before the decimals, from the numbers of each column, or of the whole file where a column does not tell.
 */
export function readCsv(text: string): Cell[][] {
  const header = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? ''
  const delimiter = separatorOf(header)
  const rows = textRows(text, delimiter)
  const ofFile = styleOf(rows.flat().filter((cell) => fraction.test(cell)))
  const styles = (rows[0] ?? []).map((_header, column) => {
    const own = styleOf(rows.map((row) => row[column]))
    // Thousands parted by spaces in some rows leave open what a sign means in the others; the rest of the file may tell.
    return own === null || own === 'either' ? (ofFile ?? own) : own
  })
  return rows.map((row) => row.map((cell, column) => cellOf(cell, styles[column] ?? ofFile, delimiter)))
}
