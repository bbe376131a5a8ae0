import { quoted, type Cell } from '../../shared/cells'
import type { Field } from '../../shared/columns'
import { problem } from '../../shared/problems'
import {
  blankTree,
  isAsked,
  keptColumns,
  put,
  template,
  type Building,
  type KeptColumn,
  type Readers
} from './columnReaders'
import type { Limb, OpenInventory, Tree } from './inventory'
import { isUnread } from './reading'
import type { OpenPart } from './openParts'

/** A tree to which rows are still added. */
export type OpenTree = Building<Omit<Tree, 'limbs'>> & { readonly limbs: Limb[] }

const nothing: Tree = template({ ...blankTree, row: 0, unplannable: null, limbs: [] })

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

/** What a tree's own columns are read with. */
export interface TreeReader {
  readonly open: OpenPart
  readonly inventory: OpenInventory
  readonly columns: readonly TreeColumn[]
  /** Where the columns stand in the block, and their slots: all that is needed where a row repeats what is known. */
  readonly places: readonly number[]
  readonly slots: readonly number[]
  readonly addressOf: (row: number, field: Field) => string
}

export function treeReader(
  open: OpenPart,
  inventory: OpenInventory,
  slots: Slots,
  addressOf: (row: number, field: Field) => string
): TreeReader {
  const columns = treeColumns(open.readers, slots)
  return {
    open,
    inventory,
    columns,
    places: columns.map(({ reader }) => reader.match.column),
    slots: columns.map(({ slot }) => slot),
    addressOf
  }
}

/** Adds what a row of the part says of the tree: from its first row, and from later rows what was blank before. */
export function addTreeRow(
  reader: TreeReader,
  tree: OpenTree,
  typed: Typed,
  cells: readonly Cell[],
  row: number
): void {
  const { places, slots } = reader
  const known = typed.cells
  for (let at = 0; at < places.length; at++) {
    const cell = cells[places[at] ?? -1]
    if (cell === null || cell === known[slots[at] ?? -1]) continue
    const column = reader.columns[at]
    if (column !== undefined) take(reader, tree, typed, row, column)
  }
}

function take(reader: TreeReader, tree: OpenTree, typed: Typed, row: number, column: TreeColumn): void {
  if (column.reader.isBlank(row)) return
  const cell = column.reader.raw(row)
  const known = typed.cells[column.slot]
  if (known === undefined) {
    typed.cells[column.slot] = cell
    typed.rows[column.slot] = reader.open.first + row
    const reading = column.reader.read(row)
    put(tree, column, reading, reader.inventory.problems)
    if (isUnread(reading) && isAsked(column.reads)) tree.unplannable ??= reading.message
  } else if (String(cell).trim() !== String(known).trim()) reportTwoValues(reader, tree, typed, row, column)
}

function reportTwoValues(
  { inventory, addressOf }: TreeReader,
  tree: OpenTree,
  typed: Typed,
  row: number,
  { reader, slot }: TreeColumn
): void {
  const facts = {
    tree: tree.id,
    column: reader.column.name,
    first: quoted(typed.cells[slot]),
    other: addressOf(typed.rows[slot] ?? 0, reader.column.field as Field),
    text: String(reader.raw(row) ?? '').trim()
  }
  inventory.problems.push(problem('duplicate-tree', reader.address(row), facts))
}
