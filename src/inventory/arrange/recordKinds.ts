import { isBlank, type Cell } from '../../../shared/cells'
import { readHeaderText } from '../headers/headerText'
import { fold } from '../headers/fold'
import type { SheetTable } from '../survey/sheetTables'
import type { SheetCells } from '../survey/sheetCells'
import { inFull, type Whose } from './inFull'
import { placedAt, rearranged, type Placed } from './placed'

/** Rows looked at, and share of the limbs whose tree a column has to name. House judgment. */
const looked = 400
const nearlyAll = 0.8

function kindOf(cell: Cell | undefined): Whose | null {
  if (typeof cell !== 'string' || cell.length > 24) return null
  const { notions, words } = readHeaderText(cell)
  if (words.length !== 1 || notions.has('tree') === notions.has('limb')) return null
  return notions.has('tree') ? 'tree' : 'limb'
}

/** The column that says of each row whether it is a tree's or a limb's, or -1. */
function kindColumn({ sheet, header, rows }: SheetTable): number {
  const first = rows.slice(0, looked)
  const found = header.columns.find(({ column }) => {
    const kinds = first.map((row) => kindOf(sheet.rows[row]?.[column]))
    return kinds.includes('tree') && kinds.includes('limb') && !kinds.includes(null)
  })
  return found?.column ?? -1
}

function textAt(sheet: SheetCells, row: number, column: number): string {
  const cell = sheet.rows[row]?.[column]
  return isBlank(cell) ? '' : fold(String(cell)).trim()
}

/** The column of the trees' ids and the one in which limbs name them; null where limbs only stand below their trees. */
function reference(
  sheet: SheetCells,
  columns: readonly number[],
  trees: readonly number[],
  limbs: readonly number[]
) {
  for (const id of columns) {
    const ids = new Set(trees.map((row) => textAt(sheet, row, id)))
    if (ids.has('') || ids.size !== trees.length) continue
    for (const by of columns) {
      const named = limbs.filter((row) => ids.has(textAt(sheet, row, by)))
      if (named.length >= limbs.length * nearlyAll) return { id, by }
    }
  }
  return null
}

/**
 * Rows of trees and rows of limbs under the same headers, told apart by a column of their kinds: the same rows with the
 * columns of the trees beside those of the limbs, each read as what it is of. Null where there is no such column.
 */
export function fromRecordKinds(table: SheetTable): SheetCells | null {
  const { sheet, header } = table
  const at = kindColumn(table)
  if (at < 0) return null
  const { names } = header
  const rows = table.rows.filter((row) => kindOf(sheet.rows[row]?.[at]) !== null)
  const of = (kind: Whose): number[] => rows.filter((row) => kindOf(sheet.rows[row]?.[at]) === kind)
  const [trees, limbs] = [of('tree'), of('limb')]
  const columns = header.columns.map(({ column }) => column).filter((column) => column !== at)
  const filled = (list: readonly number[], column: number): boolean =>
    list.some((row) => !isBlank(sheet.rows[row]?.[column]))
  const joined = reference(sheet, columns, trees, limbs)
  const ofTrees = columns.filter((column) => filled(trees, column))
  const ofLimbs = columns.filter((column) => filled(limbs, column) && column !== joined?.by)
  const blank = (row: number, column: number): Placed => ({ cell: null, row, column })
  const arranged = rows.map((row) => {
    const isTree = kindOf(sheet.rows[row]?.[at]) === 'tree'
    return [
      ...ofTrees.map((column) => {
        if (isTree) return placedAt(sheet, row, column)
        return column === joined?.id ? placedAt(sheet, row, joined.by) : blank(row, column)
      }),
      ...ofLimbs.map((column) => (isTree ? blank(row, column) : placedAt(sheet, row, column)))
    ]
  })
  const head = [...ofTrees, ...ofLimbs].map((column) => placedAt(sheet, names, column))
  return {
    ...rearranged(sheet, [head, ...arranged]),
    says: (name, column) => inFull(name, column < ofTrees.length ? 'tree' : 'limb')
  }
}
