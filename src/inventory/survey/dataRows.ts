import { isBlank, type Cell } from '../../../shared/cells'
import type { SheetTable } from './sheetTables'

/** Stands for "the same as above". */
const ditto = /^(?:["″”〃]{1,2}|''|’’|,,|do\.?|ditto|dito|idem|↓|[-–] ?["″”] ?[-–])$/i

function isDitto(cell: Cell | undefined): boolean {
  return typeof cell === 'string' && cell.length <= 7 && ditto.test(cell.trim())
}

/**
 * The rows of a table as its block holds them: the names first, then every row down to the last with data; a row of another
 * kind is empty. What a ditto mark or a merge over rows stands for is written out, in a copy of the row.
 */
export function dataRows({ sheet, header, rows }: SheetTable): Cell[][] {
  const last = rows.at(-1) ?? header.names
  const cells: Cell[][] = Array.from({ length: last - header.names + 1 }, () => [])
  cells[0] = [...(sheet.rows[header.names] ?? [])]
  const merges = (sheet.merges ?? []).filter(({ top, bottom }) => bottom > top && bottom > header.last)
  let above: readonly Cell[] = []
  for (const row of rows) {
    let own = sheet.rows[row] as Cell[]
    const fill = (column: number): void => {
      if (own === sheet.rows[row]) own = [...own]
      own[column] = above[column] ?? null
    }
    for (let column = 0; column < own.length; column++) if (isDitto(own[column])) fill(column)
    for (const { top, left, bottom, right } of merges)
      if (row > top && row <= bottom && top > header.last)
        for (let column = left; column <= right; column++) if (isBlank(own[column])) fill(column)
    cells[row - header.names] = own
    above = own
  }
  return cells
}
