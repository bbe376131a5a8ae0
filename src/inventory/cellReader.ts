import { isErrorText, type CellBlock } from '../../shared/cells'
import { listChoices, readChoice } from '../../shared/choices'
import type { Side } from '../../shared/columnKinds'
import type { Field } from '../../shared/columns'
import { compassDegrees, hasLetterO } from '../../shared/compass'
import { readDate, readYear } from '../../shared/dates'
import { numberIn } from '../../shared/numbers'
import type { Problem } from '../../shared/problems'
import type { ColumnMatch } from './inventory'
import { isUnread, Noted, type Reading } from './reading'
import { ColumnCells, type Filled } from './values/columnCells'
import { LengthReader } from './values/lengthReader'
import { couldBeCode, isNegativeCode, isNines, missingWords, type MissingWords } from './values/missing'
import { Tally } from './values/remarks'
import { ShareReader } from './values/shareReader'
import { WordReader } from './values/wordReader'

const everySide =
  /^(?:all|any|every|both|alle|beide|toutes?|tous|todos|todas)(?: sides?| seiten| côtés| lados)?(?: round)?$/i

/** A measured growth may say that it is one of a year. */
const perYear = /\s*(?:\/|per |a |pro |par |por )\s*(?:yr|year|a|y|jahr|an|año)\.?$/i

/**
 * Reads the cells of one column as its entry in the dictionary says, by what holds for the whole column. It keeps nothing and
 * reports nothing by itself, but counts what is reported once of the column (`remarks`).
 */
export class CellReader extends ColumnCells {
  private readonly lengths: LengthReader
  private readonly shares: ShareReader
  private readonly words: WordReader
  private readonly missing: MissingWords | null
  private readonly codes = new Tally()

  constructor(block: CellBlock, match: ColumnMatch, field: Field) {
    super(block, match, field)
    this.missing = missingWords(this.column)
    this.lengths = new LengthReader(this)
    this.shares = new ShareReader(this)
    this.words = new WordReader(this, (text, row) => this.isMissing(text, row))
  }

  /** Whether the cell is blank, or says that nothing was measured. */
  isBlank(row: number): boolean {
    const cell = this.raw(row)
    if (cell === null || cell === undefined) return true
    return (typeof cell === 'string' && cell.trim() === '') || this.isMissing(cell, row)
  }

  /** What the cell gives, by the kind of its column. */
  read(row: number): Reading<unknown> {
    const cell = this.raw(row)
    if (cell === null || cell === undefined) return null
    if (typeof cell === 'string') {
      if (cell.trim() === '') return null
      if (isErrorText(cell)) return this.problem('error-cell', row)
      if (!this.words.reads && this.isMissing(cell, row)) return null
    } else if (typeof cell === 'number') {
      if (!Number.isFinite(cell)) return this.problem('not-finite', row)
      if (couldBeCode(cell) && this.isMissing(cell, row)) return null
    }
    return this.readFilled(cell, row)
  }

  /** What is reported once of the whole column, from the cells that were read. */
  remarks(): Problem[] {
    const found = this.words.remarks()
    const { first, named, counted } = this.codes
    if (first !== null) found.push(this.problem('missing-codes', first, { codes: named, count: counted }))
    const { girth, header } = this.match
    if (girth) found.push(this.problem('girth-column', 0, { text: header }))
    return found
  }

  /** Whether a cell says that nothing was measured; it is counted. */
  private isMissing(cell: Filled, row: number): boolean {
    if (this.missing === null || typeof cell === 'boolean') return false
    const { says, byNines } = this.missing
    const isNines = byNines && (typeof cell === 'number' || /^\s*-?9{2,}\s*$/.test(cell))
    const found = isNines ? this.isCode(Number(cell)) : typeof cell === 'string' && says(cell)
    if (found) this.codes.add(row, String(cell).trim())
    return found
  }

  private isCode(value: number): boolean {
    return isNegativeCode(value) || (isNines(value) && this.conventions.codes.has(value))
  }

  private readFilled(cell: Filled, row: number): Reading<unknown> {
    const { kind } = this.column.reads
    switch (kind) {
      case 'text':
        return String(cell).trim()
      case 'diameter':
        return this.lengths.diameter(cell, row)
      case 'stems':
        return this.lengths.stems(cell, row)
      case 'height':
        return this.lengths.height(cell, row)
      case 'positive height':
        return this.lengths.positiveHeight(cell, row)
      case 'share':
        return this.shares.read(cell, row)
      case 'degrees':
        return this.degrees(cell, row, this.column.reads.limit ?? 360)
      case 'bearing':
        return this.point(cell) ?? this.degrees(cell, row, 360)
      case 'side':
        return this.side(cell, row)
      case 'year':
        return readYear(cell) ?? this.problem('not-a-date', row)
      case 'date':
        return (readYear(cell) === null ? null : readDate(cell)) ?? this.problem('not-a-date', row)
      case 'growth':
        return this.growth(cell, row)
      case 'choice':
        return this.words.choice(cell, row)
      case 'flag':
        return this.words.flag(cell, row)
      case 'dead':
        return this.words.dead(cell, row)
    }
  }

  private point(cell: Filled): number | null {
    if (typeof cell !== 'string') return null
    const own = compassDegrees(cell)
    if (own !== null || !hasLetterO(cell)) return own
    const { letterO } = this.conventions
    return letterO === null ? null : compassDegrees(cell.replace('O', letterO))
  }

  private degrees(cell: Filled, row: number, limit: number): Reading<number> {
    const bare = typeof cell === 'string' ? cell.replace(/\s*(?:°|º|deg\.?|degrees?|grad)\s*$/i, '') : cell
    const value = numberIn(bare, typeof bare === 'string' ? this.conventions.styleFor(bare) : null)
    if (typeof value !== 'number') return this.fault(value, row)
    if (value < 0) return this.problem('negative', row, { unit: '°' })
    return value > limit ? this.problem('too-large', row, { unit: '°', limit: `${limit}°` }) : value
  }

  /** A side that cannot be read is kept as it was typed, and limbs on every side count as on it. */
  private side(cell: Filled, row: number): Reading<Side> {
    const text = String(cell).trim()
    if (everySide.test(text)) return { text, degrees: null }
    const point = this.point(text)
    if (point !== null) return { text, degrees: point }
    const degrees = this.degrees(cell, row, 360)
    if (typeof degrees === 'number') return { text, degrees }
    return new Noted({ text, degrees: null }, this.problem('side-unread', row))
  }

  private growth(cell: Filled, row: number): Reading<unknown> {
    const named = readChoice('growth', String(cell))
    if (named !== null) return named
    if (this.isMissing(cell, row)) return null
    const rate = this.lengths.diameter(typeof cell === 'string' ? cell.replace(perYear, '') : cell, row)
    if (!isUnread(rate) || rate.code !== 'not-a-number') return rate
    return this.problem('not-a-choice', row, { choices: `${listChoices('growth')}, nor a number` })
  }
}
