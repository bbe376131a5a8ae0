import { areaOf, cellAddress, type Area } from './cells'
import type { Place } from './problems'
import { grouped } from './words/figures'
import { listed } from './words/lists'
import { rowsNamed, someOf } from './words/some'

/** Cells that are named one by one, where there are no more; of more, three and their range. */
const mostNamed = 4

/** A cell by its row and column, counted from 0. */
interface CellPlace {
  readonly row: number
  readonly column: number
}

/** Where a cell stands; null where the text is no address of one cell. Read sign by sign, as there can be tens of thousands. */
function placeOf(cell: string, from: number): CellPlace | null {
  let at = from
  let column = 0
  for (let sign = cell.charCodeAt(at); sign >= 65 && sign <= 90; sign = cell.charCodeAt(++at))
    column = column * 26 + sign - 64
  const digits = at
  let row = 0
  for (let sign = cell.charCodeAt(at); sign >= 48 && sign <= 57; sign = cell.charCodeAt(++at))
    row = row * 10 + sign - 48
  if (column === 0 || at === digits || at < cell.length) return null
  return { row: row - 1, column: column - 1 }
}

/** The places of cells of one sheet, whose name with its mark stands before each; null where they are not all of it. */
function placesOn(sheet: string, cells: readonly string[]): CellPlace[] | null {
  const places: CellPlace[] = []
  for (const cell of cells) {
    const place = cell.startsWith(sheet) ? placeOf(cell, sheet.length) : null
    if (place === null) return null
    places.push(place)
  }
  return places
}

function inOrder(one: CellPlace, other: CellPlace): number {
  return one.row - other.row || one.column - other.column
}

/** The row that an address ends in, counted from 1; 0 where it ends in none. */
export function rowOf(cell: string): number {
  let row = 0
  let unit = 1
  for (let at = cell.length - 1; at >= 0; at--, unit *= 10) {
    const digit = cell.charCodeAt(at) - 48
    if (digit < 0 || digit > 9) break
    row += digit * unit
  }
  return row
}

/** The smallest area that holds them all. */
function around(places: readonly CellPlace[]): Area {
  let [top, bottom, left, right] = [Infinity, 0, Infinity, 0]
  for (const { row, column } of places) {
    top = Math.min(top, row)
    bottom = Math.max(bottom, row)
    left = Math.min(left, column)
    right = Math.max(right, column)
  }
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 }
}

/**
 * Several cells of a sheet in words: "Trees!C5, C7 and C9", "C5:C40" where none is left out, otherwise "C5, C7, C9 and 12
 * more in C5:C40".
 */
export function cellsNamed(cells: readonly string[]): string {
  const [some = ''] = cells
  const sheet = some.slice(0, some.lastIndexOf('!') + 1)
  const found = placesOn(sheet, cells)
  if (found === null) return someOf([...new Set(cells)])
  found.sort(inOrder)
  const places = found.filter((place, at) => {
    const before = found[at - 1]
    return before === undefined || inOrder(before, place) !== 0
  })
  const range = around(places)
  const line = range.rows === 1 || range.columns === 1
  if (places.length > 2 && line && range.rows * range.columns === places.length) return sheet + areaOf(range)
  const all = places.length <= mostNamed
  const short = (all ? places : places.slice(0, mostNamed - 1)).map(({ row, column }) =>
    cellAddress(row, column)
  )
  if (all) return sheet + listed(short)
  return sheet + listed([...short, `${grouped(places.length - short.length)} more in ${areaOf(range)}`])
}

/** Rows that lack a column, in words: "rows 2 to 40, no column “Role”". */
export function placesNamed(places: readonly Place[]): string {
  const headers = [...new Set(places.map(({ header }) => header))]
  const named = listed(headers.map((header) => `“${header}”`))
  return `${rowsNamed(places.map(({ row }) => row))}, no column ${named}`
}
