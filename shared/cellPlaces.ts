import { areaOf, cellAddress } from './cells'
import { boundingArea, parseAddress } from './a1Notation'
import type { Place } from './problems'
import { grouped } from './words/figures'
import { listed } from './words/lists'
import { rowsNamed, someOf } from './words/some'

/** Cells that are named one by one, where there are no more; of more, three and their range. */
const mostNamed = 4

/** A cell by its place, counted from 0; `sheet` is its sheet's name as it stands before an address, with its mark. */
export interface CellPlace {
  readonly row: number
  readonly column: number
  readonly sheet: string
}

/** Where a cell stands; null where the text is no address of a cell. */
export function placeOf(cell: string): CellPlace | null {
  const area = parseAddress(cell)?.area
  if (area === undefined) return null
  return { row: area.row, column: area.column, sheet: cell.slice(0, cell.lastIndexOf('!') + 1) }
}

/** By row, then by column. */
export function inOrderOfPlace(one: CellPlace | null, other: CellPlace | null): number {
  if (one === null || other === null || one.sheet !== other.sheet) return 0
  return one.row - other.row || one.column - other.column
}

/**
 * Several cells of a sheet in words: "Trees!C5, C7 and C9", "C5:C40" where none is left out, otherwise "C5, C7, C9 and 12
 * more in C5:C40".
 */
export function cellsNamed(cells: readonly string[]): string {
  const all = [...new Set(cells)]
  const places = all.flatMap((cell) => placeOf(cell) ?? []).sort(inOrderOfPlace)
  const [first] = places
  if (first === undefined || places.length < all.length) return someOf(all)
  if (places.some(({ sheet }) => sheet !== first.sheet)) return someOf(all)
  const range = places.map(({ row, column }) => ({ row, column, rows: 1, columns: 1 })).reduce(boundingArea)
  const whole = range.rows * range.columns === all.length && (range.rows === 1 || range.columns === 1)
  if (all.length > 2 && whole) return first.sheet + areaOf(range)
  const short = places.map(({ row, column }) => cellAddress(row, column))
  if (short.length <= mostNamed) return first.sheet + listed(short)
  const rest = `${grouped(short.length - mostNamed + 1)} more in ${areaOf(range)}`
  return first.sheet + listed([...short.slice(0, mostNamed - 1), rest])
}

/** Rows that lack a column, in words: "rows 2 to 40, no column “Role”". */
export function placesNamed(places: readonly Place[]): string {
  const headers = [...new Set(places.map(({ header }) => `“${header}”`))]
  return `${rowsNamed(places.map(({ row }) => row))}, no column ${listed(headers)}`
}
