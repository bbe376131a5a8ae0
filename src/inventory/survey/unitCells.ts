import { isBlank, type Cell } from '../../../shared/cells'
import { unitFromWord } from '../../../shared/units'
import { fold } from '../headers/headerText'
import { lengthOf } from '../lengthOf'
import type { HeaderRows, TableColumn } from './headerRows'
import type { SheetCells } from './sheetCells'

const unitWords = /(?<!\p{L})(?:units?|uom|einheit(?:en)?|ma(?:ss|ß)einheit|unites?|unidad(?:es)?)(?!\p{L})/iu

/** A column that gives the unit of each row, and the columns whose numbers it is of. */
interface UnitColumn {
  readonly unit: number
  readonly of: readonly number[]
}

const words = (header: string): string[] =>
  fold(header)
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 1 && !unitWords.test(word))

/** Length columns without a unit of their own that a column of units is of: those it names, else the one before it. */
function measuredIn(column: TableColumn, columns: readonly TableColumn[]): number[] {
  const lengths = columns.filter(
    ({ meaning }) => meaning.field !== null && lengthOf(meaning.field) !== null && meaning.unit === null
  )
  const own = words(column.name)
  const named = lengths.filter(({ name }) => words(name).some((word) => own.includes(word)))
  if (named.length > 0) return named.map((each) => each.column)
  const before = lengths.filter((each) => each.column < column.column).at(-1)
  return before === undefined ? [] : [before.column]
}

/** Columns of units ("Dia. unit": in, cm), row by row. */
function unitColumns(sheet: SheetCells, { columns }: HeaderRows, rows: readonly number[]): UnitColumn[] {
  return columns.flatMap((column): UnitColumn[] => {
    if (column.meaning.field !== null || !unitWords.test(column.name.replaceAll('_', ' '))) return []
    const cells = rows.map((row) => sheet.rows[row]?.[column.column]).filter((cell) => !isBlank(cell))
    const isUnits = cells.length > 0 && cells.every((cell) => unitFromWord(String(cell)) !== null)
    const of = isUnits ? measuredIn(column, columns) : []
    return of.length === 0 ? [] : [{ unit: column.column, of }]
  })
}

/** Whole feet in one column and the inches left over in the next, under the same name. */
function feetAndInches(
  sheet: SheetCells,
  { columns }: HeaderRows,
  rows: readonly number[]
): { feet: number; inches: number }[] {
  return columns.flatMap((feet, at) => {
    const inches = columns[at + 1]
    if (inches === undefined || feet.meaning.field === null || inches.meaning.field !== null) return []
    if (feet.meaning.text.unit !== 'ft' || inches.meaning.text.unit !== 'in') return []
    const same = words(feet.name)
      .filter((word) => word !== 'ft' && word !== 'feet')
      .join(' ')
    const theirs = words(inches.name)
      .filter((word) => !['in', 'inch', 'inches'].includes(word))
      .join(' ')
    if (same !== theirs) return []
    const left = rows.map((row) => sheet.rows[row]?.[inches.column])
    const fits = left.every((cell) => isBlank(cell) || (typeof cell === 'number' && cell >= 0 && cell < 12))
    return fits ? [{ feet: feet.column, inches: inches.column }] : []
  })
}

/** A number as a text that can be read in one way only: three decimals look like thousands. */
function decimals(cell: Cell | undefined): string {
  const text = String(cell)
  return /\.\d{3}$/.test(text) ? `${text}0` : text
}

/** How the cells of a row are to be read together: with the unit that the row gives, or as feet with inches. */
export function unitsInRows(
  sheet: SheetCells,
  header: HeaderRows,
  rows: readonly number[]
): ((row: readonly Cell[]) => readonly Cell[]) | null {
  const units = unitColumns(sheet, header, rows)
  const pairs = feetAndInches(sheet, header, rows)
  if (units.length === 0 && pairs.length === 0) return null
  return (row) => {
    const own = [...row]
    for (const { unit, of } of units)
      for (const column of of)
        if (typeof row[column] === 'number' && !isBlank(row[unit]))
          own[column] = `${decimals(row[column])} ${String(row[unit]).trim()}`
    for (const { feet, inches } of pairs)
      if (typeof row[feet] === 'number' && typeof row[inches] === 'number')
        own[feet] = `${String(row[feet])}' ${String(row[inches])}"`
    return own
  }
}
