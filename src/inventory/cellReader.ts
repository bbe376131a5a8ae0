import { isBlank, isErrorText, isPlainText, type CellBlock } from '../../shared/cells'
import { listChoices } from '../../shared/choices'
import type { Side } from '../../shared/columnKinds'
import type { Field } from '../../shared/columns'
import { compassDegrees, hasLetterO } from '../../shared/compass'
import { readDate, readYear } from '../../shared/dates'
import { numberIn } from '../../shared/numbers'
import type { Problem } from '../../shared/problems'
import type { ColumnMatch } from './inventory'
import { isUnread, Noted, type Reading } from './reading'
import { columnCells, type ColumnCells, type Filled } from './values/columnCells'
import { lengthReader } from './values/lengthReader'
import { couldBeCode, isNegativeCode, isNines, missingWords } from './values/missing'
import { plainNumbers, plainValue, type PlainNumbers } from './values/plainNumbers'
import { Tally } from './values/remarks'
import { ShareReader } from './values/shareReader'
import { wordReader, type WordReader } from './values/wordReader'

const everySide =
  /^(?:all|any|every|both|alle|beide|toutes?|tous|todos|todas)(?: sides?| seiten| côtés| lados)?(?: round)?$/i

/** A measured growth may say that it is one of a year. */
const perYear = /\s*(?:\/|per |a |pro |par |por )\s*(?:yr|year|a|y|jahr|an|año)\.?$/i

/**
 * Reads the cells of one column as its entry in the dictionary says, by what holds for the whole column. It keeps nothing and
 * reports nothing by itself, but counts what is reported once of the column (`remarks`).
 */
export interface CellReader extends ColumnCells {
  /** Whether the cell is blank, or says that nothing was measured. */
  isBlank(row: number): boolean
  /** What the cell gives, by the kind of its column. */
  read(row: number): Reading<unknown>
  /** What is reported once of the whole column, from the cells that were read. */
  remarks(): Problem[]
}

/** A reader with what it needs for cells that say plainly what they say, which are almost all. */
interface PlainReader {
  readonly rows: CellBlock['rows']
  readonly at: number
  readonly numbers: PlainNumbers
  /** The column holds texts, which are taken as they stand. */
  readonly isText: boolean
  readonly words: Pick<WordReader, 'known'>
  /** Reads any other cell. */
  readOther(cell: Filled, row: number): Reading<unknown>
  /** Whether any other cell is blank. */
  isOtherBlank(cell: Filled, row: number): boolean
}

/**
 * Reads a cell, at once where it says plainly what it says. It stands by itself, as the engine throws away what it compiled for
 * a function made with a reader whenever the memory is tidied up while there is no reader.
 */
function read(this: PlainReader, row: number): Reading<unknown> {
  const cell = this.rows[row]?.[this.at]
  if (cell === null || cell === undefined) return null
  if (typeof cell === 'number') {
    const value = plainValue(cell, this.numbers)
    if (!Number.isNaN(value)) return value
  } else if (typeof cell === 'string') {
    if (this.isText && isPlainText(cell)) return cell
    const known = this.words.known?.get(cell)
    if (known !== undefined) return known
  }
  return this.readOther(cell, row)
}

function isBlankAt(this: PlainReader, row: number): boolean {
  const cell = this.rows[row]?.[this.at]
  if (cell === null || cell === undefined) return true
  if (typeof cell === 'number' && !couldBeCode(cell)) return false
  return this.isText && typeof cell === 'string' ? isBlank(cell) : this.isOtherBlank(cell, row)
}

/** The reader of the column of the block that gives this field. */
export function cellReader(block: CellBlock, match: ColumnMatch, field: Field): CellReader {
  const cells = columnCells(block, match, field)
  const { column, unit, conventions, raw, address, problem, fault } = cells
  const { kind, limit = 360 } = column.reads
  const lengths = lengthReader(cells)
  const shares = new ShareReader(cells)
  const words = wordReader(cells, isMissing)
  const missing = missingWords(column)
  const codes = new Tally()

  function isOtherBlank(cell: Filled, row: number): boolean {
    return isBlank(cell) || isMissing(cell, row)
  }

  function readOther(cell: Filled, row: number): Reading<unknown> {
    if (typeof cell === 'number') return readNumber(cell, row)
    return typeof cell === 'string' ? readText(cell, row) : readFilled(cell, row)
  }

  function readNumber(cell: number, row: number): Reading<unknown> {
    if (!Number.isFinite(cell)) return problem('not-finite', row)
    return couldBeCode(cell) && isMissing(cell, row) ? null : readFilled(cell, row)
  }

  function readText(cell: string, row: number): Reading<unknown> {
    if (isBlank(cell)) return null
    if (isErrorText(cell)) return problem('error-cell', row)
    return !words.reads && isMissing(cell, row) ? null : readFilled(cell, row)
  }

  function remarks(): Problem[] {
    const found = words.remarks()
    const { first, named, counted } = codes
    if (first !== null) found.push(problem('missing-codes', first, { codes: named, count: counted }))
    const { signBySize } = conventions
    if (signBySize !== null) {
      const { row, sign, isOfThousands } = signBySize
      const how = isOfThousands ? 'to part thousands' : 'to stand before decimals'
      found.push(problem('signs-by-size', row, { sign, how }))
    }
    const { girth, header } = match
    if (girth) found.push(problem('girth-column', 0, { text: header }))
    return found
  }

  /** Whether a cell says that nothing was measured; it is counted. */
  function isMissing(cell: Filled, row: number): boolean {
    if (missing === null || typeof cell === 'boolean') return false
    const { says, byNines } = missing
    const isNines =
      byNines && (typeof cell === 'number' ? couldBeCode(cell) : /^\s*(?:-9|-?9{2,})\s*$/.test(cell))
    const found = isNines ? isCode(Number(cell)) : typeof cell === 'string' && says(cell)
    if (found) codes.add(row, String(cell).trim())
    return found
  }

  function isCode(value: number): boolean {
    return isNegativeCode(value) || (isNines(value) && conventions.codes.has(value))
  }

  function readFilled(cell: Filled, row: number): Reading<unknown> {
    switch (kind) {
      case 'text':
        return String(cell).trim()
      case 'diameter':
        return lengths.diameter(cell, row)
      case 'stems':
        return lengths.stems(cell, row)
      case 'height':
        return lengths.height(cell, row)
      case 'positive height':
        return lengths.positiveHeight(cell, row)
      case 'share':
        return shares.read(cell, row)
      case 'degrees':
        return degrees(cell, row, limit)
      case 'bearing':
        return point(cell) ?? degrees(cell, row, 360)
      case 'side':
        return side(cell, row)
      case 'year':
        return readYear(cell) ?? problem('not-a-date', row)
      case 'date':
        return (readYear(cell) === null ? null : readDate(cell)) ?? problem('not-a-date', row)
      case 'growth':
        return growth(cell, row)
      case 'choice':
        return words.choice(cell, row)
      case 'flag':
        return words.flag(cell, row)
      case 'dead':
        return words.dead(cell, row)
    }
  }

  function point(cell: Filled): number | null {
    if (typeof cell !== 'string') return null
    const own = compassDegrees(cell)
    if (own !== null || !hasLetterO(cell)) return own
    const { letterO } = conventions
    return letterO === null ? null : compassDegrees(cell.replace('O', letterO))
  }

  function degrees(cell: Filled, row: number, most: number): Reading<number> {
    const bare = typeof cell === 'string' ? cell.replace(/\s*(?:°|º|deg\.?|degrees?|grad)\s*$/i, '') : cell
    const value = numberIn(bare, typeof bare === 'string' ? conventions.styleFor(bare) : null)
    if (typeof value !== 'number') return fault(value, row)
    if (value < 0) return problem('negative', row, { unit: '°' })
    return value > most ? problem('too-large', row, { unit: '°', limit: `${most}°` }) : value
  }

  /** A side that cannot be read is kept as it was typed, and limbs on every side count as on it. */
  function side(cell: Filled, row: number): Reading<Side> {
    const text = String(cell).trim()
    if (everySide.test(text)) return { text, degrees: null }
    const from = point(text)
    if (from !== null) return { text, degrees: from }
    const found = degrees(cell, row, 360)
    if (typeof found === 'number') return { text, degrees: found }
    return new Noted({ text, degrees: null }, problem('side-unread', row))
  }

  function growth(cell: Filled, row: number): Reading<unknown> {
    const named = words.word(cell)
    if (named !== null) return named
    if (isMissing(cell, row)) return null
    const rate = lengths.diameter(typeof cell === 'string' ? cell.replace(perYear, '') : cell, row)
    if (!isUnread(rate) || rate.code !== 'not-a-number') return rate
    return problem('not-a-choice', row, { choices: `${listChoices('growth')}, nor a number` })
  }

  const reader: CellReader & PlainReader = {
    rows: block.rows,
    at: match.column,
    numbers: plainNumbers(column, lengths.millimeters),
    isText: kind === 'text' && missing === null,
    words,
    readOther,
    isOtherBlank,
    column,
    match,
    unit,
    conventions,
    raw,
    address,
    problem,
    fault,
    isBlank: isBlankAt,
    read,
    remarks
  }
  return reader
}
