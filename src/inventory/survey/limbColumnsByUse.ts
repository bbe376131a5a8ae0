import { isBlank, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import type { HeaderRows, TableColumn } from './headerRows'
import { plain } from './plain'
import type { SheetCells } from './sheetCells'

/** Bare headers that are of the tree or of its limbs, by where they stand: "Stem dia", "Lowest foliage", "Notes". */
const pairs: readonly (readonly [ofTree: Field, ofLimb: Field])[] = [
  ['trunk', 'stem'],
  ['crownBase', 'lowestFoliage'],
  ['treeNotes', 'notes']
]

/** What is the same in every row of a tree, where its id stands for one tree. */
const ofOneTree: readonly Field[] = ['zone', 'site', 'species', 'height']

/** Rows looked at. House judgment. */
const looked = 400

/** Trees of several rows in which a column says the same, and those in which it says several things. */
interface Use {
  readonly trees: number
  readonly steady: number
  readonly varied: number
}

function useOf(cells: readonly (Cell | undefined)[], trees: readonly string[]): Use {
  const first = new Map<string, Cell>()
  const varies = new Map<string, boolean>()
  cells.forEach((cell, at) => {
    const tree = trees[at] ?? ''
    if (cell === undefined || isBlank(cell) || tree === '') return
    const before = first.get(tree)
    if (before === undefined) first.set(tree, cell)
    else varies.set(tree, varies.get(tree) === true || before !== cell)
  })
  const varied = [...varies.values()].filter(Boolean).length
  return { trees: first.size, steady: varies.size - varied, varied }
}

/** More trees than not, and more than the one that a slip would make; or the only tree there is. */
function isOfLimbs({ trees, steady, varied }: Use): boolean {
  return varied > steady && (varied > 1 || trees === 1)
}

/**
 * Columns taken for the tree's although what they say changes from limb to limb are the limbs'; where another column is taken
 * for the limbs' and says the same of every limb of a tree, the two change places. They are used so and asked about. A table
 * below a form without a column of trees is of one tree.
 */
export function limbColumnsByUse(
  sheet: SheetCells,
  header: HeaderRows,
  data: readonly number[],
  isOfOneTree: boolean
): HeaderRows {
  const { columns } = header
  const of = (field: Field): TableColumn | undefined => columns.find(({ meaning }) => meaning.field === field)
  const tree = of('tree')
  if (header.groups !== null || of('diameter') === undefined) return header
  if (tree === undefined && !isOfOneTree) return header
  const rows = data.slice(0, looked)
  const cells = ({ column }: TableColumn): (Cell | undefined)[] =>
    rows.map((row) => sheet.rows[row]?.[column])
  const trees = tree === undefined ? rows.map(() => 'the only one') : cells(tree).map(plain)
  const heights = heightsOfUnions(columns, cells, trees)
  const known = ofOneTree
    .flatMap((field) => of(field) ?? [])
    .filter((column) => column !== heights)
    .map((column) => useOf(cells(column), trees))
  if (known.some(({ varied }) => varied > 0)) return header
  if (known.length > 0 && known.every(({ steady }) => steady === 0)) return header
  const changed = new Map<TableColumn, Field>(heights === null ? [] : [[heights, 'origin']])
  for (const [ofTree, usual] of pairs) {
    const taken = of(ofTree)
    if (taken === undefined || !isOfLimbs(useOf(cells(taken), trees))) continue
    const ofLimb = freeRunnerUp(taken, columns) ?? usual
    const other = of(ofLimb)
    const use = other && useOf(cells(other), trees)
    if (use !== undefined && (use.varied > 0 || use.steady === 0)) continue
    changed.set(taken, ofLimb)
    if (other !== undefined) changed.set(other, ofTree)
  }
  if (changed.size === 0) return header
  return { ...header, columns: columns.map((column) => meaning(column, changed.get(column))) }
}

/**
 * The column of a bare "Height" that is no tree's but that of the union: it changes from limb to limb and is below the tip in
 * each row, and no other column gives where limbs start.
 */
function heightsOfUnions(
  columns: readonly TableColumn[],
  cells: (column: TableColumn) => (Cell | undefined)[],
  trees: readonly string[]
): TableColumn | null {
  const of = (field: Field): TableColumn | undefined => columns.find(({ meaning }) => meaning.field === field)
  const [height, tip] = [of('height'), of('tip')]
  if (height === undefined || tip === undefined || of('origin') !== undefined) return null
  const [heights, tips] = [cells(height), cells(tip)]
  if (!isOfLimbs(useOf(heights, trees))) return null
  const isBelow = heights.every((low, at) => {
    const high = tips[at]
    return typeof low !== 'number' || typeof high !== 'number' || low < high
  })
  return isBelow && heights.some((low) => typeof low === 'number') ? height : null
}

/** The second best meaning of a column, where it is of the limb and no other column has it. */
function freeRunnerUp({ meaning: { runnerUp } }: TableColumn, columns: readonly TableColumn[]): Field | null {
  if (runnerUp === null || columnOf(runnerUp).of === 'tree') return null
  return columns.some(({ meaning: { field } }) => field === runnerUp) ? null : runnerUp
}

function meaning(column: TableColumn, field: Field | undefined): TableColumn {
  if (field === undefined) return column
  const runnerUp = column.meaning.field
  return { ...column, meaning: { ...column.meaning, field, runnerUp, confidence: 'likely' } }
}
