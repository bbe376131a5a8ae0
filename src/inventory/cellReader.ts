import { addressIn, isBlank, isErrorText, quoted, type Cell, type CellBlock } from '../../shared/cells'
import { listChoices, readChoice, type Choice, type ChoiceName } from '../../shared/choices'
import { columnOf, type Field } from '../../shared/columns'
import { asDoubt, problem, type Facts, type Problem, type ProblemCode } from '../../shared/problems'
import { convertLength, millimetresPer, unitNames, type LengthUnit } from '../../shared/units'
import type { ColumnMatch } from './inventory'
import { stemsCombined } from '../formulas/diameters'
import { compassDegrees, typedLength, typedNumber, yearOf } from '../../shared/numbers'

/** Nothing a tree has is longer than this, in metres: 130 m for heights, 12 m for diameters (house limits). */
const tallest = 130
const thickest = 12

/**
 * Reads one field's cells. A blank gives null; a cell that cannot be used gives NaN (or null for words) and leaves a
 * problem with the cell's address.
 */
export class CellReader {
  readonly name: string
  private readonly unit: LengthUnit
  private readonly millimetres: number

  constructor(
    private readonly block: CellBlock,
    readonly match: ColumnMatch,
    field: Field,
    private readonly problems: Problem[]
  ) {
    this.name = columnOf(field).name
    this.unit = match.unit ?? 'mm'
    this.millimetres = millimetresPer[this.unit]
  }

  /** The cell as it stands. */
  raw(row: number): Cell | undefined {
    return this.block.rows[row]?.[this.match.column]
  }

  address(row: number): string {
    return addressIn(this.block, row, this.match.column)
  }

  /** Leaves a problem about this cell. */
  report(code: ProblemCode, row: number, facts: Facts = {}): number {
    const all = { column: this.name, text: quoted(this.raw(row)), unit: unitNames[this.unit], ...facts }
    this.problems.push(problem(code, this.address(row), all))
    return NaN
  }

  text(row: number): string {
    const cell = this.raw(row)
    if (typeof cell === 'string') return cell.trim()
    return cell === null || cell === undefined ? '' : String(cell)
  }

  /** Millimetres, more than 0. */
  diameter(row: number): number | null {
    const value = this.length(row)
    if (value === null || Number.isNaN(value)) return value
    if (!(value > 0)) return this.report('not-positive', row)
    return value > thickest * 1000 ? this.tooLarge(row, thickest * 1000) : value
  }

  /** Millimetres; several stems written "5 + 6 + 8" count as one of √Σd², and the method is named. */
  trunk(row: number): number | null {
    const cell = this.raw(row)
    if (typeof cell !== 'string' || !cell.includes('+')) return this.diameter(row)
    const stems = cell.split('+').map((stem) => typedLength(stem))
    const known = stems.flatMap((stem) => (stem !== null && stem.value > 0 ? [stem] : []))
    if (known.length < stems.length) return this.report('not-a-number', row)
    const combined = stemsCombined(
      known.map(({ value, unit }) => convertLength(value, unit ?? this.unit, this.unit))
    )
    this.report('stems-combined', row, { count: known.length, value: Number(combined.toFixed(2)) })
    return combined * this.millimetres
  }

  /** Metres, 0 or more. */
  height(row: number): number | null {
    const value = this.length(row)
    if (value === null || Number.isNaN(value)) return value
    if (value < 0) return this.report('negative', row)
    return value > tallest * 1000 ? this.tooLarge(row, tallest * 1000) : value / 1000
  }

  /** Metres, more than 0. */
  positiveHeight(row: number): number | null {
    const value = this.height(row)
    return value === 0 ? this.report('not-positive', row) : value
  }

  private tooLarge(row: number, limit: number): number {
    return this.report('too-large', row, {
      limit: `${Math.round(limit / this.millimetres)} ${unitNames[this.unit]}`
    })
  }

  /** Millimetres, any sign. */
  private length(row: number): number | null {
    const cell = this.raw(row)
    if (typeof cell === 'number') return cell * this.millimetres
    if (isBlank(cell)) return null
    if (typeof cell !== 'string') return this.report('not-a-number', row)
    if (isErrorText(cell)) return this.report('error-cell', row)
    const typed = typedLength(cell)
    if (typed === null) return this.report('not-a-number', row)
    if (typed.unit === null || typed.unit === this.unit) return typed.value * this.millimetres
    const value = Number(convertLength(typed.value, typed.unit, this.unit).toFixed(3))
    this.report('mixed-units', row, { value })
    return typed.value * millimetresPer[typed.unit]
  }

  /** 0 to 1, from a share or a percentage. */
  share(row: number): number | null {
    const cell = this.raw(row)
    if (isBlank(cell)) return null
    if (isErrorText(cell)) return this.report('error-cell', row)
    const percent = typeof cell === 'string' && cell.trim().endsWith('%')
    const value = typeof cell === 'number' ? cell : typedNumber(String(cell).replace('%', ''))
    if (Number.isNaN(value)) return this.report('not-a-number', row)
    if (value < 0 || value > 100) return this.report('not-a-share', row)
    if (percent || (value > 1 && this.match.percent)) return value / 100
    if (value > 1) this.report('whole-percent', row)
    return value > 1 ? value / 100 : value
  }

  degrees(row: number, limit: number): number | null {
    const cell = this.raw(row)
    if (isBlank(cell)) return null
    if (isErrorText(cell)) return this.report('error-cell', row)
    let value = typeof cell === 'number' ? cell : typedNumber(String(cell).replace('°', ''))
    if (Number.isNaN(value) && limit === 360) value = compassDegrees(String(cell))
    if (Number.isNaN(value)) return this.report('not-a-number', row)
    if (value < 0) return this.report('negative', row)
    return value > limit ? this.report('too-large', row, { unit: '°', limit: `${limit}°` }) : value
  }

  choice<N extends ChoiceName>(row: number, name: N): Choice<N> | null {
    const cell = this.raw(row)
    if (cell === null || cell === undefined) return null
    const text = typeof cell === 'string' ? cell : String(cell)
    const found = readChoice(name, text)
    if (found !== null || text.trim() === '') return found
    this.report(isErrorText(cell) ? 'error-cell' : 'not-a-choice', row, { choices: listChoices(name) })
    return null
  }

  year(row: number): number | null {
    const cell = this.raw(row)
    if (isBlank(cell)) return null
    const year = typeof cell === 'number' || typeof cell === 'string' ? yearOf(cell) : NaN
    return Number.isNaN(year) ? this.report('not-a-date', row) : year
  }

  /** A growth class, or a measured rate in mm a year. */
  growth(row: number): { choice: Choice<'growth'> | null; rate: number | null } {
    const cell = this.raw(row)
    const typed = typeof cell === 'string' ? readChoice('growth', cell) : null
    if (typed !== null) return { choice: typed, rate: null }
    const rate = this.diameter(row)
    return { choice: null, rate: rate === null || Number.isNaN(rate) ? null : rate }
  }
}

/** Reads an optional value: one that cannot be used is a doubt, and the row goes on without it. */
export function optional(problems: Problem[], read: () => number | null): number | null {
  const before = problems.length
  const value = read()
  if (value === null || !Number.isNaN(value)) return value
  for (let at = before; at < problems.length; at++) {
    const found = problems[at]
    if (found !== undefined) problems[at] = asDoubt(found)
  }
  return null
}
