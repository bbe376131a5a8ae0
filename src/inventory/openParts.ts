import type { Cell } from '../../shared/cells'
import type { Field } from '../../shared/columns'
import { cellReader, type CellReader } from './cellReader'
import type { InventoryPart } from './inventory'
import type { Part } from './survey/part'

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
      if (match.field !== null) readers.set(match.field, cellReader(part.block, match, match.field))
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

function openAt(parts: readonly OpenPart[], row: number): OpenPart | undefined {
  return parts.find(({ part, first }) => row >= first && row < first + part.block.rows.length)
}

/** The cells of a row of the inventory, in its own part. */
export function cellsAt(parts: readonly OpenPart[], row: number): readonly Cell[] {
  const open = openAt(parts, row)
  return open?.part.block.rows[row - open.first] ?? []
}

/** The address of a field in a row of the inventory; that of the row’s first known column where its part has no such one. */
export function addressAt(parts: readonly OpenPart[], row: number, field: Field): string {
  const open = openAt(parts, row)
  if (open === undefined) return ''
  const [first] = open.readers.values()
  return (open.readers.get(field) ?? first)?.address(row - open.first) ?? ''
}
