import { isBlank, type Cell } from '../../../shared/cells'
import { unitFromWord } from '../../../shared/units'
import { columnValues } from '../headers/columnValues'
import { fold } from '../headers/fold'
import { readHeaderText } from '../headers/headerText'
import { countFilled, type SheetCells } from '../survey/sheetCells'
import { inFull } from './inFull'
import { areLabels, namedField, widthOf } from './labels'
import { placedAt, rearranged, type Placed } from './placed'

/** Rows looked at, and the share of cells that have to be labels, or numbers. House judgment. */
const looked = 400
const mostly = 0.6
const rowsOfHead = 40

/** The columns of a table with one measurement a row. */
interface Columns {
  readonly names: number
  readonly label: number
  readonly value: number
  readonly unit: number | null
  readonly keys: readonly number[]
}

function isUnits(cells: readonly (Cell | undefined)[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell))
  const units = filled.filter((cell) => typeof cell === 'string' && unitFromWord(cell) !== null)
  return (
    units.length > 0 &&
    units.length >= filled.length * mostly &&
    filled.every((cell) => typeof cell === 'string')
  )
}

/** The row that names the columns: the last above the first label with more than a title in it. */
function namesAbove(sheet: SheetCells, first: number): number {
  for (let row = first - 1; row >= 0 && first - row < rowsOfHead; row--)
    if (countFilled(sheet.rows[row] ?? []) >= 3) return row
  return -1
}

function columnsOf(sheet: SheetCells): Columns | null {
  const width = widthOf(sheet.rows, looked)
  const all = Array.from({ length: width }, (_none, column) => column)
  const below = (column: number, from: number): (Cell | undefined)[] =>
    sheet.rows.slice(from, from + looked).map((row) => row[column])
  for (const label of all) {
    const first = sheet.rows.slice(0, rowsOfHead).findIndex((row, at) => {
      const known = namedField(row[label]) !== null
      return known && at > 0 && areLabels(below(label, at), mostly)
    })
    // The name of the column may be a label itself, such as "Measurement".
    const names = first < 0 ? -1 : namesAbove(sheet, first)
    if (names < 0) continue
    const others = all.filter((column) => column !== label && !isBlank(sheet.rows[names]?.[column]))
    const unit = others.find((column) => isUnits(below(column, names + 1))) ?? null
    const keys = others.filter((column) => {
      const field = namedField(sheet.rows[names]?.[column])
      return field === 'tree' || field === 'limb'
    })
    const values = others.filter((column) => column !== unit && !keys.includes(column))
    const value = values.find((column) => columnValues(below(column, names + 1)).numeric >= 0.5)
    if (value === undefined || !keys.some((key) => namedField(sheet.rows[names]?.[key]) === 'tree')) continue
    return { names, label, value, unit, keys: others.filter((each) => each !== value && each !== unit) }
  }
  return null
}

interface Measure {
  readonly at: Placed
  /** The unit that all its rows give, or null. */
  unit: string | null
  /** No row that gives it names a limb. */
  isOfTrees: boolean
}

/** Measures of more kinds are no measures. House judgment. */
const mostMeasures = 300

/** Measures in the order in which they come, those of trees first. */
function measuresOf(sheet: SheetCells, { names, label, unit, keys }: Columns): Map<string, Measure> {
  const limb = keys.find((column) => namedField(sheet.rows[names]?.[column]) === 'limb')
  const found = new Map<string, Measure>()
  for (let row = names + 1; row < sheet.rows.length; row++) {
    const at = placedAt(sheet, row, label)
    if (isBlank(at.cell)) continue
    const key = fold(String(at.cell)).trim()
    const own = unit === null ? null : sheet.rows[row]?.[unit]
    const said = typeof own === 'string' && unitFromWord(own) !== null ? own.trim() : null
    const isOfTrees = limb !== undefined && isBlank(sheet.rows[row]?.[limb])
    const known = found.get(key)
    if (known === undefined) found.set(key, { at, unit: said, isOfTrees })
    else {
      if (known.unit !== said) known.unit = null
      known.isOfTrees &&= isOfTrees
    }
  }
  const all = [...found]
  return new Map([...all.filter(([, each]) => each.isOfTrees), ...all.filter(([, each]) => !each.isOfTrees)])
}

/** The cell of a measurement, with its unit where the rows of the measure give different ones. */
function valueAt(sheet: SheetCells, { value, unit }: Columns, row: number, isOneUnit: boolean): Placed {
  const placed = placedAt(sheet, row, value)
  const own = unit === null ? null : sheet.rows[row]?.[unit]
  if (isOneUnit || isBlank(own) || typeof placed.cell !== 'number') return placed
  return typeof own === 'string' && unitFromWord(own) !== null
    ? { ...placed, cell: `${placed.cell} ${own}` }
    : placed
}

/**
 * One measurement a row, with the name of what was measured in a column of its own, put into a row for each tree or limb;
 * null where there is no such column. A measurement that comes again for one limb opens another row, so that it is told.
 */
export function fromLong(sheet: SheetCells): SheetCells | null {
  const columns = columnsOf(sheet)
  if (columns === null) return null
  const { names, label, keys } = columns
  const measures = measuresOf(sheet, columns)
  const own = [...measures.keys()]
  if (own.length === 0 || own.length > mostMeasures) return null
  const isKey = (column: number): boolean => {
    const field = namedField(sheet.rows[names]?.[column])
    return field === 'tree' || field === 'limb'
  }
  const head = [
    ...keys.filter((column) => column !== label).map((column) => placedAt(sheet, names, column)),
    ...[...measures.values()].map(({ at, unit }): Placed => {
      const text = String(at.cell).trim()
      return unit === null || readHeaderText(text).unit !== null ? at : { ...at, cell: `${text} (${unit})` }
    })
  ]
  const before = head.length - own.length
  const open = new Map<string, Placed[]>()
  const rows: Placed[][] = []
  for (let row = names + 1; row < sheet.rows.length; row++) {
    const text = sheet.rows[row]?.[label]
    if (isBlank(text)) continue
    const measure = fold(String(text)).trim()
    const at = before + own.indexOf(measure)
    const key = keys
      .filter(isKey)
      .map((column) => fold(String(sheet.rows[row]?.[column] ?? '')).trim())
      .join('\n')
    let record = open.get(key)
    if (record === undefined || !isBlank(record[at]?.cell)) {
      record = head.map(({ column }, index) =>
        index < before ? placedAt(sheet, row, column) : { cell: null, row, column: columns.value }
      )
      open.set(key, record)
      rows.push(record)
    }
    record[at] = valueAt(sheet, columns, row, measures.get(measure)?.unit !== null)
  }
  if (rows.length === 0) return null
  const ofTrees = [...measures.values()].filter(({ isOfTrees }) => isOfTrees).length
  return {
    ...rearranged(sheet, [head, ...rows]),
    says: (name, column) => (column < before || column >= before + ofTrees ? null : inFull(name, 'tree'))
  }
}
