import { addressIn, quoted, type Cell, type CellBlock } from '../../../shared/cells'
import { columnOf, type Column, type Field } from '../../../shared/columns'
import type { NumberFault } from '../../../shared/numbers'
import { problem, type FactsGiven, type Problem, type ProblemCode } from '../../../shared/problems'
import { millimetersPer, unitNames, type LengthUnit } from '../../../shared/units'
import { isOrdinary } from '../headers/fit'
import type { ColumnMatch } from '../inventory'
import { Conventions } from './conventions'

/** What a cell holds that is neither blank nor an error. */
export type Filled = string | number | boolean

/** The cells of one column, what holds for all of them, and the problems about them. */
export interface ColumnCells {
  readonly column: Column
  readonly match: ColumnMatch
  readonly unit: LengthUnit
  readonly conventions: Conventions
  /** The cell as it stands. */
  raw(row: number): Cell | undefined
  address(row: number): string
  /** A problem about this cell. */
  problem<Code extends ProblemCode>(
    code: Code,
    row: number,
    ...facts: FactsGiven<Code, 'column' | 'text' | 'unit'>
  ): Problem
  /** Why a cell gives no number. */
  fault(fault: NumberFault, row: number): Problem
}

/** The cells of the column of the block that gives this field. */
export function columnCells(block: CellBlock, match: ColumnMatch, field: Field): ColumnCells {
  const { rows } = block
  const column = columnOf(field)
  const unit = match.unit ?? 'mm'
  const raw = (row: number): Cell | undefined => rows[row]?.[match.column]
  const address = (row: number): string => addressIn(block, row, match.column)

  function problemAt<Code extends ProblemCode>(
    code: Code,
    row: number,
    ...[facts]: FactsGiven<Code, 'column' | 'text' | 'unit'>
  ): Problem {
    const known = { column: column.name, text: quoted(raw(row)), unit: unitNames[unit] }
    const all = [{ ...known, ...facts }] as unknown as FactsGiven<Code>
    return problem(code, address(row), ...all)
  }

  function fault(fault: NumberFault, row: number): Problem {
    switch (fault.why) {
      case 'two-ways': {
        const { low, high, clear, sign } = fault
        return problemAt('number-two-ways', row, { low, high, clear, sign })
      }
      case 'not-finite':
        return problemAt('not-finite', row)
      case 'date':
        return problemAt('date-not-number', row)
      case 'no-number':
        return problemAt('not-a-number', row)
    }
  }

  function* below(): Generator<Cell | undefined, void> {
    for (let row = 1; row < rows.length; row++) yield raw(row)
  }

  const millimeters = millimetersPer[unit] * (match.girth ? 1 / Math.PI : 1)
  const sizes = (value: number): boolean | null => isOrdinary(field, value * millimeters)
  return {
    column,
    match,
    unit,
    conventions: new Conventions(below, sizes),
    raw,
    address,
    problem: problemAt,
    fault
  }
}
