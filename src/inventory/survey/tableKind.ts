import type { Field } from '../../../shared/columns'
import { columnValues } from '../headers/columnValues'
import type { RowsOf } from './part'
import type { SheetTable } from './sheetTables'

const measured: readonly Field[] = ['diameter', 'stem', 'stemBelow', 'origin', 'tip']
const ofTrees: readonly Field[] = ['trunk', 'height', 'crownBase', 'caliper', 'spread']
const alsoOfTrees: readonly Field[] = [...ofTrees, 'species', 'stage', 'vigor']

/** Words for what was computed of several limbs or trees. */
const computed =
  /(?<!\p{L})(?:mean|average|avg|median|count|number of|no\.? of|# of|num of|sum of|std|max|min|highest|lowest|largest|smallest|mittel|mittlere|durchschnittlich|anzahl|moyenn?e?|nombre|promedio|media|numero de|n[uú]mero de)(?!\p{L})/iu
/** Columns of such words that make a table a summary (house judgment). */
const summaryFrom = 2

/** What means and extremes are computed of; "lowest foliage" or the Spanish "nombre" of a limb is none. */
const summed: ReadonlySet<Field | null> = new Set<Field | null>([
  null,
  ...measured,
  ...ofTrees.filter((field) => field !== 'crownBase'),
  'length'
])

/** Whether a table sums up another: its columns are means, counts and extremes. */
export function isSummary({ header }: Pick<SheetTable, 'header'>): boolean {
  const of = header.columns.filter(({ name, meaning }) => computed.test(name) && summed.has(meaning.field))
  return of.length >= summaryFrom
}

/** Columns that have to give measurements in a table of measurements, and the least share of numbers in them. House judgment. */
const measuredIn = 2
const leastNumbers = 0.35
const looked = 200

/** The filled cells of measurements in a table, and those that hold a number; none where too few columns measure anything. */
function cellsOfMeasures({ sheet, header, rows }: SheetTable): { filled: number; numbers: number } {
  const first = rows.slice(0, looked)
  const columns = header.columns.flatMap(({ column, meaning: { field } }) => {
    if (field === null || (!measured.includes(field) && !ofTrees.includes(field))) return []
    const { filled, numeric } = columnValues(first.map((row) => sheet.rows[row]?.[column]))
    return filled === 0 ? [] : [{ filled, numbers: numeric * filled }]
  })
  const sum = { filled: 0, numbers: 0 }
  if (columns.length < measuredIn) return sum
  for (const { filled, numbers } of columns) {
    sum.filled += filled
    sum.numbers += numbers
  }
  return sum
}

/** Whether tables name measurements and hardly any number stands below them: words that happen to be those of a survey. */
export function haveNoMeasures(tables: readonly SheetTable[]): boolean {
  const cells = tables.map(cellsOfMeasures)
  const filled = cells.reduce((sum, each) => sum + each.filled, 0)
  return cells.reduce((sum, each) => sum + each.numbers, 0) < filled * leastNumbers
}

/**
 * What the rows of a table tell of; null where it is no part of an inventory, such as a list of choices or prices. Limbs are
 * told by two of their measurements (or an id and one), trees by an id or a species with a size.
 */
export function kindOfTable({ header }: Pick<SheetTable, 'header'>): RowsOf | null {
  const fields = new Set(header.columns.map(({ meaning }) => meaning.field))
  const count = (list: readonly Field[]): number => list.filter((field) => fields.has(field)).length
  const limbs = count(measured) + (fields.has('limb') ? 1 : 0) >= 2 && count(measured) >= 1
  if (limbs) return count(alsoOfTrees) > 0 ? 'both' : 'limbs'
  if (fields.has('tree')) return count(ofTrees) > 0 ? 'trees' : null
  return fields.has('species') && count(ofTrees) - (fields.has('spread') ? 1 : 0) > 0 ? 'trees' : null
}
