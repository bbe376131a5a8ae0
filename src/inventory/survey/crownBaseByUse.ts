import type { Field } from '../../../shared/columns'
import { convertLength } from '../../../shared/units'
import { columnValues } from '../headers/columnValues'
import { readHeaderText, type HeaderText } from '../headers/headerText'
import type { Meaning } from '../headers/dictionary'
import type { HeaderRows, TableColumn } from './headerRows'
import type { SheetCells } from './sheetCells'

/** Rows looked at; share of numbers, and of rows that have to be below the top. House judgment. */
const looked = 200
const numeric = 0.8
const mostly = 0.9
/** A crown base is mostly below this share of the height; what is above it may as well be the depth of the crown. House judgment. */
const lowerPart = 0.45

/** What the header of a crown base may speak of, and letters of a word that may be short for one of them. */
const may = new Set<Meaning>([
  'crown',
  'base',
  'height',
  'origin',
  'tall',
  'noise',
  'tree',
  'aboveGround',
  'lowest',
  'inYear',
  'at'
])
const shortWord = 3

const ofLimbs: ReadonlySet<Field | null> = new Set<Field | null>([
  'limb',
  'diameter',
  'stem',
  'origin',
  'tip'
])

/** Whether a header may be that of a crown base: "Base ca.", "Alt. copa", "Kr.-Ansatz"; beside limbs without an origin a bare base is theirs. */
function maySay({ words, notions, percent }: HeaderText, besideLimbs: boolean): boolean {
  if (percent || words.length > 5) return false
  const speaks = notions.has('crown') || (!besideLimbs && (notions.has('base') || notions.has('origin')))
  return (
    speaks &&
    words.every(({ meanings, text }) =>
      meanings.length === 0 ? text.length <= shortWord : meanings.some((meaning) => may.has(meaning))
    )
  )
}

/** What may stand beside "crown" and says nothing of which of its lengths is meant. */
const besideCrown = new Set<Meaning>(['crown', 'tall', 'tree', 'noise', 'inYear', 'total', 'observed'])

/** Whether a header says nothing but that it is of the crown ("Houppier (m)"): its spread, its depth, or the height of its base. */
function isBareCrown({ words, notions, percent }: HeaderText): boolean {
  return (
    !percent &&
    notions.has('crown') &&
    words.every(({ meanings }) => meanings.length > 0 && meanings.some((each) => besideCrown.has(each)))
  )
}

/** How a column of heights goes with the heights of the trees. */
function below(
  sheet: SheetCells,
  rows: readonly number[],
  height: TableColumn,
  column: TableColumn
): 'crown base' | 'below the top' | null {
  const values = (each: TableColumn) => columnValues(rows.map((row) => sheet.rows[row]?.[each.column]))
  const [tops, own] = [values(height), values(column)]
  if (own.filled === 0 || own.numeric < numeric) return null
  const unit = height.meaning.unit ?? 'm'
  const shares = own.numbers.flatMap((number, at) => {
    const top = tops.numbers[at] ?? null
    return number === null || top === null || top <= 0
      ? []
      : [convertLength(number, column.meaning.unit ?? unit, unit) / top]
  })
  shares.sort((a, b) => a - b)
  const inside = shares.filter((share) => share >= 0 && share < 1).length
  if (shares.length === 0 || inside < shares.length * mostly) return null
  return (shares[Math.floor(shares.length / 2)] ?? 1) <= lowerPart ? 'crown base' : 'below the top'
}

function candidates({ columns, groups }: HeaderRows): TableColumn[] {
  if (groups !== null || columns.some(({ meaning }) => meaning.field === 'crownBase')) return []
  const has = (field: Field): boolean => columns.some(({ meaning }) => meaning.field === field)
  const besideLimbs = !has('origin') && columns.some(({ meaning }) => ofLimbs.has(meaning.field))
  return columns.filter(
    ({ name, meaning }) =>
      meaning.field === null &&
      meaning.unused === null &&
      !isBareCrown(readHeaderText(name)) &&
      maySay(readHeaderText(name), besideLimbs)
  )
}

/** Columns of lengths that may be any of the crown's: asked about, and not used. */
export function bareCrowns(
  sheet: SheetCells,
  { columns, groups }: HeaderRows,
  data: readonly number[]
): readonly number[] {
  if (groups !== null) return []
  const rows = data.slice(0, looked)
  const open = columns.filter(
    ({ name, meaning }) =>
      meaning.field === null && meaning.unused === null && isBareCrown(readHeaderText(name))
  )
  return open.flatMap(({ column }) => {
    const { filled, numeric: numbers } = columnValues(rows.map((row) => sheet.rows[row]?.[column]))
    return filled > 0 && numbers >= numeric ? [column] : []
  })
}

/**
 * The headers with a crown base where none says so plainly: a column whose words hardly say more than "base" or "crown
 * height" and whose numbers lie in the lower part of the trees. It is used and asked about.
 */
export function crownBaseByUse(sheet: SheetCells, header: HeaderRows, data: readonly number[]): HeaderRows {
  const height = header.columns.find(({ meaning }) => meaning.field === 'height')
  const open = height === undefined ? [] : candidates(header)
  if (height === undefined || open.length === 0) return header
  const rows = data.slice(0, looked)
  const found = open.filter((column) => below(sheet, rows, height, column) === 'crown base')
  const [only] = found
  if (only === undefined || found.length > 1) return header
  const unit = only.meaning.unit ?? height.meaning.unit
  return {
    ...header,
    columns: header.columns.map((column): TableColumn =>
      column === only
        ? {
            ...column,
            meaning: {
              ...column.meaning,
              field: 'crownBase',
              score: lowerPart,
              unit,
              confidence: 'likely',
              runnerUp: null
            }
          }
        : column
    )
  }
}

/** Columns that may hold the crown base, or as well the depth of the crown: asked about, and not used. */
export function mayBeCrownBase(
  sheet: SheetCells,
  header: HeaderRows,
  data: readonly number[]
): readonly number[] {
  const height = header.columns.find(({ meaning }) => meaning.field === 'height')
  const open = height === undefined ? [] : candidates(header)
  const rows = data.slice(0, looked)
  return open.flatMap((column) =>
    height !== undefined && below(sheet, rows, height, column) !== null ? [column.column] : []
  )
}
