/** Text files of separated values, as the file library takes them apart. */
import { detectDelimiter, parseCsv, stripBom } from 'hucre/csv'

/** The mark that tells the encoding of a text is no part of it. */
export const withoutMark = stripBom

/** Comma, semicolon, tab or bar, whichever the line is divided by. */
export const separatorOf = (line: string): string => detectDelimiter(line)

/** Every cell as its text, without the spaces around it. */
export function textRows(text: string, separator: string): string[][] {
  return parseCsv(text, { delimiter: separator }).map((row) => row.map((cell) => String(cell ?? '').trim()))
}
