/** Which tree a picture on a sheet of the inventory shows, and the files of photographs that its columns name. */
import { cellAddress, isBlank } from '../../shared/cells'
import { cellPlace, partOf, rowPlace, type Inventory, type InventoryPart, type Tree } from './inventory'
import type { SheetCells } from './survey/sheetCells'

/** A file that a cell names as the photograph of a tree. */
export interface NamedPhotograph {
  readonly tree: string
  readonly file: string
  readonly cell: string
}

/** The tree of the first of these rows of a sheet, counted from 0, that any tree has; null where none has. */
export type TreeInRows = (sheet: string, from: number, to: number) => string | null

const rowsOf = ({ row, limbs }: Tree): number[] => [row, ...limbs.map((limb) => limb.row)]

/** Finds the tree that a picture over rows of a sheet shows. */
export function treeInRows(inventory: Inventory): TreeInRows {
  const trees = new Map<string, string>()
  for (const tree of inventory.trees)
    for (const row of rowsOf(tree)) {
      const { sheet, number } = rowPlace(inventory, row)
      const at = `${String(number - 1)} ${sheet}`
      if (!trees.has(at)) trees.set(at, tree.id)
    }
  return (sheet, from, to) => {
    for (let row = from; row <= to; row++) {
      const tree = trees.get(`${String(row)} ${sheet}`)
      if (tree !== undefined) return tree
    }
    return null
  }
}

/** What a header says that is over photographs, in any of the languages of headers. */
const overPhotographs = /photo|pictur|\bpics?\b|image|imagen|foto|bild/

const folded = (header: string): string => header.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()

function columnsOf({ matches }: InventoryPart): number[] {
  return matches
    .filter(({ field, header }) => field === null && overPhotographs.test(folded(header)))
    .map(({ column }) => column)
}

/** The first file that a cell names; several stand with signs between them. */
function fileIn(cell: unknown): string {
  const [first = ''] = String(cell ?? '').split(/[;|\n]|,\s+/)
  return first.trim().replace(/^["'“”]+|["'“”]+$/g, '')
}

/** The files that columns of the inventory name, one a tree at most. */
export function namedPhotographs(
  inventory: Inventory,
  sheets: readonly SheetCells[],
  wanted: ReadonlySet<string>
): NamedPhotograph[] {
  const columns = new Map(inventory.parts.map((part) => [part, columnsOf(part)]))
  if ([...columns.values()].every((found) => found.length === 0)) return []
  const byName = new Map(sheets.map((sheet) => [sheet.name, sheet]))
  const nameAt = (row: number): { file: string; cell: string } | null => {
    const part = partOf(inventory, row)
    const sheet = byName.get(part.sheet)
    for (const column of sheet === undefined ? [] : (columns.get(part) ?? [])) {
      const place = cellPlace(part, row - part.first, column)
      const cell = sheet?.rows[place.row - sheet.top]?.[place.column - sheet.left]
      const file = isBlank(cell) ? '' : fileIn(cell)
      if (file !== '') return { file, cell: cellAddress(place.row, place.column, part.sheet) }
    }
    return null
  }
  return inventory.trees.flatMap((tree) => {
    if (!wanted.has(tree.id)) return []
    for (const row of rowsOf(tree)) {
      const found = nameAt(row)
      if (found !== null) return [{ tree: tree.id, ...found }]
    }
    return []
  })
}
