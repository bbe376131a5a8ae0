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

/** What was typed of each tree; the parts of an inventory share it, whatever their columns. */
export class TypedOfTrees {
  private readonly trees = new Map<OpenTree, Typed>()
  private readonly slots = new Map<number, number>()

  of(tree: OpenTree): Typed {
    let typed = this.trees.get(tree)
    if (typed === undefined) {
      typed = { cells: [], rows: [], readers: [] }
      this.trees.set(tree, typed)
    }
    return typed
  }

  /** The slot of a column, the same in every part that has it. */
  slot({ place }: KeptColumn): number {
    const slot = this.slots.get(place) ?? this.slots.size
    this.slots.set(place, slot)
    return slot
  }
}

interface TreeColumn extends KeptColumn {
  readonly slot: number
}

/** Reads a tree's own columns: from its first row, and from later rows what was blank before. */
export class TreeReader {
  private readonly columns: readonly TreeColumn[]

  constructor(
    readers: Readers,
    private readonly inventory: OpenInventory,
    private readonly typed: TypedOfTrees
  ) {
    this.columns = keptColumns(readers, 'tree')
      .filter(({ key }) => key !== 'id')
      .map((column) => ({ ...column, slot: typed.slot(column) }))
  }

  /** Adds what a row of the part says of the tree. */
  add(tree: OpenTree, row: number): void {
    if (this.columns.length === 0) return
    const typed = this.typed.of(tree)
    for (const column of this.columns) {
      const cell = column.reader.raw(row)
      const known = typed.cells[column.slot]
      if (cell === known || column.reader.isBlank(row)) continue
      if (known === undefined) {
        typed.cells[column.slot] = cell
        typed.rows[column.slot] = row
        typed.readers[column.slot] = column.reader
        put(tree, column, column.reader.read(row), this.inventory.problems)
      } else if (String(cell).trim() !== String(known).trim()) this.reportTwoValues(tree, column, row, typed)
    }
  }

  private reportTwoValues(tree: OpenTree, { reader, slot }: TreeColumn, row: number, typed: Typed): void {
    const facts = {
      tree: tree.id,
      column: reader.column.name,
      first: quoted(typed.cells[slot]),
      other: typed.readers[slot]?.address(typed.rows[slot] ?? 0) ?? '',
      text: String(reader.raw(row) ?? '').trim()
    }
    this.inventory.problems.push(problem('duplicate-tree', reader.address(row), facts))
  }
}
