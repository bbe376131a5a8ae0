import { cellAddress, type Cell } from '../../shared/cells'
import { counted } from '../../shared/words/counts'
import { sheetColumns, sheetRows } from '../../shared/a1Notation'
import { longestCellText } from '../sheets/typedText'
import { refuse, type Refusal } from '../../shared/refusal'
import { decodeText, isBinary } from './csv/decodeText'
import { NumberColumns } from './csv/numberColumns'
import { isTooLarge, mostCells, recordsOf, type TooLarge } from './csv/records'
export { decodeText } from './csv/decodeText'
import { namedSeparator, separatorOf } from './csv/separator'

/** The rows of a file of separated values, and the row of the file that the first one is, from 0. */
export interface SeparatedRows {
  rows: Cell[][]
  top: number
}

/** What is too large for a spreadsheet, and where. */
function sentenceOf(name: string, { tooLarge, row, column }: TooLarge): string {
  const split = 'split the inventory into smaller files.'
  switch (tooLarge) {
    case 'cell':
      return `${name} holds more than ${counted(longestCellText, 'character')} in the one cell ${cellAddress(row, column)}: check that it is a table, and that no quotation mark lacks its partner.`
    case 'columns':
      return `${name} holds more than ${counted(sheetColumns, 'column')} in row ${String(row + 1)}: check that it is a table with a line for each row.`
    case 'rows':
      return `${name} holds more than ${counted(sheetRows, 'row')}: ${split}`
    case 'cells':
      return `${name} holds more than ${counted(mostCells, 'cell')}: ${split}`
  }
}

/** Rows of a text of separated values, with numbers where a cell holds nothing but one. */
export function readSeparated(text: string): SeparatedRows | TooLarge {
  const named = namedSeparator(text)
  const body = named === null ? text : text.slice(named.after)
  const separator = named?.separator ?? separatorOf(text)
  const columns = new NumberColumns(separator)
  const records = recordsOf(body, separator, { notice: columns.notice })
  if (isTooLarge(records)) return records
  columns.readFractions(records)
  return { rows: records, top: named === null ? 0 : 1 }
}

/** The rows alone, for a text that is known to be no larger than a spreadsheet; none where it is. */
export function readCsv(text: string): Cell[][] {
  const read = readSeparated(text)
  return 'tooLarge' in read ? [] : read.rows
}

/** The same of a file's bytes, or one sentence that says why it cannot be read. */
export function readCsvFile(name: string, bytes: Uint8Array): SeparatedRows | Refusal {
  const text = decodeText(bytes)
  if (isBinary(text))
    return refuse(
      `${name} holds no text, whatever its name says: save the inventory as .csv or .xlsx and name that file.`
    )
  if (text.trim() === '') return refuse(`${name} is empty: save the inventory again, with its headers.`)
  const read = readSeparated(text)
  return 'tooLarge' in read ? refuse(sentenceOf(name, read)) : read
}
