import { isBlank, type Cell } from '../../../shared/cells'
import { readChoice } from '../../../shared/choices'
import { columnOf, type Field } from '../../../shared/columns'
import { readHeaderText } from '../headers/headerText'
import { mayBeForeign } from '../headers/dictionary'
import { plain } from './plain'
import { noMeaning, type HeaderRows, type TableColumn } from './headerRows'
import type { SheetCells } from './sheetCells'

/** Rows looked at, and letters of an id at most. House judgment. */
const looked = 400
const longestId = 24
/** Share of the rows that have to have an id. House judgment. */
const mostlyFilled = 0.9

/** Share of the limbs that ids have to tell apart within their trees. House judgment. */
const mostlyTold = 0.7

interface Use {
  readonly at: number
  readonly column: number
  readonly texts: readonly string[]
}

/** Columns without a meaning whose header speaks of nothing else and whose cells may be ids. */
function possibleIds(sheet: SheetCells, columns: readonly TableColumn[], rows: readonly number[]): Use[] {
  return columns.flatMap(({ column, name, meaning }, at): Use[] => {
    if (meaning.field !== null) return []
    const { words, unit } = readHeaderText(name)
    // What is measured in a unit names nothing.
    if (unit !== null || words.some(mayBeForeign)) return []
    const cells = rows.map((row) => sheet.rows[row]?.[column])
    const texts = cells.map((cell) => plain(cell))
    const filled = texts.filter((text) => text !== '').length
    const whole = cells.every((cell) => isBlank(cell) || isId(cell))
    return whole && filled >= rows.length * mostlyFilled ? [{ at, column, texts }] : []
  })
}

function isId(cell: Cell | undefined): boolean {
  if (typeof cell === 'number') return Number.isInteger(cell)
  return typeof cell === 'string' && cell.length <= longestId && !/[?!;]/.test(cell)
}

/** Whether ids repeat without one of them standing for rows that say two things of a tree. */
function tellsTrees({ texts }: Use, known: readonly (readonly string[])[]): boolean {
  const first = new Map<string, number>()
  for (const [at, text] of texts.entries()) {
    const before = first.get(text)
    if (before === undefined) first.set(text, at)
    else if (known.some((cells) => (cells[at] ?? '') !== '' && cells[at] !== cells[before])) return false
  }
  return first.size > 1 && first.size < texts.length
}

/** Whether ids are told apart within each tree, and come again in another. */
function tellsLimbs({ texts }: Use, trees: readonly string[]): boolean {
  const pairs = new Set(texts.map((text, at) => `${trees[at] ?? ''}\n${text}`))
  return pairs.size === texts.length && new Set(texts).size > 1
}

/** The cells of a column in these rows, as ids are compared. */
function textsOf(sheet: SheetCells, column: number, rows: readonly number[]): string[] {
  const texts: string[] = []
  for (const row of rows) texts.push(plain(sheet.rows[row]?.[column]))
  return texts
}

/**
 * The ids of trees or limbs where no header names them, told by their use: values that repeat with what is known of a tree,
 * or that are each other's neighbors within a tree. Such a column is used and asked about.
 */
export function columnsByUse(sheet: SheetCells, header: HeaderRows, data: readonly number[]): HeaderRows {
  const rows = data.slice(0, looked)
  const fields = new Map(
    header.columns.flatMap(({ column, meaning }) =>
      meaning.field === null ? [] : [[meaning.field, column] as const]
    )
  )
  const limbs = ['diameter', 'stem', 'origin', 'tip'].filter((field) => fields.has(field as Field)).length
  if (rows.length < 2 || limbs < 2 || header.groups !== null) return header
  const values = (column: number): string[] => textsOf(sheet, column, rows)
  const used = (field: Field, found: Use | undefined): HeaderRows =>
    found === undefined ? header : withField(header, found.at, field)
  const free = possibleIds(sheet, header.columns, rows)
  const nameless = unnamed(sheet, header, rows)
  const tree = fields.get('tree')
  if (tree === undefined) {
    const known = [...fields]
      .filter(([field]) => columnOf(field).of === 'tree')
      .map(([, column]) => values(column))
    if (known.length === 0) return header
    const found = free.find((use) => tellsTrees(use, known))
    if (found !== undefined) return used('tree', found)
    const [blank] = possibleIds(sheet, nameless, rows).filter((use) => tellsTrees(use, known))
    const column = nameless[blank?.at ?? -1]
    return column === undefined ? header : withNameless(header, column)
  }
  const trees = values(tree)
  const limb = fields.get('limb')
  if (limb !== undefined) {
    // A column with one word for every limb of a tree says what it is, and not which.
    const own = values(limb)
    const site = fields.get('site')
    // Numbers that start again in each street are of several trees.
    const sites = site === undefined ? [] : values(site)
    const pairs = new Set(own.map((text, at) => `${trees[at] ?? ''}\n${sites[at] ?? ''}\n${text}`)).size
    const isWord = new Set(own).size === 1 || own.every((text) => readChoice('role', text) !== null)
    const isTold = pairs >= own.length * mostlyTold || pairs >= rowsApart(sheet, rows) * mostlyTold
    return isWord && !isTold ? asRole(header, limb, own) : header
  }
  return used(
    'limb',
    free.find((use) => tellsLimbs(use, trees))
  )
}

/** Rows that are no copy of another. */
function rowsApart(sheet: SheetCells, rows: readonly number[]): number {
  return new Set(rows.map((row) => JSON.stringify(sheet.rows[row]))).size
}

/** A column of words that tell no limb from another gives their roles, or nothing. */
function asRole(header: HeaderRows, column: number, texts: readonly string[]): HeaderRows {
  const given = header.columns.some(({ meaning }) => meaning.field === 'role')
  const areRoles = texts.every((text) => text === '' || readChoice('role', text) !== null)
  const at = header.columns.findIndex((each) => each.column === column)
  const { columns, ...rest } = areRoles && !given ? withField(header, at, 'role') : without(header, column)
  return {
    ...rest,
    columns: columns.map((each, index) => (index === at ? { ...each, areWordsOfLimbs: true as const } : each))
  }
}

function without(header: HeaderRows, column: number): HeaderRows {
  return {
    ...header,
    columns: header.columns.map((each) =>
      each.column === column
        ? { ...each, meaning: { ...each.meaning, field: null, confidence: 'sure' as const } }
        : each
    )
  }
}

/** Columns that stand before those of the limb and have no header. */
function unnamed(sheet: SheetCells, header: HeaderRows, rows: readonly number[]): TableColumn[] {
  const named = new Set(header.columns.map(({ column }) => column))
  const limb = header.columns.find(
    ({ meaning }) => meaning.field !== null && columnOf(meaning.field).of === 'limb'
  )
  return Array.from({ length: limb?.column ?? 0 }, (_none, column) => column)
    .filter((column) => !named.has(column) && rows.some((row) => !isBlank(sheet.rows[row]?.[column])))
    .map((column) => ({ column, name: '', group: '', title: '', meaning: noMeaning }))
}

function withNameless(header: HeaderRows, column: TableColumn): HeaderRows {
  const columns = [...header.columns, column].sort((a, b) => a.column - b.column)
  return withField({ ...header, columns }, columns.indexOf(column), 'tree')
}

/** The headers with a column, by its place among them, that gives a field and is asked about. */
export function withField(header: HeaderRows, at: number, field: Field): HeaderRows {
  return {
    ...header,
    columns: header.columns.map((column, index) =>
      index === at
        ? { ...column, meaning: { ...column.meaning, field, confidence: 'likely' as const, runnerUp: null } }
        : column
    )
  }
}
