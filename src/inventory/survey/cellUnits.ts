import type { Cell } from '../../../shared/cells'
import type { LengthUnit } from '../../../shared/units'
import { columnValues, unitNamedIn } from '../headers/columnValues'
import type { ColumnMatch } from '../inventory'
import type { SheetTable } from './sheetTables'

/** Columns with what stands in them. */
export interface UnitsOf {
  readonly table: Pick<SheetTable, 'sheet' | 'rows'>
  readonly matches: readonly ColumnMatch[]
  readonly labeled: readonly ColumnMatch[]
}

/** Rows that are looked at for a unit. */
const looked = 200

/** A unit that so many of the numbers of a column name is that of the others too. House judgment. */
const enoughNamed = 0.5

function cellsOf({ table }: UnitsOf, column: number): (Cell | undefined)[] {
  return table.rows.slice(0, looked).map((row) => table.sheet.rows[row]?.[column])
}

/** The median of the numbers of a column, or null. */
export function medianOf(table: UnitsOf, column: number): number | null {
  return columnValues(cellsOf(table, column)).median
}

/** The one unit that the cells of a column name, if enough of its numbers do. */
export function unitOfCells(table: UnitsOf, column: number): LengthUnit | null {
  let numbers = 0
  let named = 0
  let unit: LengthUnit | null = null
  for (const cell of cellsOf(table, column)) {
    if (typeof cell === 'number') numbers++
    if (typeof cell !== 'string' || !/\d/.test(cell)) continue
    numbers++
    const own = unitNamedIn(cell)
    if (own === null) continue
    if (unit !== null && own !== unit) return null
    unit = own
    named++
  }
  return named > 0 && named >= numbers * enoughNamed ? unit : null
}

/** Whether a column holds numbers whose cells do not name their unit themselves; a column without numbers counts as one. */
export function hasBareNumbers({ table: { sheet, rows } }: UnitsOf, column: number): boolean {
  let named = 0
  for (const row of rows) {
    const cell = sheet.rows[row]?.[column]
    if (typeof cell === 'number') return true
    if (unitNamedIn(cell) !== null) named++
    else if (typeof cell === 'string' && /\d/.test(cell)) return true
  }
  return named === 0
}
