import { isBlank, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { fold } from '../headers/headerText'
import { isDitto } from './rowKinds'
import { sheetTables, type LabeledValue, type SheetTable } from './sheetTables'
import type { SheetCells } from './sheetCells'
import { sourceOf, SurveyTable, type Source, type SurveyColumn } from './surveyTable'

/** What was left out of the survey, or put together for it, to be told in one line. */
export interface Told {
  readonly what:
    | 'sheet left out'
    | 'table left out'
    | 'rows left out'
    | 'joined'
    | 'stacked'
    | 'columns turned to rows'
    | 'from a form'
  readonly sheet: string
  /** Rows of the sheet, counted from 1. */
  readonly rows: readonly number[]
  readonly why: string
}

/** The survey of a workbook: one table, and what became of everything else. */
export interface Survey {
  readonly table: SurveyTable
  readonly told: readonly Told[]
  readonly tables: readonly SheetTable[]
}

const limbMeasures: readonly Field[] = ['diameter', 'stem', 'stemBelow', 'origin', 'tip']
const treeMeasures: readonly Field[] = [
  'trunk',
  'height',
  'species',
  'crownBase',
  'stage',
  'vigor',
  'spread',
  'caliper',
  'clearance'
]

type TableKind = 'limbs' | 'trees' | 'other'

function fieldsOf(table: SheetTable): Set<Field> {
  return new Set(table.header.columns.flatMap(({ meaning }) => meaning.field ?? []))
}

function kindOf(table: SheetTable): TableKind {
  const fields = fieldsOf(table)
  const limbs = limbMeasures.filter((field) => fields.has(field)).length
  if (limbs >= 2 || (limbs >= 1 && fields.has('limb'))) return 'limbs'
  const trees = treeMeasures.filter((field) => fields.has(field)).length
  return trees >= 2 || (trees >= 1 && fields.has('tree')) ? 'trees' : 'other'
}

/** An id as it is compared: without case, invisible characters, stray spaces, and zeros in front of a number. */
export function sameId(cell: Cell | undefined): string {
  if (isBlank(cell)) return ''
  const text = fold(String(cell)).replace(/\s+/g, ' ').trim()
  return /^0+\d+$/.test(text) ? String(Number(text)) : text
}

/** Finds the survey among the sheets of a workbook; null where no table of trees or limbs is found. */
export function findSurvey(sheets: readonly SheetCells[]): Survey | null {
  const all = sheets.flatMap((sheet) => sheetTables(sheet))
  const limbs = all.filter((table) => kindOf(table) === 'limbs' && table.rows.length > 0)
  const trees = all.filter((table) => kindOf(table) === 'trees' && table.rows.length > 0)
  const used = [...limbs, ...trees]
  if (used.length === 0) return null
  return { ...assemble(limbs, trees), tables: all }
}

interface Join {
  readonly table: SheetTable
  /** Row of each tree in the table of trees, by its id. */
  readonly rowOf: ReadonlyMap<string, number>
}

function columnFor(table: SheetTable, field: Field): number {
  return table.header.columns.find(({ meaning }) => meaning.field === field)?.column ?? -1
}

/** Tables of trees whose ids the tables of limbs name; others stand for themselves. */
function joined(limbs: readonly SheetTable[], trees: readonly SheetTable[]): Join[] {
  const named = new Set<string>()
  for (const table of limbs) {
    const at = columnFor(table, 'tree')
    if (at >= 0) for (const row of table.rows) named.add(sameId(table.sheet.rows[row]?.[at]))
  }
  return trees.flatMap((table) => {
    const at = columnFor(table, 'tree')
    if (at < 0) return []
    const rowOf = new Map<string, number>()
    for (const row of table.rows) {
      const id = sameId(table.sheet.rows[row]?.[at])
      if (id !== '' && !rowOf.has(id)) rowOf.set(id, row)
    }
    const shared = [...rowOf.keys()].filter((id) => named.has(id)).length
    return shared > 0 ? [{ table, rowOf }] : []
  })
}

/** Where each column of the survey is found in one table: a column, or the value of a label above it. */
type Layout = (number | LabeledValue | null)[]

function assemble(limbs: readonly SheetTable[], trees: readonly SheetTable[]): Omit<Survey, 'tables'> {
  const told: Told[] = []
  const joins = joined(limbs, trees)
  const alone = trees.filter((table) => !joins.some((join) => join.table === table))
  const table = new SurveyTable()
  const places = new Map<string, number>()
  const columnOfField = (key: string, make: () => SurveyColumn): number => {
    let at = places.get(key)
    if (at === undefined) {
      at = table.addColumn(make())
      places.set(key, at)
    }
    return at
  }
  const lay = (
    from: SheetTable,
    only: (field: Field) => boolean
  ): { layout: Map<number, number | LabeledValue> } => {
    const layout = new Map<number, number | LabeledValue>()
    const groupColumns = new Set(from.header.groups?.groups.slice(1).flatMap(({ columns }) => columns) ?? [])
    for (const column of from.header.columns) {
      if (groupColumns.has(column.column)) continue
      const { field } = column.meaning
      if (field !== null && !only(field)) continue
      const key = field ?? `${from.sheet.name}:${String(from.header.names)}:${String(column.column)}`
      layout.set(
        columnOfField(key, () => surveyColumn(from, column)),
        column.column
      )
    }
    for (const label of from.labeled) {
      if (!only(label.field) || fieldsOf(from).has(label.field)) continue
      layout.set(
        columnOfField(label.field, () => labelColumn(from, label)),
        label
      )
    }
    return { layout }
  }
  const seen = new Set<string>()
  for (const from of limbs) {
    const { layout } = lay(from, () => true)
    const extra = joins.map((join) => ({
      join,
      layout: lay(join.table, (field) => !fieldsOf(from).has(field)).layout
    }))
    const groups = from.header.groups?.groups ?? null
    eachRow(from, (row, id) => {
      seen.add(sameId(id === null ? null : cellAt(id)))
      const base = sources(from, row, layout, id, table.columns.length)
      for (const { join, layout: more } of extra) {
        const other = join.rowOf.get(sameId(id === null ? null : cellAt(id)))
        if (other === undefined) continue
        for (const [at, column] of more)
          if (base[at] == null)
            base[at] =
              typeof column === 'number'
                ? sourceOf(join.table.sheet, other, column)
                : sourceOf(join.table.sheet, column.row, column.column)
      }
      if (groups === null) table.addRow(base)
      else addGroups(table, from, row, base, layout, groups)
    })
  }
  for (const { table: from, rowOf } of joins) {
    const { layout } = lay(from, () => true)
    for (const [id, row] of rowOf)
      if (!seen.has(id)) table.addRow(sources(from, row, layout, null, table.columns.length))
    told.push({
      what: 'joined',
      sheet: from.sheet.name,
      rows: [],
      why: 'its trees were joined to their limbs by the id'
    })
  }
  for (const from of alone) {
    const { layout } = lay(from, () => true)
    eachRow(from, (row, id) => {
      table.addRow(sources(from, row, layout, id, table.columns.length))
    })
  }
  return { table, told }
}

function cellAt({ sheet, row, column }: Source): Cell {
  return sheet.rows[row]?.[column] ?? null
}

function surveyColumn(
  from: SheetTable,
  { column, name, group, meaning }: SheetTable['header']['columns'][number]
): SurveyColumn {
  const { sheet, header } = from
  return {
    field: meaning.field,
    header: name === '' ? group : name,
    unit: meaning.unit,
    percent: meaning.text.percent || sheet.percentColumns?.has(column) === true,
    girth: meaning.girth,
    meaning,
    place: { sheet: sheet.name, row: sheet.top + header.names, column: sheet.left + column }
  }
}

function labelColumn(from: SheetTable, label: LabeledValue): SurveyColumn {
  const { sheet, header } = from
  const meaning = header.columns[0]?.meaning
  if (meaning === undefined) throw new Error('A table without columns')
  return {
    field: label.field,
    header: label.label,
    unit: null,
    percent: false,
    girth: false,
    meaning: { ...meaning, field: label.field, score: 0.9, confidence: 'sure', runnerUp: null },
    place: { sheet: sheet.name, row: sheet.top + label.row, column: sheet.left + label.column }
  }
}

/** Each data row with where its tree's id stands: its own, that above it where ids stand on a tree's first row, or none. */
function eachRow(from: SheetTable, take: (row: number, id: Source | null) => void): void {
  const at = columnFor(from, 'tree')
  const carries = at >= 0 && idsCarry(from, at)
  let above: Source | null = null
  for (const row of from.rows) {
    const cell = at < 0 ? null : (from.sheet.rows[row]?.[at] ?? null)
    const own = at >= 0 && !isBlank(cell) && !isDitto(cell)
    if (own) above = sourceOf(from.sheet, row, at)
    take(row, own || isDitto(cell) || carries || isMerged(from.sheet, row, at) ? above : null)
  }
}

function isMerged(sheet: SheetCells, row: number, column: number): boolean {
  return (sheet.merges ?? []).some(
    ({ top, bottom, left, right }) => row > top && row <= bottom && column >= left && column <= right
  )
}

/** Whether ids stand on the first row of a tree only: some cells are blank, and no id stands on two rows in turn. */
function idsCarry({ sheet, rows }: SheetTable, at: number): boolean {
  let last = ''
  let blanks = 0
  for (const row of rows) {
    const id = sameId(sheet.rows[row]?.[at])
    if (id === '') blanks++
    else if (id === last) return false
    else last = id
  }
  return blanks > 0
}

function sources(
  from: SheetTable,
  row: number,
  layout: ReadonlyMap<number, number | LabeledValue>,
  id: Source | null,
  width: number
): (Source | null)[] {
  const found: (Source | null)[] = Array<Source | null>(width).fill(null)
  const idAt = columnFor(from, 'tree')
  for (const [at, column] of layout) {
    if (typeof column !== 'number') found[at] = sourceOf(from.sheet, column.row, column.column)
    else if (column === idAt) found[at] = id
    else found[at] = sourceOf(from.sheet, row, column)
  }
  return found
}

/** One row per limb from the columns of its group; a group with nothing in it is no limb. */
function addGroups(
  table: SurveyTable,
  from: SheetTable,
  row: number,
  base: readonly (Source | null)[],
  layout: ReadonlyMap<number, number | LabeledValue>,
  groups: NonNullable<SheetTable['header']['groups']>['groups']
): void {
  const first = groups[0]?.columns ?? []
  let added = 0
  for (const { columns } of groups) {
    const own = [...base]
    let filled = false
    for (const [at, column] of layout) {
      const index = typeof column === 'number' ? first.indexOf(column) : -1
      if (index < 0) continue
      const place = columns[index] ?? -1
      own[at] = place < 0 ? null : sourceOf(from.sheet, row, place)
      if (place >= 0 && !isBlank(from.sheet.rows[row]?.[place])) filled = true
    }
    if (!filled) continue
    table.addRow(own)
    added++
  }
  if (added > 0) return
  const tree = [...base]
  for (const [at, column] of layout) if (typeof column === 'number' && first.includes(column)) tree[at] = null
  table.addRow(tree)
}

export function ofTree(field: Field): boolean {
  return columnOf(field).of === 'tree'
}
export type { Layout }
