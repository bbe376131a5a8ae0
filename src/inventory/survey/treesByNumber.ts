import { isBlank } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { readHeaderText } from '../headers/headerText'
import { withField } from './columnsByUse'
import type { HeaderRows, TableColumn } from './headerRows'
import { plain } from './plain'
import type { SheetCells } from './sheetCells'

/** Rows looked at, and the share of texts that have to be words without a figure. House judgment. */
const looked = 400
const mostlyWords = 0.9

const sizes: readonly Field[] = ['trunk', 'height', 'crownBase', 'spread', 'caliper']

function textsOf(sheet: SheetCells, { column }: TableColumn, rows: readonly number[]): string[] {
  return rows.map((row) => plain(sheet.rows[row]?.[column]))
}

/** Whether the same text stands in rows that give other sizes of the tree: it names a kind. */
function contradicts(texts: readonly string[], known: readonly (readonly string[])[]): boolean {
  const first = new Map<string, number>()
  return texts.some((text, at) => {
    const before = first.get(text)
    if (before === undefined) first.set(text, at)
    return (
      before !== undefined &&
      known.some((cells) => cells[at] !== '' && cells[before] !== '' && cells[at] !== cells[before])
    )
  })
}

/** Whether each value stands for one tree at most: the rows that bear it say the same of its sizes. */
function standsForTrees(texts: readonly string[], known: readonly (readonly string[])[]): boolean {
  return texts.every((text) => text !== '') && !contradicts(texts, known) && new Set(texts).size > 1
}

const ofNumbers: ReadonlySet<string> = new Set(['id', 'tag', 'tree'])

/** Columns that may number the trees: their header speaks of a number or an id, and of nothing else ("Species code"). */
function numbering(header: HeaderRows): TableColumn[] {
  return header.columns.filter(({ name, meaning: { field, confidence } }) => {
    const { notions } = readHeaderText(name)
    const isFree = field === null || (field === 'limb' && confidence !== 'sure')
    const counts = notions.has('id') || notions.has('tag') || /#\s*$/.test(name)
    return isFree && counts && [...notions].every((notion) => ofNumbers.has(notion))
  })
}

/**
 * The headers with the trees named by their numbers, where the column "Tree" holds their kinds, which come again with other
 * sizes ("No.", "Tree": 1, Red maple; 2, Red maple). Both columns are used and asked about.
 */
export function treesByNumber(sheet: SheetCells, header: HeaderRows, data: readonly number[]): HeaderRows {
  const rows = data.slice(0, looked)
  const at = header.columns.findIndex(({ meaning }) => meaning.field === 'tree')
  const tree = header.columns[at]
  const given = new Set(header.columns.map(({ meaning }) => meaning.field))
  if (tree === undefined || rows.length < 2 || given.has('species') || header.groups !== null) return header
  const texts = textsOf(sheet, tree, rows)
  const words = texts.filter((text) => /\p{L}{3}/u.test(text) && !/\d/.test(text))
  const known = header.columns
    .filter(({ meaning: { field } }) => field !== null && sizes.includes(field))
    .map((column) => textsOf(sheet, column, rows))
  if (words.length < texts.length * mostlyWords || !contradicts(texts, known)) return header
  const number = numbering(header).find((column) => standsForTrees(textsOf(sheet, column, rows), known))
  if (number === undefined) return header
  return withField(withField(header, at, 'species'), header.columns.indexOf(number), 'tree')
}

/** A number of each tree in a list of trees that no header names plainly: ids that all differ, in a column that counts. */
export function numbersOfTrees(sheet: SheetCells, header: HeaderRows, data: readonly number[]): HeaderRows {
  const rows = data.slice(0, looked)
  const fields = header.columns.flatMap(({ meaning }) => meaning.field ?? [])
  const ofLimbs = fields.some((field) => columnOf(field).of === 'limb')
  if (fields.includes('tree') || ofLimbs || header.groups !== null || rows.length < 2) return header
  if (!fields.includes('species') || !fields.some((field) => sizes.includes(field))) return header
  const number = numbering(header).find((column) => {
    const texts = textsOf(sheet, column, rows)
    return (
      rows.every((row) => !isBlank(sheet.rows[row]?.[column.column])) && new Set(texts).size === texts.length
    )
  })
  return number === undefined ? header : withField(header, header.columns.indexOf(number), 'tree')
}
