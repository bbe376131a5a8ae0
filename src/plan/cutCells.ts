import { convertLength, systems, type UnitSystem } from '../../shared/units'
import { fixedTenth, points, ratio, whole } from '../../shared/words/figures'
import { printedDiameter, printedHeight } from '../../shared/words/lengths'
import { percent } from '../../shared/words/percent'
import { rounded } from '../../shared/words/rounding'
import { cutColumns, type CutColumn, type CutColumnName, type CutRow } from './cutColumns'

type Value = string | number | null

const columnOf = (name: CutColumnName): CutColumn => cutColumns[name]

function unitOf({ kind }: CutColumn, system: UnitSystem): string | null {
  return kind === 'diameter' || kind === 'height' ? systems[system][kind] : null
}

/** The header of a column with its unit, as long as the surface has room for. */
export function cutHeader(
  name: CutColumnName,
  system: UnitSystem,
  surface: 'sheet' | 'terminal' | 'formula' = 'sheet'
): string {
  const column = columnOf(name)
  const words = (surface === 'sheet' ? undefined : column.shorter?.[surface]) ?? column.header
  const unit = unitOf(column, system)
  if (unit === null) return words
  return surface === 'terminal' ? `${words} ${unit}` : `${words} (${unit})`
}

/** A number that is not known, as that of a dead limb may be, is blank. */
const known = (value: Value): Value => (typeof value === 'number' && Number.isNaN(value) ? null : value)

/** The value of a column as exact as the plan has it, lengths in the units of the system. */
export function exactCell(name: CutColumnName, row: CutRow, system: UnitSystem): Value {
  const { kind, of } = columnOf(name)
  const value = known(of(row))
  if (typeof value !== 'number') return value
  if (kind === 'diameter') return convertLength(value, 'mm', systems[system].diameter)
  return kind === 'height' ? convertLength(value, 'm', systems[system].height) : value
}

/** Gives the cells of a column as a sheet prints them: lengths to a tenth, doses so that they add up, limits never passed. */
export function cellPrinter(name: CutColumnName, system: UnitSystem): (row: CutRow) => Value {
  const { kind, of, limit, shown } = columnOf(name)
  if (shown !== undefined) return shown
  const number = (print: (value: number) => number) => (row: CutRow) => {
    const value = of(row)
    return typeof value === 'number' ? known(print(value)) : value
  }
  if (kind === 'diameter') return number((value) => printedDiameter(value, system, limit))
  if (kind === 'height') return number((value) => printedHeight(value, system, limit))
  if (kind === 'share') return number((value) => rounded(value, 3, limit))
  return (row) => known(of(row))
}

/** A cell as a text in a column of figures, its unit in the header; blank where there is no value. */
export function cutText(name: CutColumnName, row: CutRow, system: UnitSystem): string {
  const { kind } = columnOf(name)
  const value = cellPrinter(name, system)(row)
  if (value === null) return ''
  return typeof value === 'string' ? value : texts[kind](value)
}

const texts: Record<CutColumn['kind'], (value: number) => string> = {
  text: String,
  name: String,
  mark: String,
  count: whole,
  diameter: (value) => fixedTenth(value),
  height: (value) => fixedTenth(value),
  bearing: (value) => `${whole(value)}°`,
  share: (value) => percent(value),
  ratio,
  points
}
