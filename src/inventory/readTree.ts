import { quoted, type Cell } from '../../shared/cells'
import type { Field } from '../../shared/columns'
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
import type { OpenPart } from './openPart'

/** A tree to which rows are still added. */
export type OpenTree = Building<Omit<Tree, 'limbs'>> & { readonly limbs: Limb[] }

const nothing: Tree = template({ ...blankTree, row: 0, limbs: [] })

/** A tree of which no row was read yet. */
export function newTree(id: string, row: number): OpenTree {
  return { ...nothing, id, row, limbs: [] }
}

/** What a tree's rows said so far, as typed, so that repeated values are compared and not read again. */
export interface Typed {
  readonly cells: (Cell | undefined)[]
  /** The inventory's numbers of the rows that said so. */
  readonly rows: number[]
}

export function nothingTyped(): Typed {
  return { cells: [], rows: [] }
}

/** The slots of columns by their places in the dictionary, the same in all parts of an inventory. */
export type Slots = Map<number, number>

interface TreeColumn extends KeptColumn {
  readonly slot: number
}

function treeColumns(readers: Readers, slots: Slots): TreeColumn[] {
  return keptColumns(readers, 'tree').flatMap(({ reader, reads, key, place }) => {
    if (key === 'id') return []
    const slot = slots.get(place) ?? slots.size
    slots.set(place, slot)
    return [{ reader, reads, key, place, slot }]
  })
}

/** Reads a tree's own columns: from its first row, and from later rows what was blank before. */
export interface TreeReader {
  /** Adds what a row of the part says of the tree. */
  add(tree: OpenTree, typed: Typed, row: number): void
}

export function treeReader(
  { part, readers, first }: OpenPart,
  inventory: OpenInventory,
  slots: Slots,
  addressOf: (row: number, field: Field) => string
): TreeReader {
  const { rows } = part.block
  const columns = treeColumns(readers, slots)
  // Most cells say what the row above said, and only these two numbers are needed to see it.
  const at = columns.map(({ reader }) => reader.match.column)
  const slotAt = columns.map(({ slot }) => slot)

  function take(tree: OpenTree, typed: Typed, row: number, column: TreeColumn): void {
    const { reader, slot } = column
    if (reader.isBlank(row)) return
    const [cell, known] = [reader.raw(row), typed.cells[slot]]
    if (known === undefined) {
      typed.cells[slot] = cell
      typed.rows[slot] = first + row
      put(tree, column, reader.read(row), inventory.problems)
    } else if (String(cell).trim() !== String(known).trim()) reportTwoValues(tree, typed, row, column)
  }

  function reportTwoValues(tree: OpenTree, typed: Typed, row: number, { reader, slot }: TreeColumn): void {
    const facts = {
      tree: tree.id,
      column: reader.column.name,
      first: quoted(typed.cells[slot]),
      other: addressOf(typed.rows[slot] ?? 0, reader.column.field as Field),
      text: String(reader.raw(row) ?? '').trim()
    }
    inventory.problems.push(problem('duplicate-tree', reader.address(row), facts))
  }

  return {
    add(tree, typed, row) {
      const cells = rows[row] ?? []
      const known = typed.cells
      for (let index = 0; index < at.length; index++) {
        const cell = cells[at[index] ?? -1]
        if (cell === null || cell === known[slotAt[index] ?? -1]) continue
        const column = columns[index]
        if (column !== undefined) take(tree, typed, row, column)
      }
    }
  }
}
