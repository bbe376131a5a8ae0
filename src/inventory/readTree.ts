import { quoted, type Cell } from '../../shared/cells'
import { problem } from '../../shared/problems'
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

/** What a tree's rows said so far, as typed, so that repeated values are compared and not read again. */
interface Typed {
  cells: (Cell | undefined)[]
  rows: number[]
}

/** Reads a tree's own columns: from its first row, and from later rows what was blank before. */
export class TreeReader {
  private readonly columns: readonly KeptColumn[]
  private readonly typed = new Map<OpenTree, Typed>()

  constructor(
    readers: Readers,
    private readonly inventory: OpenInventory
  ) {
    this.columns = keptColumns(readers, 'tree').filter(({ key }) => key !== 'id')
  }

  begin(id: string, row: number): OpenTree {
    const tree: OpenTree = { ...nothing, id, row, limbs: [] }
    this.typed.set(tree, { cells: [], rows: [] })
    this.continue(tree, row)
    return tree
  }

  continue(tree: OpenTree, row: number): void {
    const typed = this.typed.get(tree)
    if (typed === undefined) return
    for (let at = 0; at < this.columns.length; at++) {
      const column = this.columns[at]
      if (column === undefined) continue
      const cell = column.reader.raw(row)
      const known = typed.cells[at]
      if (cell === known || column.reader.isBlank(row)) continue
      if (known === undefined) {
        typed.cells[at] = cell
        typed.rows[at] = row
        put(tree, column, column.reader.read(row), this.inventory.problems)
      } else if (String(cell).trim() !== String(known).trim())
        this.reportTwoValues(tree, column, row, known, typed.rows[at] ?? 0)
    }
  }

  private reportTwoValues(
    tree: OpenTree,
    { reader }: KeptColumn,
    row: number,
    known: Cell,
    first: number
  ): void {
    const facts = {
      tree: tree.id,
      column: reader.column.name,
      first: quoted(known),
      other: reader.address(first),
      text: String(reader.raw(row) ?? '').trim()
    }
    this.inventory.problems.push(problem('duplicate-tree', reader.address(row), facts))
  }
}
