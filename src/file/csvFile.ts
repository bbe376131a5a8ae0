import type { Cell } from '../../shared/cells'
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
const point = /^[+-]?(0|[1-9]\d*)(\.\d+)?$|^[+-]?\.\d+$/
const comma = /^[+-]?(0|[1-9]\d*),\d+$/

/**
 * Rows of a file of separated values. The separator (comma, semicolon, tab, bar) is told from the header line. Where it
 * is not a comma, a comma is the decimal sign, unless the file also writes numbers with a decimal point.
 */
export function readCsv(text: string): Cell[][] {
  const header = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? ''
  const delimiter = separatorOf(header)
  const rows = textRows(text, delimiter)
  const fraction = (cell: string) => point.test(cell) && cell.includes('.')
  const commas = delimiter !== ',' && !rows.some((row) => row.some(fraction))
  return rows.map((row) =>
    row.map((cell) => {
      if (cell === '') return null
      if (point.test(cell)) return Number(cell)
      return commas && comma.test(cell) ? Number(cell.replace(',', '.')) : cell
    })
  )
}
