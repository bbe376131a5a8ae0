/** Plain rows of cells for the grid, with the first row as headers and columns as wide as their texts need. */
import type { ICellData, IWorksheetData } from '@univerjs/core'
import type { Cell } from '../../../shared/cells'

function plainCell(value: Cell): ICellData | null {
  if (value === null || value === '') return null
  if (typeof value === 'number') return { v: value, t: 2 }
  return typeof value === 'boolean' ? { v: value ? 1 : 0, t: 3 } : { v: value, t: 1 }
}

export function plainCells(rows: Cell[][]): IWorksheetData['cellData'] {
  const cells: IWorksheetData['cellData'] = {}
  rows.forEach((row, index) => {
    const line: Record<number, ICellData> = {}
    row.forEach((value, column) => {
      const cell = plainCell(value)
      if (cell) line[column] = index === 0 ? { ...cell, s: 'header' } : cell
    })
    cells[index] = line
  })
  return cells
}

/** About seven pixels a character; headers may wrap to two lines, long notes are cut off at the edge. */
export function widthsFor(rows: Cell[][]): IWorksheetData['columnData'] {
  const widths: IWorksheetData['columnData'] = {}
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0)
  for (let column = 0; column < columns; column++) {
    const length = (row: Cell[] | undefined) => String(row?.[column] ?? '').length
    const longest = rows.slice(1).reduce((most, row) => Math.max(most, length(row)), 0)
    const header = Math.max(
      ...String(rows[0]?.[column] ?? '')
        .split(' ')
        .map((part) => part.length),
      0
    )
    const half = Math.ceil(length(rows[0]) / 2) + 1
    widths[column] = { w: Math.min(260, Math.round(7.2 * Math.max(4, longest, header + 1, half) + 14)) }
  }
  return widths
}
