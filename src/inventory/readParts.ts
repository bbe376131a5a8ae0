import { isBlank, type Cell } from '../../shared/cells'
import { columns, type Field } from '../../shared/columns'
import { problem, type Problem } from '../../shared/problems'
import { leaveUnplanned, type OpenInventory } from './inventory'
import { addressAt, cellsAt, type OpenPart } from './openParts'
import { limbReader, readLimb, type LimbReader, type SaidOfColumns } from './readLimb'
import {
  addTreeRow,
  newTree,
  nothingTyped,
  treeReader,
  type OpenTree,
  type Slots,
  type TreeReader,
  type Typed
} from './readTree'
import { noKeys, placeOrAdd, type FewKeys } from './survey/fewKeys'
import type { IdentifiedRow } from './survey/identity'
import type { Part } from './survey/part'
import { resolveParents } from './survey/parents'
import { treeKey } from './survey/treeKeys'
import { zoneAt, zonesOf, type Zones } from './survey/zones'

const limbFields = new Set<Field>(
  columns.flatMap(({ of, field }) => (of === 'limb' && field !== 'notes' ? [field] : []))
)

interface RowReaders extends OpenPart {
  readonly trees: TreeReader
  readonly limbs: LimbReader
  readonly limbColumns: readonly number[]
  readonly zones: Zones | null
}

interface Entry {
  readonly tree: OpenTree
  readonly typed: Typed
  /** The ids of its limbs, in their order. */
  readonly ids: FewKeys
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

/** What rows are sorted into. */
interface Sorted {
  readonly inventory: OpenInventory
  readonly parts: readonly OpenPart[]
  readonly readers: ReadonlyMap<Part, RowReaders>
  /** The trees by their ids. */
  readonly entries: Map<string, Entry>
}

/** Reads rows into trees and limbs; each belongs to the tree whose id it bears. */
export function sortRows(
  inventory: OpenInventory,
  parts: readonly OpenPart[],
  said: SaidOfColumns,
  rows: readonly IdentifiedRow[]
): void {
  const readers = rowReaders(inventory, parts, said)
  const sorted: Sorted = { inventory, parts, readers, entries: new Map() }
  for (const row of rows) addRow(sorted, row)
  // Once all rows of their trees are read, limbs know their parents.
  for (const { tree } of sorted.entries.values()) resolveParents(tree)
}

function addRow(sorted: Sorted, { part, row, id, key }: IdentifiedRow): void {
  const reads = sorted.readers.get(part)
  if (reads === undefined) throw new Error('A row of a part that is not read')
  const entry = sorted.entries.get(key) ?? addTree(sorted, key, newTreeAt(reads, id, row))
  const cells = part.block.rows[row] ?? []
  addTreeRow(reads.trees, entry.tree, entry.typed, cells, row)
  if (hasAny(cells, reads.limbColumns)) addLimb(sorted, entry, reads.limbs, row)
}

function newTreeAt({ first, zones }: RowReaders, id: string, row: number): OpenTree {
  const tree = newTree(id, first + row)
  if (zones !== null) tree.zone = zoneAt(zones, row)
  return tree
}

function addTree({ inventory, entries }: Sorted, key: string, tree: OpenTree): Entry {
  const entry = { tree, typed: nothingTyped(), ids: noKeys() }
  entries.set(key, entry)
  inventory.trees.push(tree)
  return entry
}

function rowReaders(
  inventory: OpenInventory,
  parts: readonly OpenPart[],
  said: SaidOfColumns
): ReadonlyMap<Part, RowReaders> {
  const slots: Slots = new Map()
  return new Map(
    parts.map((open) => {
      const { part, readers, first } = open
      const trees = treeReader(open, inventory, slots, (row, field) => addressAt(parts, row, field))
      const limbs = limbReader(open, inventory, said)
      const limbColumns = part.matches.flatMap(({ field, column }) =>
        field !== null && limbFields.has(field) ? [column] : []
      )
      return [part, { part, readers, first, trees, limbs, limbColumns, zones: zonesOf(part) }]
    })
  )
}

function addLimb({ inventory, parts }: Sorted, { tree, ids }: Entry, reader: LimbReader, row: number): void {
  const limb = readLimb(reader, tree, row)
  const before = placeOrAdd(ids, treeKey(limb.id))
  if (before < 0) {
    inventory.limbCount++
    tree.limbs.push(limb)
    return
  }
  const first = tree.limbs[before]?.row ?? 0
  const facts = { limb: limb.id, tree: tree.id, other: addressAt(parts, first, 'limb') }
  const code = isRepeated(cellsAt(parts, first), cellsAt(parts, limb.row)) ? 'row-repeated' : 'duplicate-limb'
  const duplicate = problem(code, addressAt(parts, limb.row, 'limb'), facts)
  inventory.problems.push(duplicate)
  leaveUnplanned(inventory, tree.id, limb.row, duplicate.message)
}

/** Whether a row says what an earlier one says; ids and what holds of the whole tree may stand on the first row alone. */
function isRepeated(first: readonly Cell[], row: readonly Cell[]): boolean {
  return row.every((cell, column) => isBlank(cell) || cell === first[column])
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
