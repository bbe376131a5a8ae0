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
  /** One column of values, or one for each limb, whose ids are their names. */
  readonly values: readonly number[]
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
    const numbers = values.filter((column) => columnValues(below(column, names + 1)).numeric >= mostly)
    const nameOf = (column: number): string => String(sheet.rows[names]?.[column] ?? '').trim()
    if (!keys.some((key) => namedField(nameOf(key)) === 'tree')) continue
    const called = numbers.filter((column) => valueWords.test(nameOf(column)))
    const hasLimbs = keys.some((key) => namedField(nameOf(key)) === 'limb')
    const areLimbs = numbers.length > 1 && !hasLimbs && numbers.every((column) => limbId.test(nameOf(column)))
    const chosen = areLimbs ? numbers : [...called, ...numbers].slice(0, 1)
    // Of several columns of numbers without a name for values a person has to tell which one counts.
    if (chosen.length === 0 || (called.length === 0 && !areLimbs && numbers.length > 1)) continue
    const rest = others.filter((each) => !chosen.includes(each) && each !== unit)
    return { names, label, values: chosen, unit, keys: rest }
  }
  return null
}

const valueWords =
  /^(?:value|size|measurement|measured|reading|result|number|wert|messwert|gr(?:ö|oe)(?:ß|ss)e|valeur|mesure|valor|medida)s?(?!\p{L})/iu
/** What limbs are called by in the names of columns: A, B2, 3, Limb 1. */
const limbId = /^(?:(?:limb|branch|ast|branche|rama)\s*)?(?:\p{L}?\d{1,2}|\p{L})$/iu

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
function valueAt(
  sheet: SheetCells,
  unit: number | null,
  row: number,
  column: number,
  isOneUnit: boolean
): Placed {
  const placed = placedAt(sheet, row, column)
  const own = unit === null ? null : sheet.rows[row]?.[unit]
  if (isOneUnit || isBlank(own) || typeof placed.cell !== 'number') return placed
  return typeof own === 'string' && unitFromWord(own) !== null
    ? { ...placed, cell: `${placed.cell} ${own}` }
    : placed
}

/** The names of the columns: what identifies, then the limb where each has a column of its values, then the measures. */
interface Head {
  readonly names: readonly Placed[]
  readonly keys: readonly number[]
  readonly measures: ReadonlyMap<string, Measure>
  /** The column of each measure. */
  readonly order: ReadonlyMap<string, number>
}

function headOf(sheet: SheetCells, columns: Columns, measures: ReadonlyMap<string, Measure>): Head {
  const { names, label, keys, values } = columns
  const own = keys.filter((column) => column !== label)
  const limb: Placed[] =
    values.length > 1 ? [{ ...placedAt(sheet, names, values[0] ?? 0), cell: 'Limb' }] : []
  const measured = [...measures.values()].map(({ at, unit }): Placed => {
    const text = String(at.cell).trim()
    return unit === null || readHeaderText(text).unit !== null ? at : { ...at, cell: `${text} (${unit})` }
  })
  const before = own.length + limb.length
  return {
    names: [...own.map((column) => placedAt(sheet, names, column)), ...limb, ...measured],
    keys: own,
    measures,
    order: new Map([...measures.keys()].map((measure, at) => [measure, before + at]))
  }
}

/** The rows of the records; a measurement that comes again for one limb opens another record, so that it is told. */
function recordsOf(sheet: SheetCells, columns: Columns, head: Head): Placed[][] {
  const { names, label, keys, values, unit } = columns
  const identifying = keys.filter((column) => {
    const field = namedField(sheet.rows[names]?.[column])
    return field === 'tree' || field === 'limb'
  })
  const open = new Map<string, Placed[]>()
  const rows: Placed[][] = []
  for (let row = names + 1; row < sheet.rows.length; row++) {
    const text = sheet.rows[row]?.[label]
    if (isBlank(text)) continue
    const measure = fold(String(text)).trim()
    const at = head.order.get(measure) ?? 0
    const key = identifying.map((column) => fold(String(sheet.rows[row]?.[column] ?? '')).trim()).join('\n')
    for (const column of values) {
      if (values.length > 1 && isBlank(sheet.rows[row]?.[column])) continue
      const own = `${key}\n${String(column)}`
      let record = open.get(own)
      if (record === undefined || !isBlank(record[at]?.cell)) {
        const limb = values.length > 1 ? [placedAt(sheet, names, column)] : []
        record = [
          ...head.keys.map((each) => placedAt(sheet, row, each)),
          ...limb,
          ...[...head.order].map((): Placed => ({ cell: null, row, column }))
        ]
        open.set(own, record)
        rows.push(record)
      }
      record[at] = valueAt(sheet, unit, row, column, head.measures.get(measure)?.unit !== null)
    }
  }
  return rows
}

/**
 * One measurement a row, with the name of what was measured in a column of its own, put into a row for each tree or limb;
 * null where there is no such column. The values of several limbs may stand beside each other.
 */
export function fromLong(sheet: SheetCells): SheetCells | null {
  const columns = columnsOf(sheet)
  if (columns === null) return null
  const measures = measuresOf(sheet, columns)
  if (measures.size === 0 || measures.size > mostMeasures) return null
  const head = headOf(sheet, columns, measures)
  const rows = recordsOf(sheet, columns, head)
  if (rows.length === 0) return null
  const before = head.names.length - measures.size
  const ofTrees = [...measures.values()].filter(({ isOfTrees }) => isOfTrees).length
  return {
    ...rearranged(sheet, [head.names, ...rows]),
    says: (name, column) => (column < before || column >= before + ofTrees ? null : inFull(name, 'tree'))
  }
}
