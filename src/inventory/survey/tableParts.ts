import type { Cell, CellBlock } from '../../../shared/cells'
import type { ColumnMatch } from '../inventory'
import { dataRows } from './dataRows'
import type { MatchedTable } from './matchTables'
import type { Part, RowsOf } from './part'
import { placeIn, type SheetCells } from './sheetCells'

/** The parts in which a table is read: one, or one for each group of columns; and one for the form above it. */
export function tableParts({ table, matches, labeled }: MatchedTable, of: RowsOf, at: number): Part[] {
  const { sheet, header } = table
  const rows = dataRows(table)
  const block = blockOf(sheet, header.names, rows)
  const own: TableRows = {
    block,
    rows: unshifted(table),
    sections: table.sections.map(({ row, text }) => ({ row: row - header.names, text })),
    table: at
  }
  const form = labeled.length === 0 ? [] : formParts(formPart(table.sheet, labeled, table, at), matches)
  if (header.groups === null) return [...form, partOf(own, matches, of, null)]
  const { common, groups } = header.groups
  const shared = matches.filter(({ column }) => common.includes(column))
  const ids = shared.filter(({ field }) => field === 'tree')
  return [
    ...form,
    ...groups.map(({ title, columns }, turn): Part => {
      const grouped = matches.filter(({ column }) => columns.includes(column))
      const all = [...(turn === 0 ? shared : ids), ...grouped]
      return partOf(own, all, turn === 0 ? of : 'limbs', groupName(table, title, columns))
    })
  ]
}

type TableRows = Pick<Part, 'block' | 'rows' | 'sections' | 'table'>

/** The rows from the names on, which know their places where they were rearranged. */
function blockOf({ name, top, left, placeOf }: SheetCells, names: number, rows: Cell[][]): CellBlock {
  const block = { rows, sheet: name, top: top + names, left }
  if (placeOf === undefined) return block
  return { ...block, placeOf: (row, column) => placeOf(row + names, column) }
}

/** Named one by one: a copy would be of a shape of its own for each inventory, which costs all that looks at rows its speed. */
function partOf(
  { block, rows, sections, table }: TableRows,
  matches: readonly ColumnMatch[],
  of: RowsOf,
  group: string | null
): Part {
  return { block, matches, rows, of, group, sections, isForm: false, table }
}

/** The rows of the block whose values stand under their own headers. */
function unshifted({ rows, shifted, header }: MatchedTable['table']): readonly number[] {
  if (shifted.size === 0 && header.names === 0) return rows
  const found: number[] = []
  for (const row of rows) if (!shifted.has(row)) found.push(row - header.names)
  return found
}

/** The title over a group of columns, else its number. */
function groupName({ header }: MatchedTable['table'], title: string, columns: readonly number[]): string {
  const titles = new Set(
    header.columns.filter(({ column }) => columns.includes(column)).map((column) => column.title)
  )
  const [only = ''] = titles
  if (titles.size === 1 && only !== '') return only
  return /^\d+$/.test(title) ? `Limb ${title}` : title
}

const isPlace = (field: ColumnMatch['field']): boolean => field === 'site' || field === 'zone'

/** The form, and what it tells of several trees: their place alone, unless a column says it of each. */
function formParts(form: Part, columns: readonly ColumnMatch[]): Part[] {
  const told = new Set(columns.map(({ field }) => field))
  const place = form.matches.filter(({ field }) => isPlace(field) && !told.has(field))
  return place.length === 0 ? [form] : [form, { ...form, matches: place }]
}

/** Labels and values, wherever they stand, as a row of names and a row of values that know their places. */
function formPart(
  sheet: MatchedTable['table']['sheet'],
  labeled: readonly ColumnMatch[],
  { labeled: values }: MatchedTable['table'],
  at: number
): Part {
  const names: Cell[] = labeled.map(({ header }) => header)
  const block: CellBlock = {
    rows: [names, values.map(({ value }) => value)],
    sheet: sheet.name,
    top: sheet.top + (values[0]?.row ?? 0) - 1,
    left: sheet.left,
    placeOf: (_row, column) => placeIn(sheet, values[column]?.row ?? 0, values[column]?.column ?? 0)
  }
  const matches = labeled.map((match, column) => ({ ...match, column }))
  return { block, matches, rows: [1], of: 'trees', group: null, sections: [], isForm: true, table: at }
}
