import { parseAddress } from '../shared/a1Notation'
import { counted } from '../shared/words/counts'
import { listed } from '../shared/words/lists'
import type { Selected, SelectedCells, SheetsRead } from './surface'

/** Addresses that the line names; of more, their number. */
const mostNamed = 4

function sizeWords(rows: number, columns: number): string {
  if (rows > 1) return `${counted(rows - 1, 'row')}, ${counted(columns, 'column')}`
  return columns <= 1 ? 'one cell' : `one row, ${counted(columns, 'column')}`
}

/** What would be read, in words: "Inventory!A1:P64: 63 rows, 16 columns", the header row not counted. */
export function selectionWords(selected: Selected | null): string {
  if (selected === null) return 'Looking for the inventory'
  const { problem, places } = selected
  if (problem !== null) return problem.message
  const [only, ...others] = places
  if (only === undefined) return 'No inventory was found.'
  if (others.length === 0) return `${only.address}: ${sizeWords(only.rows, only.columns)}`
  const named = places.slice(0, mostNamed).map(({ address }) => address)
  const more = places.length - named.length
  const rows = places.reduce((sum, place) => sum + place.rows, 0)
  return `${listed(more > 0 ? [...named, counted(more, 'more sheet')] : named)}: ${counted(rows, 'row')}`
}

/** What to do next about the selection, or how it was understood. */
export function selectionHint(selected: Selected | null): string {
  if (selected === null) return ''
  if (selected.problem !== null) return selected.problem.remedy
  if (selected.places.length === 0)
    return 'An inventory has a header row and below it one row per limb or one row per tree.'
  return selected.range === null
    ? 'Wherever a cell is selected, this is read. To plan a part only, select it with its header row.'
    : selected.remark
}

/** The selection means what was planned: all of the inventory, the same range, or cells within that range. */
export function pointsInto(selected: Selected | null, { range }: SheetsRead): boolean {
  if (selected === null || selected.problem !== null) return false
  if (selected.range !== null || range === null) return selected.range === range
  return liesIn(selected.cells, range)
}

function liesIn(cells: SelectedCells | null, range: string): boolean {
  const place = parseAddress(range)
  if (cells === null || place === null || cells.sheet !== place.sheet) return false
  const { row, column, rows, columns } = place.area
  return (
    cells.row >= row &&
    cells.row + cells.rows <= row + rows &&
    cells.column < column + columns &&
    cells.column + cells.columns > column
  )
}
