import { isBlank, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { readHeaderText } from '../headers/headerText'
import { columnHeaded } from '../survey/headerRows'
import type { SheetCells } from '../survey/sheetCells'
import type { SheetTable } from '../survey/sheetTables'
import { saidInLine, type SaidInLine } from '../survey/treeLine'
import { numberWord, treeWord } from '../survey/treeWords'
import { placedAt, rearranged, type Placed } from './placed'

/** A table whose lines of text and notes give sizes of trees, with those in columns of their own. */
export interface LineSizes {
  readonly sheet: SheetCells
  /** Rows of lines that were read, and those of which it cannot be told which tree they are of. */
  readonly read: readonly number[]
  readonly open: readonly number[]
  /** Cells of notes that were read. */
  readonly notes: readonly Placed[]
}

const sizes: ReadonlySet<Field> = new Set<Field>(['trunk', 'height', 'crownBase', 'spread', 'caliper'])
/** What is the tree's even in the notes of a limb. */
const neverOfLimbs: ReadonlySet<Field> = new Set<Field>(['trunk', 'crownBase'])
const words: ReadonlySet<Field> = new Set<Field>(['species', 'stage', 'vigor'])

const treeName = new RegExp(
  `^${treeWord}\\.?\\s*${numberWord}?\\s*[\\p{L}-]{0,3}\\d[\\p{L}\\d-]*(?!\\p{L})`,
  'iu'
)
const year = /(?<!\d)(?:19|20)\d\d(?!\d)/

/** What a text says of a tree in sizes with their units; its kind only where it names the tree first. */
export function saidIn(text: string): readonly SaidInLine[] {
  const named = treeName.exec(text)
  const rest = named === null ? text : text.slice(named[0].length)
  if (!/\d/.test(rest) || year.test(rest)) return []
  const all = saidInLine(rest)
  const isSize = ({ field, label }: SaidInLine): boolean =>
    sizes.has(field) && readHeaderText(label).unit !== null && !/\d/.test(label)
  if (!all.some(isSize)) return []
  return all.filter((each) => isSize(each) || (named !== null && words.has(each.field)))
}

interface Line {
  readonly row: number
  readonly column: number
  readonly said: readonly SaidInLine[]
}

/** Lines of text alone in their rows that give sizes. */
function linesIn({ sheet, passed }: SheetTable): Line[] {
  return (passed.get('note') ?? []).flatMap((row): Line[] => {
    const cells = sheet.rows[row] ?? []
    const filled = cells.flatMap((cell, column) => (isBlank(cell) ? [] : [column]))
    const [column] = filled
    const text = column === undefined ? null : cells[column]
    if (column === undefined || filled.length > 1 || typeof text !== 'string') return []
    const said = saidIn(text.trim())
    return said.length === 0 ? [] : [{ row, column, said }]
  })
}

/** The row of data that a line is of: of the tree around it, else of the one that all lines stand above or below. */
function rowsOf({ sheet, header, rows }: SheetTable, lines: readonly Line[]): Map<Line, number> {
  const idAt = columnHeaded(header, 'tree')
  const idOf = (row: number | undefined): Cell =>
    row === undefined ? null : (sheet.rows[row]?.[idAt] ?? null)
  const before = (line: Line): number | undefined => rows.filter((row) => row < line.row).at(-1)
  const after = (line: Line): number | undefined => rows.find((row) => row > line.row)
  const found = new Map<Line, number>()
  const [first, last] = [lines[0], lines.at(-1)]
  if (first === undefined || last === undefined) return found
  const [above, below] = [before(first) === undefined, after(last) === undefined]
  // Ids may stand on the first row of their tree alone.
  const withId = (row: number | undefined): number | undefined =>
    row === undefined ? undefined : rows.filter((each) => each <= row && !isBlank(idOf(each))).at(-1)
  for (const line of lines) {
    const [upper, lower] = [before(line), after(line)]
    const isInside =
      lower !== undefined &&
      withId(upper) !== undefined &&
      (isBlank(idOf(lower)) || idOf(lower) === idOf(withId(upper)))
    const byPlace = above === below ? undefined : above ? lower : withId(upper)
    const row = idAt < 0 ? (above ? lower : undefined) : isInside ? withId(upper) : byPlace
    if (row !== undefined && ![...found.values()].includes(row)) found.set(line, row)
  }
  return found
}

/** Share of the cells that have to give two sizes for a column without a meaning to be one of measurements. House judgment. */
const mostly = 0.6

/** Where a list of trees measures nothing in columns of their own: a column whose cells hold several measurements each. */
function measuringColumn({ sheet, header, rows }: SheetTable): number | undefined {
  const known = header.columns.map(({ meaning }) => meaning.field)
  if (known.some((field) => field !== null && sizes.has(field)) || !known.includes('tree')) return undefined
  return header.columns.find(({ column, meaning }) => {
    if (meaning.field !== null || meaning.unused !== null) return false
    const texts = rows.flatMap((row) => sheet.rows[row]?.[column] ?? [])
    const several = texts.filter((text) => typeof text === 'string' && saidIn(text.trim()).length >= 2)
    return texts.length > 0 && several.length >= texts.length * mostly
  })?.column
}

/** Cells of notes that give sizes of trees, or of a column that holds several measurements. */
function notesIn(table: SheetTable): Line[] {
  const { sheet, header, rows } = table
  const noted = [columnHeaded(header, 'treeNotes'), columnHeaded(header, 'notes')].find((at) => at >= 0)
  const column = measuringColumn(table) ?? noted
  if (column === undefined) return []
  const besideLimbs = columnHeaded(header, 'diameter') >= 0
  const lines: Line[] = []
  for (const row of rows) {
    const cell = sheet.rows[row]?.[column]
    if (typeof cell !== 'string' || cell.length > 120 || !/\d/.test(cell)) continue
    const said = saidIn(cell.trim()).filter(({ field }) => (besideLimbs ? neverOfLimbs : sizes).has(field))
    if (said.length > 0) lines.push({ row, column, said })
  }
  return lines
}

/** A column for what lines say: of one field in one unit. */
export function keyOf({ field, label }: SaidInLine): string {
  const unit = readHeaderText(label).unit
  return `${columnOf(field).name}${unit === null ? '' : ` (${unit})`}`
}

/** The sheet with columns for the sizes that stand in lines and notes; null where none do. */
export function withLineSizes(table: SheetTable): LineSizes | null {
  const { sheet, header } = table
  if (header.groups !== null) return null
  const has = (field: Field): boolean => columnHeaded(header, field) >= 0
  const lines = linesIn(table)
  const placesOf = rowsOf(table, lines)
  const notes = notesIn(table)
  const given = [
    ...[...placesOf].map(([line, row]) => ({ ...line, of: row })),
    ...notes.map((line) => ({ ...line, of: line.row }))
  ]
  const free = given.flatMap(({ row, column, said, of }) =>
    said.filter(({ field }) => !has(field)).map((each) => ({ key: keyOf(each), each, row, column, of }))
  )
  const fields = new Map(free.map(({ key, each }) => [key, each.field] as const))
  // Two units of one field are two columns, of which one alone could be used.
  if (new Set(fields.values()).size < fields.size)
    return { sheet, read: [], open: lines.map(({ row }) => row), notes: [] }
  const open = lines.filter((line) => !placesOf.has(line) || line.said.some(({ field }) => has(field)))
  const used = free.map(({ row }) => row)
  const told = {
    read: lines.map(({ row }) => row).filter((row) => used.includes(row)),
    open: open.map(({ row }) => row)
  }
  if (free.length === 0) return lines.length === 0 ? null : { sheet, ...told, notes: [] }
  const width = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0)
  const keys = [...fields.keys()]
  // What was read stands in its own columns, and is no column without a use.
  const measuring = measuringColumn(table)
  const rows = sheet.rows.map((_cells, row) => [
    ...Array.from({ length: width }, (_none, column): Placed => {
      const placed = placedAt(sheet, row, column)
      return column === measuring && row === header.names ? { ...placed, cell: null } : placed
    }),
    ...keys.map((key): Placed => {
      const found = free.find((each) => each.key === key && each.of === row)
      const first = free.find((each) => each.key === key)
      if (row === header.names) return { cell: key, row: first?.row ?? row, column: first?.column ?? 0 }
      return found === undefined
        ? { cell: null, row, column: 0 }
        : { cell: found.each.value, row: found.row, column: found.column }
    })
  ])
  const { says, given: before = new Map<number, Field>() } = sheet
  return {
    sheet: {
      ...rearranged(sheet, rows),
      ...(says === undefined ? {} : { says }),
      given: new Map([
        ...before,
        ...keys.map((key, at) => [width + at, fields.get(key) ?? 'trunk'] as const)
      ]),
      readLines: new Set(told.read)
    },
    ...told,
    notes: notes
      .filter((line) => free.some(({ row, column }) => row === line.row && column === line.column))
      .map(({ row, column }) => placedAt(sheet, row, column))
  }
}
