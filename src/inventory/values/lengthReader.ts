import { mannerWords } from '../../../shared/approximate'
import { looksLikeDate } from '../../../shared/dates'
import type { Problem } from '../../../shared/problems'
import { millimetersPer, unitNames } from '../../../shared/units'
import { hundredth, thousandth } from '../../../shared/words/figures'
import { diameterFromGirth, stemsCombined } from '../../formulas/diameters'
import { isUnread, Noted, type Reading } from '../reading'
import type { ColumnCells, Filled } from './columnCells'
import { lengthInCell, stemsInCell, type LengthInCell, type LengthStyle } from './typedLength'

/** Nothing a tree has is longer than this, in millimeters: 130 m for heights, 12 m for diameters (house limits). */
const tallest = 130_000
const thickest = 12_000

/** Serials of the days from 2000 to 2099: a length that large is a date that a spreadsheet made of "2-3". */
const firstDay = 36_526
const lastDay = 73_050

/** Reads the cells of a column of lengths: diameters in mm, heights in m. */
export class LengthReader {
  private readonly millimeters: number
  private readonly diameters: boolean

  constructor(private readonly cells: ColumnCells) {
    const { kind } = cells.column.reads
    this.diameters = kind === 'diameter' || kind === 'stems' || kind === 'growth'
    this.millimeters = millimetersPer[cells.unit] * (cells.match.girth ? diameterFromGirth(1) : 1)
  }

  diameter(cell: Filled, row: number): Reading<number> {
    const length = this.length(cell, row)
    const value = valueIn(length)
    if (value === null) return length
    if (!(value > 0)) return this.cells.problem('not-positive', row)
    return value > thickest ? this.tooLarge(cell, row, thickest) : length
  }

  /** Several stems in one cell count as one of √Σd², and the method is named. */
  stems(cell: Filled, row: number): Reading<number> {
    if (typeof cell !== 'string') return this.diameter(cell, row)
    const stems = stemsInCell(cell, this.styleFor(cell))
    if (stems === null) return this.diameter(cell, row)
    if ('why' in stems) return this.cells.fault(stems, row)
    const combined = stemsCombined(stems)
    const value = combined * this.millimeters
    if (!(value <= thickest)) return this.tooLarge(cell, row, thickest)
    const facts = { count: stems.length, value: hundredth(combined) }
    return new Noted(value, this.cells.problem('stems-combined', row, facts))
  }

  /** Meters. */
  height(cell: Filled, row: number): Reading<number> {
    const length = this.length(cell, row)
    const value = valueIn(length)
    if (value === null) return length
    if (value < 0) return this.cells.problem('negative', row)
    if (value > tallest) return this.tooLarge(cell, row, tallest)
    return length instanceof Noted ? new Noted(value / 1000, length.note) : value / 1000
  }

  positiveHeight(cell: Filled, row: number): Reading<number> {
    const height = this.height(cell, row)
    return valueIn(height) === 0 ? this.cells.problem('not-positive', row) : height
  }

  private styleFor(text: string): LengthStyle {
    return { style: this.cells.conventions.styleFor(text), unit: this.cells.unit, across: this.diameters }
  }

  /** Millimeters, any sign; not yet held to the limits of a tree. */
  private length(cell: Filled, row: number): number | Noted<number> | Problem {
    if (typeof cell === 'number') return cell * this.millimeters + 0
    if (typeof cell === 'boolean') return this.cells.problem('not-a-number', row)
    const typed = lengthInCell(cell, this.styleFor(cell))
    if (typed === null) return this.cells.fault({ why: looksLikeDate(cell) ? 'date' : 'no-number' }, row)
    if ('why' in typed)
      return typed.why === 'two-ways'
        ? this.cells.fault(typed, row)
        : this.cells.problem('fraction-or-two', row)
    return Number.isFinite(typed.value) ? this.told(typed, row) : this.cells.problem('not-a-number', row)
  }

  /** A length, with a remark on the way it was typed. A limb is judged by diameters that were measured. */
  private told(typed: LengthInCell, row: number): number | Noted<number> | Problem {
    const { manner, measure, converted } = typed
    const { kind } = this.cells.column.reads
    if (manner !== null && manner !== 'two readings' && kind === 'diameter')
      return this.cells.problem('not-a-number', row)
    const { girth } = this.cells.match
    const factor = girth && measure === 'diameter' ? Math.PI : !girth && measure === 'girth' ? 1 / Math.PI : 1
    const inUnit = typed.value * factor
    const value = inUnit * this.millimeters + 0
    const facts = { value: thousandth(inUnit) }
    if (manner === 'two readings') return new Noted(value, this.cells.problem('two-readings', row, facts))
    if (manner !== null)
      return new Noted(
        value,
        this.cells.problem('inexact-value', row, { ...facts, manner: mannerWords[manner] })
      )
    if (factor > 1) return new Noted(value, this.cells.problem('diameter-in-girths', row))
    if (factor < 1) return new Noted(value, this.cells.problem('girth-in-cell', row, facts))
    return converted ? new Noted(value, this.cells.problem('mixed-units', row, facts)) : value
  }

  private tooLarge(cell: Filled, row: number, limit: number): Problem {
    if (typeof cell === 'number' && Number.isInteger(cell) && cell >= firstDay && cell <= lastDay)
      return this.cells.problem('date-not-number', row)
    const most = Math.round(limit / this.millimeters)
    return this.cells.problem('too-large', row, { limit: `${most} ${unitNames[this.cells.unit]}` })
  }
}

/** The number of a reading, or null. */
function valueIn(reading: Reading<number>): number | null {
  if (typeof reading === 'number' || reading === null) return reading
  return isUnread(reading) ? null : reading.value
}
