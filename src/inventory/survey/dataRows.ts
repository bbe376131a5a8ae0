import { isBlank, type Cell } from '../../../shared/cells'
import type { SheetTable } from './sheetTables'
import { unitsInRows } from './unitCells'

/** Stands for "the same as above". */
const ditto =
  /^(?:["″”〃]{1,2}|''|’’|,,|do\.?|ditto|dito|idem|same|same as above|(?:as|see) above|wie oben|s\. ?o\.?|siehe oben|meme|même|ci-dessus|igual|mismo|↓|[-–] ?["″”] ?[-–])$/i

const longest = 16

/** Texts that were looked at; most stand in many rows. */
const known = new Map<string, boolean>()

function isDitto(text: string): boolean {
  let found = known.get(text)
  if (found === undefined) {
    found = ditto.test(text.trim())
    if (known.size > 5000) known.clear()
    known.set(text, found)
  }
  return found
}

const none: readonly number[] = []
/** Stands for every row that holds no data; nothing is ever put into it. */
const nothing: Cell[] = []

function dittosIn(row: readonly Cell[]): readonly number[] {
  let found: number[] | null = null
  for (let column = 0; column < row.length; column++) {
    const cell = row[column]
    if (typeof cell === 'string' && cell.length <= longest && isDitto(cell)) (found ??= []).push(column)
  }
  return found ?? none
}

/**
 * The rows of a table as its block holds them: the names first, then every row down to the last with data; a row of another
 * kind is empty. What a ditto mark or a merge over rows stands for is written out, in a copy of the row.
 */
export function dataRows({ sheet, header, rows }: SheetTable): Cell[][] {
  const last = rows.at(-1) ?? header.names
  const cells = Array<Cell[]>(last - header.names + 1).fill(nothing)
  cells[0] = [...(sheet.rows[header.names] ?? [])]
  const merges = (sheet.merges ?? []).filter(({ top, bottom }) => bottom > top && bottom > header.last)
  let above: readonly Cell[] = []
  const together = unitsInRows(sheet, header, rows)
  const idAt = header.columns.find(({ meaning }) => meaning.field === 'tree')?.column ?? -1
  for (const row of rows) {
    let own = sheet.rows[row] as Cell[]
    const fill = (column: number): void => {
      if (own === sheet.rows[row]) own = [...own]
      own[column] = above[column] ?? null
    }
    // A lone mark in a row may be anything, such as an inch without its number.
    const dittos = dittosIn(own)
    if (dittos.length >= 2 || dittos.includes(idAt)) for (const column of dittos) fill(column)
    for (const { top, left, bottom, right } of merges)
      if (row > top && row <= bottom && top > header.last)
        for (let column = left; column <= right; column++) if (isBlank(own[column])) fill(column)
    cells[row - header.names] = together === null ? own : [...together(own)]
    above = own
  }
  return cells
}
