import { isBlank, type Cell, type CellBlock } from '../../shared/cells'
import { namesColumns } from './headerRow'

/** How far down a sheet the headers are looked for; titles and notes may stand above them. */
const searchedRows = 25

/** A sheet as a file gives it. */
export interface FileSheet {
  name: string
  rows: Cell[][]
}

/** The row with the headers, or -1 where none of the first rows looks like headers. */
function headerRow(rows: readonly Cell[][]): number {
  return rows.slice(0, searchedRows).findIndex(namesColumns)
}

/** The part of a sheet from a row on, without blank rows and columns around it, every row equally wide. */
function blockFrom(sheet: FileSheet, top: number): CellBlock {
  const rows = sheet.rows.slice(top)
  while (rows.length > 0 && rows.at(-1)?.every(isBlank) === true) rows.pop()
  let left = Infinity
  let right = -1
  for (const row of rows)
    row.forEach((cell, column) => {
      if (isBlank(cell)) return
      left = Math.min(left, column)
      right = Math.max(right, column)
    })
  if (right < 0) return { rows: [], sheet: sheet.name, top, left: 0 }
  const cells = rows.map((row) =>
    Array.from({ length: right - left + 1 }, (_none, index) => row[left + index] ?? null)
  )
  return { rows: cells, sheet: sheet.name, top, left }
}

/**
 * The inventory among the sheets of a file: the first sheet with a row of inventory headers near its top, from that row
 * on. Where none has, the first sheet that holds anything, so that the reading can say what is missing.
 */
export function findInventory(sheets: readonly FileSheet[]): CellBlock {
  for (const sheet of sheets) {
    const top = headerRow(sheet.rows)
    if (top >= 0) return blockFrom(sheet, top)
  }
  const filled = sheets.find((sheet) => sheet.rows.some((row) => !row.every(isBlank)))
  if (filled === undefined) return { rows: [], sheet: sheets[0]?.name ?? '', top: 0, left: 0 }
  return blockFrom(
    filled,
    Math.max(
      0,
      filled.rows.findIndex((row) => !row.every(isBlank))
    )
  )
}
