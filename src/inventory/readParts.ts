import { isBlank, type Cell } from '../../shared/cells'
import { columns, type Field } from '../../shared/columns'
import { problem, type Problem } from '../../shared/problems'
import { CellReader } from './cellReader'
import { leaveUnplanned, type InventoryPart, type Limb, type OpenInventory } from './inventory'
import { LimbReader, type SaidOfColumns } from './readLimb'
import { newTree, TreeReader, TypedOfTrees, type OpenTree } from './readTree'
import type { IdentifiedRow } from './survey/identity'
import type { Part } from './survey/part'
import { resolveParents } from './survey/parents'
import { treeKey } from './survey/treeKeys'

const limbFields = new Set<Field>(
  columns.flatMap(({ of, field }) => (of === 'limb' && field !== 'notes' ? [field] : []))
)

/** A part with the readers of its columns. */
export interface OpenPart {
  readonly part: Part
  readonly readers: ReadonlyMap<Field, CellReader>
  /** The inventory's number of the part's row 0. */
  readonly first: number
}

/** The parts with their readers, and the numbers by which an inventory counts their rows. */
export function openParts(parts: readonly Part[]): OpenPart[] {
  let first = 0
  return parts.map((part) => {
    const readers = new Map<Field, CellReader>()
    for (const match of part.matches)
      if (match.field !== null) readers.set(match.field, new CellReader(part.block, match, match.field))
    const opened = { part, readers, first }
    first += part.block.rows.length
    return opened
  })
}

/** The same as the inventory keeps them, to find the place of a row. */
export function inventoryParts(parts: readonly OpenPart[]): InventoryPart[] {
  return parts.map(({ part: { block, matches }, first }) => {
    const { sheet, top, left, placeOf } = block
    const part = { sheet, top, left, first, count: block.rows.length, matches }
    return placeOf === undefined ? part : { ...part, placeOf }
  })
}

interface RowReaders extends OpenPart {
  readonly trees: TreeReader
  readonly limbs: LimbReader
  readonly limbColumns: readonly number[]
}

interface Entry {
  readonly tree: OpenTree
  /** Where each limb was given first. */
  readonly ids: Map<string, { readonly reads: RowReaders; readonly row: number }>
}

/** Says in a column of limbs that the tree has none. */
const noLimb = /^(?:none|no limbs?|-+|–|0|n\/a|keine?r?|aucune?|ning[uú]n[oa]?)$/i

function hasAny(cells: readonly Cell[], columns: readonly number[]): boolean {
  let only: Cell | undefined
  for (const column of columns) {
    const cell = cells[column]
    if (cell === undefined || isBlank(cell)) continue
    if (only !== undefined) return true
    only = cell
  }
  return only !== undefined && !(typeof only === 'string' && noLimb.test(only.trim()))
}

/** Reads rows into trees and limbs; each row belongs to the tree whose id it bears. */
export class RowSorter {
  private readonly entries = new Map<string, Entry>()
  private readonly readers: ReadonlyMap<Part, RowReaders>

  constructor(
    private readonly inventory: OpenInventory,
    parts: readonly OpenPart[],
    said: SaidOfColumns
  ) {
    const typed = new TypedOfTrees()
    this.readers = new Map(
      parts.map(({ part, readers, first }) => {
        const trees = new TreeReader(readers, inventory, typed)
        const limbs = new LimbReader(readers, inventory, said, first, part.group)
        const limbColumns = part.matches.flatMap(({ field, column }) =>
          field !== null && limbFields.has(field) ? [column] : []
        )
        return [part, { part, readers, first, trees, limbs, limbColumns }]
      })
    )
  }

  add({ part, row, id, key }: IdentifiedRow): void {
    const reads = this.readers.get(part)
    if (reads === undefined) throw new Error('A row of a part that is not read')
    let entry = this.entries.get(key)
    if (entry === undefined) {
      entry = { tree: newTree(id, reads.first + row), ids: new Map() }
      this.entries.set(key, entry)
      this.inventory.trees.push(entry.tree)
    }
    reads.trees.add(entry.tree, row)
    const cells = part.block.rows[row]
    if (cells !== undefined && hasAny(cells, reads.limbColumns)) this.addLimb(entry, reads, row)
  }

  /** Once all rows of their trees are read, limbs know their parents. */
  finish(): void {
    for (const { tree } of this.entries.values()) resolveParents(tree)
  }

  private addLimb({ tree, ids }: Entry, reads: RowReaders, row: number): void {
    const limb: Limb = reads.limbs.read(tree, row)
    const key = treeKey(limb.id)
    const first = ids.get(key)
    if (first === undefined) {
      this.inventory.limbCount++
      ids.set(key, { reads, row })
      tree.limbs.push(limb)
      return
    }
    const addressOf = ({ readers }: RowReaders, at: number): string => readers.get('limb')?.address(at) ?? ''
    const facts = { limb: limb.id, tree: tree.id, other: addressOf(first.reads, first.row) }
    const duplicate = problem('duplicate-limb', addressOf(reads, row), facts)
    this.inventory.problems.push(duplicate)
    leaveUnplanned(this.inventory, tree.id, limb.row, duplicate.message)
  }
}

/** Rows that belong to no tree are not planned. */
export function refuseRows(
  inventory: OpenInventory,
  parts: readonly OpenPart[],
  refused: readonly { part: Part; row: number; why: Problem }[]
): void {
  for (const { part, row, why } of refused) {
    const first = parts.find((each) => each.part === part)?.first ?? 0
    inventory.problems.push(why)
    leaveUnplanned(inventory, '', first + row, why.message)
  }
}
