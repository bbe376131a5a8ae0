import { isBlank, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { mayNameColumns, unitsIn } from '../survey/headerRows'
import { kindOfRow } from '../survey/rowKinds'
import type { SheetCells } from '../survey/sheetCells'
import { speaksOfTime } from '../survey/tellers'
import { namedField } from './labels'
import { placedAt, rearranged, type Placed } from './placed'
import { treeGroups, type TreeColumns, type TreeGroups } from './treeColumns'

/** A sheet whose columns repeat for each tree, with the trees below each other. */
export interface TreesBelow {
  readonly sheet: SheetCells
  readonly count: number
  /** The first and the last column of the trees, and the row of their names, in the sheet as it stands. */
  readonly area: { readonly row: number; readonly from: number; readonly to: number }
}

const ofLimbs: ReadonlySet<Field | null> = new Set<Field | null>([
  'limb',
  'diameter',
  'stem',
  'stemBelow',
  'origin',
  'tip'
])

/** Whether the rows are the limbs of each tree: their ids stand beside, or two measures of them are given. */
function rowsAreLimbs({ rows }: SheetCells, { names, titles, common, bases }: TreeGroups): boolean {
  const heads = common.flatMap((column) => [rows[names]?.[column], rows[titles]?.[column]])
  if (heads.some((head) => namedField(head) === 'limb')) return true
  return bases.filter((base) => ofLimbs.has(namedField(base))).length >= 2
}

/** The column beside the trees that tells rows apart, such as a plot; null where rows are told by their number. */
function keyColumn(sheet: SheetCells, { common, names }: TreeGroups, rows: readonly number[]): number | null {
  const found = common.find((column) => {
    if (speaksOfTime(String(sheet.rows[names]?.[column] ?? ''))) return false
    const texts = rows.map((row) => sheet.rows[row]?.[column])
    return !texts.some(isBlank) && new Set(texts.map(String)).size === rows.length
  })
  return found ?? null
}

/** Whether the rows are the same trees at other times. */
function areTimes(sheet: SheetCells, { common, names }: TreeGroups): boolean {
  return common.some((column) => speaksOfTime(String(sheet.rows[names]?.[column] ?? '')))
}

/** How the tree of a group is called in a row, and whether the rows of a tree are those of other trees too. */
interface Naming {
  readonly nameOf: (tree: TreeColumns, row: number) => string
  readonly areTrees: boolean
}

function naming(sheet: SheetCells, groups: TreeGroups, data: readonly number[]): Naming {
  const byGroup = { nameOf: ({ id }: TreeColumns) => id, areTrees: false }
  if (data.length < 2 || rowsAreLimbs(sheet, groups)) return byGroup
  const key = keyColumn(sheet, groups, data)
  if (key === null && areTimes(sheet, groups)) return byGroup
  const place = (row: number): string =>
    key === null ? `row ${String(sheet.top + row + 1)}` : String(sheet.rows[row]?.[key] ?? '').trim()
  return { nameOf: ({ id }, row) => `${place(row)}-${id}`, areTrees: true }
}

/** A cell, or what a merge over rows stands for in it. */
function beside(sheet: SheetCells, row: number, column: number): Placed {
  const own = placedAt(sheet, row, column)
  if (!isBlank(own.cell)) return own
  const merge = (sheet.merges ?? []).find(
    ({ top, bottom, left, right }) => row > top && row <= bottom && column >= left && column <= right
  )
  return merge === undefined ? own : { ...own, cell: sheet.rows[merge.top]?.[merge.left] ?? null }
}

/** The rows below the names, up to the next names; those that hold trees, and the others. */
function rowsBelow(
  { rows }: SheetCells,
  { names, common, trees }: TreeGroups
): { readonly data: number[]; readonly others: number[]; readonly end: number } {
  const next = rows.findIndex((cells, row) => row > names && mayNameColumns(cells))
  const end = next < 0 ? rows.length : next
  const judged = {
    names: rows[names] ?? [],
    idAt: -1,
    limbAt: -1,
    notesAt: new Set<number>(),
    known: new Set([...common, ...trees.flatMap(({ columns }) => columns)]),
    ids: { areNumbers: false, haveSpaces: true, areZones: () => false }
  }
  const data: number[] = []
  const others: number[] = []
  for (let row = names + 1; row < end; row++) {
    const cells = rows[row] ?? []
    const isUnits = row === names + 1 && unitsIn(cells) !== null
    const isLimbs = ['data', 'statistic'].includes(kindOfRow(cells, judged))
    const isData = !isUnits && trees.some((tree) => isFilled(cells, tree)) && isLimbs
    ;(isData ? data : others).push(row)
  }
  return { data, others, end }
}

function isFilled(cells: readonly Cell[], { columns }: TreeColumns): boolean {
  return columns.some((column) => !isBlank(cells[column]))
}

/** The sheet with a row for each tree in each of its rows; null where no columns repeat for each tree. */
export function treesBelow(sheet: SheetCells): TreesBelow | null {
  const groups = treeGroups(sheet.rows)
  const first = groups?.trees[0]
  if (groups === null || first === undefined) return null
  const { names, titles, common, bases, trees } = groups
  const { data, others, end } = rowsBelow(sheet, groups)
  const { nameOf, areTrees } = naming(sheet, groups, data)
  const asItStands = (row: number): Placed[] =>
    (sheet.rows[row] ?? []).map((_cell, column) => placedAt(sheet, row, column))
  const rowOf = (row: number, tree: TreeColumns, id: Placed): Placed[] => [
    id,
    ...common.map((column) => beside(sheet, row, column)),
    ...tree.columns.map((column): Placed =>
      column < 0 ? { cell: null, row, column: tree.at } : placedAt(sheet, row, column)
    )
  ]
  const ofTree = (row: number, tree: TreeColumns): Placed[] =>
    rowOf(row, tree, { cell: nameOf(tree, row), row, column: tree.at })
  const once = (row: number): Placed[] => rowOf(row, first, { cell: null, row, column: first.at })
  const holding = (tree: TreeColumns, row: number): boolean => isFilled(sheet.rows[row] ?? [], tree)
  const header = [
    { cell: 'Tree', row: titles, column: first.at },
    ...common.map((column) => placedAt(sheet, isBlank(sheet.rows[names]?.[column]) ? titles : names, column)),
    ...bases.map((cell, at): Placed => ({ cell, row: names, column: columnOf(trees, at) }))
  ]
  const unitRow = others.filter((row) => row === names + 1)
  const rows = [
    ...Array.from({ length: titles }, (_none, row) => asItStands(row)),
    header,
    ...unitRow.map(once),
    ...(areTrees
      ? data.flatMap((row) => trees.filter((tree) => holding(tree, row)).map((tree) => ofTree(row, tree)))
      : trees.flatMap((tree) => data.filter((row) => holding(tree, row)).map((row) => ofTree(row, tree)))),
    ...others.filter((row) => !unitRow.includes(row)).map(once),
    ...Array.from({ length: sheet.rows.length - end }, (_none, at) => asItStands(end + at))
  ]
  const columns = trees.flatMap((tree) => tree.columns.filter((column) => column >= 0))
  return {
    sheet: rearranged(sheet, rows),
    count: trees.length,
    area: { row: names, from: Math.min(...columns), to: Math.max(...columns) }
  }
}

/** Where the first tree that has a column stands with it. */
function columnOf(trees: readonly TreeColumns[], at: number): number {
  return trees.find(({ columns }) => (columns[at] ?? -1) >= 0)?.columns[at] ?? 0
}
