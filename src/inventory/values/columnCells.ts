import { addressIn, quoted, type Cell, type CellBlock } from '../../../shared/cells'
import { columnOf, type Column, type Field } from '../../../shared/columns'
import type { NumberFault } from '../../../shared/numbers'
import { problem, type FactsGiven, type Problem, type ProblemCode } from '../../../shared/problems'
import { unitNames, type LengthUnit } from '../../../shared/units'
import type { ColumnMatch } from '../inventory'
import { Conventions } from './conventions'

/** What a cell holds that is neither blank nor an error. */
export type Filled = string | number | boolean

/** The cells of one column, what holds for all of them, and the problems about them. */
export class ColumnCells {
  readonly column: Column
  readonly unit: LengthUnit
  readonly conventions = new Conventions(() => this.below())

  constructor(
    private readonly block: CellBlock,
    readonly match: ColumnMatch,
    field: Field
  ) {
    this.column = columnOf(field)
    this.unit = match.unit ?? 'mm'
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

  /** Why a cell gives no number. */
  fault(fault: NumberFault, row: number): Problem {
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

  private *below(): Generator<Cell | undefined, void> {
    for (let row = 1; row < this.block.rows.length; row++) yield this.raw(row)
  }
}
