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
export const tallest = 130_000
export const thickest = 12_000

/** Serials of the days from 2000 to 2099: a length that large is a date that a spreadsheet made of "2-3". */
const firstDay = 36_526
const lastDay = 73_050

/** Reads the cells of a column of lengths: diameters in mm, heights in m. */
export interface LengthReader {
  /** Millimeters of 1 in the column. */
  readonly millimeters: number
  diameter(cell: Filled, row: number): Reading<number>
  /** Several stems in one cell count as one of √Σd², and the method is named. */
  stems(cell: Filled, row: number): Reading<number>
  /** Meters. */
  height(cell: Filled, row: number): Reading<number>
  positiveHeight(cell: Filled, row: number): Reading<number>
}

export function lengthReader(cells: ColumnCells): LengthReader {
  const { unit } = cells
  const { kind } = cells.column.reads
  const { girth } = cells.match
  const across = kind === 'diameter' || kind === 'stems' || kind === 'growth'
  const millimeters = millimetersPer[unit] * (girth ? diameterFromGirth(1) : 1)

  function diameter(cell: Filled, row: number): Reading<number> {
    const length = lengthOf(cell, row)
    const value = valueIn(length)
    if (value === null) return length
    if (!(value > 0)) return cells.problem('not-positive', row)
    return value > thickest ? tooLarge(cell, row, thickest) : length
  }

  function stems(cell: Filled, row: number): Reading<number> {
    if (typeof cell !== 'string') return diameter(cell, row)
    const found = stemsInCell(cell, styleFor(cell))
    if (found === null) return diameter(cell, row)
    if ('why' in found) return cells.fault(found, row)
    const combined = stemsCombined(found)
    const value = combined * millimeters
    if (!(value <= thickest)) return tooLarge(cell, row, thickest)
    const facts = { count: found.length, value: hundredth(combined) }
    return new Noted(value, cells.problem('stems-combined', row, facts))
  }

  function height(cell: Filled, row: number): Reading<number> {
    const length = lengthOf(cell, row)
    const value = valueIn(length)
    if (value === null) return length
    if (value < 0) return cells.problem('negative', row)
    if (value > tallest) return tooLarge(cell, row, tallest)
    return length instanceof Noted ? new Noted(value / 1000, length.note) : value / 1000
  }

  function positiveHeight(cell: Filled, row: number): Reading<number> {
    const found = height(cell, row)
    return valueIn(found) === 0 ? cells.problem('not-positive', row) : found
  }

  function styleFor(text: string): LengthStyle {
    return { style: cells.conventions.styleFor(text), unit, across }
  }

  /** Millimeters, any sign; not yet held to the limits of a tree. */
  function lengthOf(cell: Filled, row: number): number | Noted<number> | Problem {
    if (typeof cell === 'number') return cell * millimeters + 0
    if (typeof cell === 'boolean') return cells.problem('not-a-number', row)
    const typed = lengthInCell(cell, styleFor(cell))
    if (typed === null) return cells.fault({ why: looksLikeDate(cell) ? 'date' : 'no-number' }, row)
    if ('why' in typed)
      return typed.why === 'two-ways' ? cells.fault(typed, row) : cells.problem('fraction-or-two', row)
    return Number.isFinite(typed.value) ? told(typed, row) : cells.problem('not-a-number', row)
  }

  /** A length, with a remark on the way it was typed. A limb is judged by one diameter: neither a range nor a bound is taken. */
  function told(typed: LengthInCell, row: number): number | Noted<number> | Problem {
    const { manner, measure, converted } = typed
    if (manner !== null && manner !== 'two readings' && manner !== 'estimate' && kind === 'diameter')
      return cells.problem('inexact-diameter', row, { manner: mannerWords[manner] })
    const factor = girth && measure === 'diameter' ? Math.PI : !girth && measure === 'girth' ? 1 / Math.PI : 1
    const inUnit = typed.value * factor
    const value = inUnit * millimeters + 0
    const facts = { value: thousandth(inUnit) }
    if (manner === 'two readings') return new Noted(value, cells.problem('two-readings', row, facts))
    if (manner !== null) {
      const inexact = cells.problem('inexact-value', row, { ...facts, manner: mannerWords[manner] })
      return new Noted(value, inexact)
    }
    if (factor > 1) return new Noted(value, cells.problem('diameter-in-girths', row))
    if (factor < 1) return new Noted(value, cells.problem('girth-in-cell', row, facts))
    return converted ? new Noted(value, cells.problem('mixed-units', row, facts)) : value
  }

  function tooLarge(cell: Filled, row: number, limit: number): Problem {
    if (typeof cell === 'number' && Number.isInteger(cell) && cell >= firstDay && cell <= lastDay)
      return cells.problem('date-not-number', row)
    const most = Math.round(limit / millimeters)
    return cells.problem('too-large', row, { limit: `${most} ${unitNames[unit]}` })
  }

  return { millimeters, diameter, stems, height, positiveHeight }
}

/** The number of a reading, or null. */
function valueIn(reading: Reading<number>): number | null {
  if (typeof reading === 'number' || reading === null) return reading
  return isUnread(reading) ? null : reading.value
}
