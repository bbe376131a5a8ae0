import { isBlank, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { coupleIn, orderIn, pairIn } from '../headers/twoThings'
import type { SheetCells } from '../survey/sheetCells'
import type { SheetTable } from '../survey/sheetTables'
import { notParted } from './combinedColumns'
import { placedAt, rearranged, type Placed } from './placed'

/** Share of the filled cells that have to hold two numbers, and in which the second has to suit the first. House judgment. */
const mostly = 0.8

/** A column of the new rows: a column of the old ones, or one half of it. */
interface Half {
  readonly column: number
  readonly half: number | null
  readonly field: Field | null
}

interface Two {
  readonly column: number
  readonly fields: readonly [Field, Field]
}

/** A stem is mostly thicker than its limb, and a tip above its origin: whether two numbers stand in the order that is named. */
function isInOrder([first]: readonly [Field, Field], [one, other]: readonly [number, number]): boolean {
  return first === 'diameter' || first === 'origin' ? one <= other : one >= other
}

function twoIn({ sheet, header, rows }: SheetTable, column: number): Two | null {
  const name = header.columns.find((each) => each.column === column)?.name ?? ''
  const fields = orderIn(name)
  if (fields === null || coupleIn(name) === null) return null
  const cells = rows.map((row) => sheet.rows[row]?.[column]).filter((cell) => !isBlank(cell))
  const pairs = cells.map(pairOf).filter((pair) => pair !== null)
  const ordered = pairs.filter(([one, , other]) => isInOrder(fields, [one, other]))
  return pairs.length >= cells.length * mostly && ordered.length >= pairs.length * mostly
    ? { column, fields }
    : null
}

function pairOf(cell: Cell | undefined): readonly [number, string, number, string] | null {
  return typeof cell === 'string' ? pairIn(cell) : null
}

/**
 * The sheet with columns parted that hold two numbers in each cell under a header that names both, as "4.1/5.0" under
 * "Limb/stem dia (in)"; null where there are none. A cell without two numbers is refused as a whole.
 */
export function withPartedColumns(
  table: SheetTable
): { readonly sheet: SheetCells; readonly parted: number[] } | null {
  const { sheet, header } = table
  const two = header.columns.flatMap(({ column, meaning }) =>
    meaning.unused === 'two things' ? (twoIn(table, column) ?? []) : []
  )
  if (two.length === 0) return null
  const width = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0)
  const places = Array.from({ length: width }, (_none, column) => column).flatMap((column): Half[] => {
    const found = two.find((each) => each.column === column)
    return found === undefined
      ? [{ column, half: null, field: null }]
      : found.fields.map((field, half) => ({ column, half, field }))
  })
  const rows = sheet.rows.map((_cells, row) =>
    places.map(({ column, half }): Placed => {
      const placed = placedAt(sheet, row, column)
      if (half === null || row <= header.last) return placed
      const pair = pairOf(placed.cell)
      return { ...placed, cell: pair === null ? notParted(placed.cell, 2) : pair[half === 0 ? 1 : 3] }
    })
  )
  const given = new Map(
    places.flatMap(({ field }, column) => (field === null ? [] : [[column, field] as const]))
  )
  const { says } = sheet
  return {
    sheet: {
      ...rearranged(sheet, rows),
      given,
      ...(says === undefined
        ? {}
        : { says: (name: string, column: number) => says(name, places[column]?.column ?? column) })
    },
    parted: two.map(({ column }) => column)
  }
}
