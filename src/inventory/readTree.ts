import { quoted, type Cell } from '../../shared/cells'
import { problem } from '../../shared/problems'
import type { CellReader } from './cellReader'
import {
  blankTree,
  keptColumns,
  put,
  template,
  type Building,
  type KeptColumn,
  type Readers
} from './columnReaders'
import type { Limb, OpenInventory, Tree } from './inventory'

/** A tree to which rows are still added. */
export type OpenTree = Building<Omit<Tree, 'limbs'>> & { readonly limbs: Limb[] }

const nothing: Tree = template({ ...blankTree, row: 0, limbs: [] })

/** A tree of which no row was read yet. */
export function newTree(id: string, row: number): OpenTree {
  return { ...nothing, id, row, limbs: [] }
}

/** What a tree's rows said so far, as typed, so that repeated values are compared and not read again. */
interface Typed {
  readonly cells: (Cell | undefined)[]
  readonly rows: number[]
  readonly readers: CellReader[]
}

/** What was typed of each tree, by the columns of the dictionary; the parts of an inventory share it. */
export type TypedOfTrees = Map<OpenTree, Typed>

/** Reads a tree's own columns: from its first row, and from later rows what was blank before. */
export class TreeReader {
  private readonly columns: readonly KeptColumn[]

  constructor(
    readers: Readers,
    private readonly inventory: OpenInventory,
    private readonly typed: TypedOfTrees
  ) {
    this.columns = keptColumns(readers, 'tree').filter(({ key }) => key !== 'id')
  }

  /** Adds what a row of the part says of the tree. */
  add(tree: OpenTree, row: number): void {
    let typed = this.typed.get(tree)
    if (typed === undefined) {
      typed = { cells: [], rows: [], readers: [] }
      this.typed.set(tree, typed)
    }
    for (const column of this.columns) {
      const cell = column.reader.raw(row)
      const known = typed.cells[column.place]
      if (cell === known || column.reader.isBlank(row)) continue
      if (known === undefined) {
        typed.cells[column.place] = cell
        typed.rows[column.place] = row
        typed.readers[column.place] = column.reader
        put(tree, column, column.reader.read(row), this.inventory.problems)
      } else if (String(cell).trim() !== String(known).trim()) this.reportTwoValues(tree, column, row, typed)
    }
  }

  private reportTwoValues(tree: OpenTree, { reader, place }: KeptColumn, row: number, typed: Typed): void {
    const facts = {
      tree: tree.id,
      column: reader.column.name,
      first: quoted(typed.cells[place]),
      other: typed.readers[place]?.address(typed.rows[place] ?? 0) ?? '',
      text: String(reader.raw(row) ?? '').trim()
    }
    this.inventory.problems.push(problem('duplicate-tree', reader.address(row), facts))
  }
}
