/**
 * Text of separated values taken apart into records (RFC 4180), with what files of real people have besides: lines ended in
 * different ways, spaces before a quote, and quotes that are no quotes (3½", a note in quotes that never end).
 */
import type { Cell } from '../../../shared/cells'
import { sheetColumns, sheetRows } from '../../../shared/a1Notation'
import { longestCellText } from '../../sheets/typedText'

const quote = 34
const [zero, nine] = [48, 57]
const lineFeed = 10
const carriageReturn = 13
const space = 32

/** The most digits of a whole number that a spreadsheet keeps exactly; a longer one is an id. */
export const exactDigits = 15
/** Most cells of a file, the same as the file library takes of a workbook's sheet. */
export const mostCells = 20_000_000

/** What a spreadsheet could not hold: where it was met, counted from 0. */
export interface TooLarge {
  readonly tooLarge: 'cell' | 'columns' | 'rows' | 'cells'
  readonly row: number
  readonly column: number
}

export type Records = Cell[][] | TooLarge

export function isTooLarge(records: Records): records is TooLarge {
  return !Array.isArray(records)
}

function ends(code: number, separator: number): boolean {
  // NaN where the text is over.
  return code === separator || code === lineFeed || code === carriageReturn || Number.isNaN(code)
}

function afterSpaces(text: string, from: number): number {
  let at = from
  while (text.charCodeAt(at) === space) at++
  return at
}

function isLineBroken(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    const code = text.charCodeAt(at)
    if (code === lineFeed || code === carriageReturn) return true
  }
  return false
}

/** Whether a cell begins at this quote: only a separator or a line's end stands before it. */
function beginsCell(text: string, at: number, separator: number): boolean {
  let before = at - 1
  while (text.charCodeAt(before) === space) before--
  return before >= 0 && ends(text.charCodeAt(before), separator)
}

/**
 * The quote that closes the cell opened at `open`: the first that is not doubled and has the cell's end behind it. -1 where
 * the opening one is no quote: another cell in quotes begins first, or a lone quote follows on a later line.
 */
function closingQuote(text: string, open: number, separator: number): { at: number; seen: number } {
  let from = open + 1
  for (;;) {
    const at = text.indexOf('"', from)
    if (at < 0) return { at, seen: text.length - open }
    if (text.charCodeAt(at + 1) === quote) {
      from = at + 2
      continue
    }
    if (ends(text.charCodeAt(afterSpaces(text, at + 1)), separator)) return { at, seen: 0 }
    if (beginsCell(text, at, separator) || isLineBroken(text, from, at)) return { at: -1, seen: at - open }
    from = at + 1
  }
}

/**
 * The text between two places without the spaces around it. Columns repeat themselves: where the cell above is the same, so
 * is the text, which saves most of the memory.
 */
function trimmed(text: string, from: number, to: number, above: Cell | undefined): string {
  if (typeof above === 'string' && above.length === to - from && text.startsWith(above, from)) return above
  const first = text.charCodeAt(from)
  const last = text.charCodeAt(to - 1)
  const cell = text.slice(from, to)
  return first <= space || last <= space || first >= 0xa0 || last >= 0xa0 ? cell.trim() : cell
}

function unquoted(text: string): string {
  const plain = text.includes('""') ? text.replaceAll('""', '"') : text
  return (plain.includes('\r') ? plain.replace(/\r\n?/g, '\n') : plain).trim()
}

/** Goes through a text cell by cell. */
class CellScanner {
  /** Where the next cell begins or, after one was read, what ends it. */
  at = 0
  /** Looked through for closing quotes that are not there: beyond this, a quote is a sign like any other. */
  private vain: number

  constructor(
    private readonly text: string,
    private readonly separator: number
  ) {
    this.vain = 4 * text.length + 1_000_000
  }

  /** The cell that begins here, as text; `above` is the one of the record before. */
  cell(above: Cell | undefined): Cell {
    const { text, separator } = this
    const from = this.at
    const first = text.charCodeAt(from)
    const quoted = first === quote || first === space ? this.quotedCell(from) : null
    if (quoted !== null) return quoted
    let end = from
    let code = first
    let whole = 0
    for (; code >= zero && code <= nine; code = text.charCodeAt(++end)) whole = whole * 10 + code - zero
    // A whole number needs no text of its own. An id such as 007 is none, and of too many digits some would be lost.
    const digits = end - from
    if (digits > 0 && digits <= exactDigits && (digits === 1 || first !== zero) && ends(code, separator)) {
      this.at = end
      return whole
    }
    while (code !== separator && code !== lineFeed && code !== carriageReturn && end < text.length)
      code = text.charCodeAt(++end)
    this.at = end
    return trimmed(text, from, end, above)
  }

  private quotedCell(from: number): string | null {
    const open = afterSpaces(this.text, from)
    if (this.text.charCodeAt(open) !== quote || this.vain < 0) return null
    const { at, seen } = closingQuote(this.text, open, this.separator)
    this.vain -= seen
    if (at < 0) return null
    this.at = afterSpaces(this.text, at + 1)
    return unquoted(this.text.slice(open + 1, at))
  }

  /** Steps over what ends the cell: true where its record goes on. */
  goesOn(): boolean {
    const code = this.text.charCodeAt(this.at++)
    if (code === carriageReturn && this.text.charCodeAt(this.at) === lineFeed) this.at++
    return code === this.separator
  }
}

/** What a text becomes in its column, unless it is a word: asked of every such cell as it is read. */
export type Notice = (text: string, column: number) => Cell

/** A word begins with a letter; every number, and what stands for one, begins with something else. */
function isWord(text: string): boolean {
  const code = text.charCodeAt(0)
  return code >= 65 && code <= 122
}

interface Wanted {
  most?: number
  notice?: Notice
}

/** Every cell as its text without the spaces around it, or as its whole number; the first `most` records. */
export function recordsOf(
  text: string,
  separator: string,
  { most = Infinity, notice }: Wanted = {}
): Records {
  const scanner = new CellScanner(text, separator.charCodeAt(0))
  const rows: Cell[][] = []
  let above: readonly Cell[] = []
  let cells = 0
  while (scanner.at < text.length && rows.length < most) {
    const row: Cell[] = []
    do {
      const column = row.length
      const cell = scanner.cell(above[column])
      if (typeof cell !== 'string' || isWord(cell)) row.push(cell)
      else row.push(notice === undefined ? cell : notice(cell, column))
      if (typeof cell === 'string' && cell.length > longestCellText)
        return { tooLarge: 'cell', row: rows.length, column }
      if (column >= sheetColumns) return { tooLarge: 'columns', row: rows.length, column }
    } while (scanner.goesOn())
    cells += row.length
    if (rows.length >= sheetRows) return { tooLarge: 'rows', row: rows.length, column: 0 }
    if (cells > mostCells) return { tooLarge: 'cells', row: rows.length, column: 0 }
    rows.push(row)
    above = row
  }
  return rows
}
