import { cellAddress, type CellBlock } from '../shared/cells'
import type { Selected, SelectedCells } from './surface'
import { counted } from '../shared/words/counts'

/** The selection's size in words: "Inventory!A1:P64: 63 rows, 16 columns", the header row not counted. */
export function selectionWords(selected: Selected | null): string {
  if (selected === null) return 'Looking at the selection'
  if (selected.problem !== null) return selected.problem.message
  if (selected.address === '') return 'Nothing is selected.'
  const { address, rows, columns } = selected
  const size =
    rows <= 1
      ? columns <= 1
        ? 'one cell'
        : `one row, ${counted(columns, 'column')}`
      : `${counted(Math.max(0, rows - 1), 'row')}, ${counted(columns, 'column')}`
  return `${address}: ${size}`
}

/** What to do next about the selection, or how it was understood; an empty text where there is nothing to say. */
export function selectionHint(selected: Selected | null): string {
  if (selected === null) return ''
  if (selected.problem !== null) return selected.problem.remedy
  const how = 'Select the inventory with its header row: one row per limb, or one row per tree.'
  return selected.address === '' || selected.rows <= 1 ? how : selected.remark
}

/** The address of a whole block of cells: Inventory!A1:P64. */
export function blockAddress({ sheet, top, left, rows }: CellBlock): string {
  const width = rows[0]?.length ?? 1
  return `${cellAddress(top, left, sheet)}:${cellAddress(top + rows.length - 1, left + width - 1)}`
}

/**
 * The selection only points into the block that was planned: it is the block itself, or rows of it that are no part
 * with the headers on top, which could be planned alone.
 */
export function pointsInto(cells: SelectedCells | null, block: CellBlock): boolean {
  if (cells?.sheet !== block.sheet) return false
  const height = block.rows.length
  const width = block.rows[0]?.length ?? 0
  const within =
    cells.row >= block.top &&
    cells.row + cells.rows <= block.top + height &&
    cells.column < block.left + width &&
    cells.column + cells.columns > block.left
  const isPart = cells.row === block.top && cells.rows > 1 && cells.rows < height
  return within && !isPart
}
