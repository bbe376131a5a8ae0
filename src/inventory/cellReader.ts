import { addressIn, isErrorText, quoted, type Cell, type CellBlock } from '../../shared/cells'
import { listChoices, readChoice, type ChoiceName } from '../../shared/choices'
import type { Side } from '../../shared/columnKinds'
import { columnOf, type Column, type Field } from '../../shared/columns'
import { compassDegrees } from '../../shared/compass'
import { looksLikeDate, readYear } from '../../shared/dates'
import { readLength } from '../../shared/lengths'
import { numberIn, styleOf, type NumberFault, type NumberStyle } from '../../shared/numbers'
import { problem, type FactsGiven, type Problem, type ProblemCode } from '../../shared/problems'
import { convertLength, millimetersPer, unitNames, type LengthUnit } from '../../shared/units'
import { diameterFromGirth, stemsCombined } from '../formulas/diameters'
import type { ColumnMatch } from './inventory'
import { isUnread, Noted, type Reading } from './reading'

/** Nothing a tree has is longer than this, in millimeters: 130 m for heights, 12 m for diameters (house limits). */
const tallest = 130_000
const thickest = 12_000

const everySide = /^(all|any|every|both)( sides?)?( round)?$/i

/** Reads the cells of one column as its entry in the dictionary says; keeps nothing and reports nothing by itself. */
export class CellReader {
  readonly column: Column
  private readonly unit: LengthUnit
  private readonly millimeters: number
  /** What a length of this column is multiplied by: 1, or 1/π where it is a girth. */
  private readonly perUnit: number

  constructor(
    private readonly block: CellBlock,
    private readonly match: ColumnMatch,
    field: Field
  ) {
    this.column = columnOf(field)
    this.unit = match.unit ?? 'mm'
    this.perUnit = match.girth ? diameterFromGirth(1) : 1
    this.millimeters = millimetersPer[this.unit] * this.perUnit
  }

  /** The cell as it stands. */
  raw(row: number): Cell | undefined {
    return this.block.rows[row]?.[this.match.column]
  }

  address(row: number): string {
    return addressIn(this.block, row, this.match.column)
  }

  /** A problem about this cell. */
  problem<Code extends ProblemCode>(
    code: Code,
    row: number,
    ...[facts]: FactsGiven<Code, 'column' | 'text' | 'unit'>
  ): Problem {
    const known = { column: this.column.name, text: quoted(this.raw(row)), unit: unitNames[this.unit] }
    const all = [{ ...known, ...facts }] as unknown as FactsGiven<Code>
    return problem(code, this.address(row), ...all)
  }

  /** What the cell gives, by the kind of its column. */
  read(row: number): Reading<unknown> {
    const cell = this.raw(row)
    if (cell === null || cell === undefined) return null
    if (typeof cell === 'string') {
      if (cell.trim() === '') return null
      if (isErrorText(cell)) return this.problem('error-cell', row)
    } else if (typeof cell === 'number' && !Number.isFinite(cell)) return this.problem('not-finite', row)
    return this.readFilled(cell, row)
  }

  private readFilled(cell: string | number | boolean, row: number): Reading<unknown> {
    const { kind } = this.column.reads
    switch (kind) {
      case 'text':
        return String(cell).trim()
      case 'diameter':
        return this.diameter(cell, row)
      case 'stems':
        return this.stems(cell, row)
      case 'height':
        return this.height(cell, row)
      case 'positive height':
        return this.positiveHeight(cell, row)
      case 'share':
        return this.share(cell, row)
      case 'degrees':
        return this.degrees(cell, row, this.column.reads.limit ?? 360)
      case 'bearing':
        return (typeof cell === 'string' ? compassDegrees(cell) : null) ?? this.degrees(cell, row, 360)
      case 'side':
        return this.side(cell, row)
      case 'year':
        return readYear(cell) ?? this.problem('not-a-date', row)
      case 'growth':
        return this.growth(cell, row)
      case 'choice':
        return this.choice(cell, row)
      case 'flag':
        return this.flag(cell, row)
      case 'dead':
        return this.dead(cell, row)
    }
  }

  /** Which sign stands before the decimals, told from the whole column when a cell first asks. */
  private get style(): NumberStyle {
    return (this.known ??= { style: styleOf(this.cellsBelow()) }).style
  }

  private known: { readonly style: NumberStyle } | null = null

  private *cellsBelow(): Generator<Cell | undefined, void> {
    for (let row = 1; row < this.block.rows.length; row++) yield this.raw(row)
  }

  private fault(fault: NumberFault, row: number): Problem {
    switch (fault.why) {
      case 'two-ways': {
        const { low, high, clear, sign } = fault
        return this.problem('number-two-ways', row, { low, high, clear, sign })
      }
      case 'not-finite':
        return this.problem('not-finite', row)
      case 'date':
        return this.problem('date-not-number', row)
      case 'no-number':
        return this.problem('not-a-number', row)
    }
  }

  /** Millimeters, any sign; not yet held to the limits of a tree. */
  private length(cell: string | number | boolean, row: number): number | Noted<number> | Problem {
    if (typeof cell === 'number') return cell * this.millimeters + 0
    if (typeof cell === 'boolean') return this.problem('not-a-number', row)
    const typed = readLength(cell, this.style)
    if (typed === null) return this.fault({ why: looksLikeDate(cell) ? 'date' : 'no-number' }, row)
    if ('why' in typed) return this.fault(typed, row)
    if (!Number.isFinite(typed.value)) return this.problem('not-a-number', row)
    if (typed.unit === null || typed.unit === this.unit) return typed.value * this.millimeters + 0
    const value = Number(convertLength(typed.value, typed.unit, this.unit).toFixed(3))
    return new Noted(
      typed.value * millimetersPer[typed.unit] * this.perUnit,
      this.problem('mixed-units', row, { value })
    )
  }

  private diameter(cell: string | number | boolean, row: number): Reading<number> {
    const length = this.length(cell, row)
    const value = typeof length === 'number' ? length : isUnread(length) ? null : length.value
    if (value === null) return length
    if (!(value > 0)) return this.problem('not-positive', row)
    return value > thickest ? this.tooLarge(row, thickest) : length
  }

  /** Several stems written "5 + 6 + 8" count as one of √Σd², and the method is named. */
  private stems(cell: string | number | boolean, row: number): Reading<number> {
    if (typeof cell !== 'string' || !cell.includes('+')) return this.diameter(cell, row)
    const inUnit: number[] = []
    for (const stem of cell.split('+')) {
      const typed = readLength(stem, this.style)
      if (typed !== null && 'why' in typed) return this.fault(typed, row)
      if (typed === null || !(typed.value > 0)) return this.problem('not-a-number', row)
      inUnit.push(convertLength(typed.value, typed.unit ?? this.unit, this.unit))
    }
    const combined = stemsCombined(inUnit)
    const value = combined * this.millimeters
    if (!(value <= thickest)) return this.tooLarge(row, thickest)
    const facts = { count: inUnit.length, value: Number(combined.toFixed(2)) }
    return new Noted(value, this.problem('stems-combined', row, facts))
  }

  /** Meters. */
  private height(cell: string | number | boolean, row: number): Reading<number> {
    const length = this.length(cell, row)
    const value = typeof length === 'number' ? length : isUnread(length) ? null : length.value
    if (value === null) return length
    if (value < 0) return this.problem('negative', row)
    if (value > tallest) return this.tooLarge(row, tallest)
    return typeof length === 'number' || isUnread(length)
      ? value / 1000
      : new Noted(value / 1000, length.note)
  }

  private positiveHeight(cell: string | number | boolean, row: number): Reading<number> {
    const height = this.height(cell, row)
    const value = typeof height === 'number' ? height : height instanceof Noted ? height.value : null
    return value === 0 ? this.problem('not-positive', row) : height
  }

  private tooLarge(row: number, limit: number): Problem {
    return this.problem('too-large', row, {
      limit: `${Math.round(limit / this.millimeters)} ${unitNames[this.unit]}`
    })
  }

  /** 0 to 1, from a share or a percentage. */
  private share(cell: string | number | boolean, row: number): Reading<number> {
    const percent = typeof cell === 'string' && cell.trim().endsWith('%')
    const value = numberIn(cell, this.style, { percent: true })
    if (typeof value !== 'number') return this.fault(value, row)
    if (percent) return value < 0 || value > 1 ? this.problem('not-a-share', row) : value
    if (value < 0 || value > 100) return this.problem('not-a-share', row)
    if (value <= 1) return value
    return this.match.percent ? value / 100 : new Noted(value / 100, this.problem('whole-percent', row))
  }

  private degrees(cell: string | number | boolean, row: number, limit: number): Reading<number> {
    const value = numberIn(typeof cell === 'string' ? cell.replace('°', '') : cell, this.style)
    if (typeof value !== 'number') return this.fault(value, row)
    if (value < 0) return this.problem('negative', row, { unit: '°' })
    return value > limit ? this.problem('too-large', row, { unit: '°', limit: `${limit}°` }) : value
  }

  /** A side that cannot be read is kept as it was typed, and limbs on every side count as on it. */
  private side(cell: string | number | boolean, row: number): Reading<Side> {
    const text = String(cell).trim()
    if (everySide.test(text)) return { text, degrees: null }
    const point = compassDegrees(text)
    if (point !== null) return { text, degrees: point }
    const degrees = this.degrees(cell, row, 360)
    if (typeof degrees === 'number') return { text, degrees }
    return new Noted({ text, degrees: null }, this.problem('side-unread', row))
  }

  private growth(cell: string | number | boolean, row: number): Reading<unknown> {
    const named = readChoice('growth', String(cell))
    if (named !== null) return named
    const rate = this.diameter(cell, row)
    if (!isUnread(rate) || rate.code !== 'not-a-number') return rate
    return this.problem('not-a-choice', row, { choices: `${listChoices('growth')}, nor a number` })
  }

  private choice(cell: string | number | boolean, row: number, name = this.choiceName): string | Problem {
    const found = readChoice(name, String(cell))
    return found ?? this.problem('not-a-choice', row, { choices: listChoices(name) })
  }

  private get choiceName(): ChoiceName {
    const { choice } = this.column.reads
    if (choice === undefined) throw new Error(`The column ${this.column.field} names no choice`)
    return choice
  }

  private flag(cell: string | number | boolean, row: number): Reading<boolean> {
    const found = this.choice(cell, row, 'flag')
    return typeof found === 'string' ? found === 'yes' : found
  }

  private dead(cell: string | number | boolean, row: number): Reading<boolean> {
    const { header } = this.match
    const asks = /^dead\b/i.test(header) && !/live|alive/i.test(header)
    if (asks && !/^\s*(live|dead|alive)/i.test(String(cell))) return this.flag(cell, row)
    const found = this.choice(cell, row)
    return typeof found === 'string' ? found === 'dead' : found
  }
}
