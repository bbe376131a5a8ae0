import { filledIn } from '../survey/sheetCells'
import { isBlank, type Cell } from '../../../shared/cells'
import { fold } from '../headers/fold'
import { byLetter, byNumber, type Counting } from '../survey/counters'
import { numberWord, treeWord } from '../survey/treeWords'
import { namedField } from './labels'

/** The columns of one tree, in the order of the names; -1 where it has no such column. */
export interface TreeColumns {
  readonly id: string
  /** The column whose header names the tree. */
  readonly at: number
  readonly columns: readonly number[]
}

/** Columns that repeat for each tree, and those beside them. */
export interface TreeGroups {
  /** The row of the names, and that of the titles above it or the same. */
  readonly names: number
  readonly titles: number
  readonly common: readonly number[]
  /** What each column of a tree is called, without the tree. */
  readonly bases: readonly string[]
  readonly trees: readonly TreeColumns[]
}

/** Rows in which names are looked for; share of the names of a group that have to be known. House judgment. */
const looked = 60
const mostlyKnown = 0.6

const id = '(?!(?:19|20)\\d\\d\\b)([\\p{L}]?-?\\d{1,4}\\p{L}?|[A-H])'
const before = new RegExp(
  `^(?:${treeWord}\\s*(?:${numberWord})?\\s*${id}|(t-?\\d{1,3}))(?:[\\s:.,;–-]+(.*))?$`,
  'iu'
)
const behind = new RegExp(`^(.+?)[\\s:.,;(–-]+${treeWord}\\s*(?:${numberWord})?\\s*${id}\\)?$`, 'iu')

interface Marked {
  readonly id: string
  readonly rest: string
}

/** A figure, or a letter by itself. */
const mayCount = /\d|(?<!\p{L})[A-H](?!\p{L})/iu

/** "Tree 1 dia (in)", "T2_height", "Height (ft) - tree 3": the tree and what is left; "Tree 1" leaves nothing. */
function marked(cell: Cell | undefined): Marked | null {
  if (typeof cell !== 'string' || cell.length > 60 || !mayCount.test(cell)) return null
  const text = cell
    .replace(/_+/g, ' ')
    .replace(/(\p{L}{2})(?=\d)/gu, '$1 ')
    .replace(/(?<=^\S+\s?\d+)(?=\p{L}{2})/u, ' ')
    .trim()
  const front = before.exec(text)
  if (front !== null) return { id: (front[1] ?? front[2] ?? '').toUpperCase(), rest: (front[3] ?? '').trim() }
  const back = behind.exec(text)
  return back === null ? null : { id: (back[2] ?? '').toUpperCase(), rest: (back[1] ?? '').trim() }
}

/** The groups of a row whose marks say which tree each column is of. */
function grouped(
  marks: readonly (Marked | null)[],
  filled: readonly number[],
  rows: Pick<TreeGroups, 'names' | 'titles'>
): TreeGroups | null {
  const trees = new Map<string, { at: number; columns: Map<string, number> }>()
  const names = new Map<string, string>()
  for (const column of filled) {
    const mark = marks[column]
    if (mark === null || mark === undefined || mark.rest === '') continue
    const key = fold(mark.rest).replace(/\s+/g, ' ')
    const tree = trees.get(mark.id) ?? { at: column, columns: new Map<string, number>() }
    if (tree.columns.has(key)) return null
    tree.columns.set(key, column)
    trees.set(mark.id, tree)
    if (!names.has(key)) names.set(key, mark.rest)
  }
  const all = [...trees.values()]
  const shared = [...names].filter(([key]) => all.filter(({ columns }) => columns.has(key)).length >= 2)
  const known = shared.filter(([, name]) => namedField(name) !== null)
  if (trees.size < 2 || known.length === 0 || known.length < shared.length * mostlyKnown) return null
  const keys = [...names.keys()]
  return {
    ...rows,
    common: filled.filter((column) => !all.some(({ columns }) => [...columns.values()].includes(column))),
    bases: [...names.values()],
    trees: [...trees].map(([tree, { at, columns }]) => ({
      id: tree,
      at,
      columns: keys.map((key) => columns.get(key) ?? -1)
    }))
  }
}

/** Titles such as "Tree 1" over the names of the row below, which come again under each. */
function underTitles(titles: readonly Cell[], names: readonly Cell[], row: number): TreeGroups | null {
  // Values beside labels are a form of each tree.
  if (filledIn(names).length < 4 || names.some((cell) => typeof cell === 'number')) return null
  const marks: (Marked | null)[] = []
  let over: string | null = null
  let met = 0
  for (let column = 0; column < Math.max(titles.length, names.length); column++) {
    const title = titles[column]
    if (!isBlank(title)) {
      const mark = marked(title)
      over = mark?.rest === '' ? mark.id : null
      if (over !== null) met++
    }
    marks.push(
      over === null || isBlank(names[column]) ? null : { id: over, rest: String(names[column]).trim() }
    )
  }
  const filled = marks.flatMap((mark, column) =>
    mark === null &&
    isBlank(names[column]) &&
    (isBlank(titles[column]) || marked(titles[column])?.rest === '')
      ? []
      : [column]
  )
  return met < 2 ? null : grouped(withoutStrays(marks), filled, { names: row, titles: row - 1 })
}

/** What stands behind the last tree and below no title of its own, such as notes, is of the row. */
function withoutStrays(marks: readonly (Marked | null)[]): (Marked | null)[] {
  const last = marks.filter((mark) => mark !== null).at(-1)?.id
  const others = new Set(
    marks.flatMap((mark) => (mark === null || mark.id === last ? [] : [fold(mark.rest)]))
  )
  return marks.map((mark) =>
    mark !== null && mark.id === last && !others.has(fold(mark.rest)) ? null : mark
  )
}

/** Names that count the trees without the word, where the kind of each comes again with its size: "Species 1", "DBH 1". */
function counted(cells: readonly Cell[], counting: Counting, row: number): TreeGroups | null {
  const marks = cells.map((cell): Marked | null => {
    const found = typeof cell === 'string' ? counting(cell) : null
    return found === null ? null : { id: found.count, rest: found.rest }
  })
  const found = grouped(marks, filledIn(cells), { names: row, titles: row })
  if (found === null) return null
  const fields = found.bases.map((base, at) =>
    found.trees.every(({ columns }) => (columns[at] ?? -1) >= 0) ? namedField(base) : null
  )
  const hasSize = fields.some((field) => field === 'trunk' || field === 'height')
  return fields.includes('species') && hasSize ? found : null
}

/** The first rows whose columns repeat for each tree, or null. */
export function treeGroups(rows: readonly (readonly Cell[])[]): TreeGroups | null {
  for (let row = 0; row < Math.min(rows.length, looked); row++) {
    const cells = rows[row] ?? []
    const marks = cells.map(marked)
    const count = marks.filter((mark) => mark !== null).length
    const below = rows[row + 1] ?? []
    const found =
      count >= 2
        ? (grouped(marks, filledIn(cells), { names: row, titles: row }) ?? underTitles(cells, below, row + 1))
        : (counted(cells, byNumber, row) ?? counted(cells, byLetter, row))
    if (found !== null) return found
  }
  return null
}
