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

/** The least share of numbers in columns of measurements, and words that stand in a lone one without any. House judgment. */
const leastNumbers = 0.35
const mostWords = 5
const looked = 200

interface Cells {
  readonly filled: number
  readonly numbers: number
}

/** The filled cells of each column of measurements, and those that hold a number. */
function cellsOfMeasures({ sheet, header, rows }: SheetTable): Cells[] {
  const first = rows.slice(0, looked)
  return header.columns.flatMap(({ column, meaning: { field } }) => {
    if (field === null || (!measured.includes(field) && !ofTrees.includes(field))) return []
    const { filled, numeric } = columnValues(first.map((row) => sheet.rows[row]?.[column]))
    return filled === 0 ? [] : [{ filled, numbers: numeric * filled }]
  })
}

/** Whether tables name measurements and hardly any number stands below them: words that happen to be those of a survey. */
export function haveNoMeasures(tables: readonly SheetTable[]): boolean {
  const columns = tables.flatMap(cellsOfMeasures)
  const filled = columns.reduce((sum, each) => sum + each.filled, 0)
  const numbers = columns.reduce((sum, each) => sum + each.numbers, 0)
  return columns.length < 2 ? numbers === 0 && filled > mostWords : numbers < filled * leastNumbers
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
