/** Widths and heights over several columns and rows, and a fit to the text that is an estimate of ours, not Excel's. */
import { sharedPart } from '../../../shared/cells'
import type { RangeTarget } from './rangeTarget'
import { writable } from './session'

/** A character of the standard font is taken as 5.6 points wide, with 7 points of margin. */
const characterPoints = 5.6
const marginPoints = 7
const linePoints = 15

/** Columns or rows that are looked at when a size is read: not a million for a whole column. */
export function sizedSpan(first: number, count: number): number[] {
  return Array.from({ length: Math.min(count, 1000) }, (_, index) => first + index)
}

/** The size that all share, or null. */
export function sameAcross(indexes: number[], size: (index: number) => number): number | null {
  const [first = 0, ...others] = indexes.map(size)
  return others.every((other) => other === first) ? first : null
}

/** Points that so many columns or rows take together. */
function extent(first: number, count: number, size: (index: number) => number): number {
  let points = 0
  for (let index = first; index < first + count; index++) points += size(index)
  return points
}

/** Where a range stands on its sheet and how large it is, in points. */
export const rangeExtent = {
  left: ({ session: { book }, sheetId, area }: RangeTarget) =>
    extent(0, area.column, (column) => book.columnWidth(sheetId, column)),
  top: ({ session: { book }, sheetId, area }: RangeTarget) =>
    extent(0, area.row, (row) => book.rowHeight(sheetId, row)),
  width: ({ session: { book }, sheetId, area }: RangeTarget) =>
    extent(area.column, area.columns, (column) => book.columnWidth(sheetId, column)),
  height: ({ session: { book }, sheetId, area }: RangeTarget) =>
    extent(area.row, area.rows, (row) => book.rowHeight(sheetId, row))
}

export function fitColumns({ session, sheetId, area }: RangeTarget): void {
  const book = writable(session, sheetId)
  const used = book.usedArea(sheetId, true)
  const filled = used && sharedPart(used, area)
  if (!filled) return
  const texts = book.texts(sheetId, filled)
  for (let index = 0; index < filled.columns; index++) {
    const longest = Math.max(0, ...texts.map((row) => longestLine(row[index] ?? '')))
    if (longest)
      book.setColumnWidth(sheetId, filled.column + index, 1, longest * characterPoints + marginPoints)
  }
}

export function fitRows({ session, sheetId, area }: RangeTarget): void {
  const book = writable(session, sheetId)
  const used = book.usedArea(sheetId, true)
  const filled = used && sharedPart(used, area)
  if (!filled) return
  book.texts(sheetId, filled).forEach((row, down) => {
    const lines = row.map((text, index) => {
      const points = Math.max(
        characterPoints,
        book.columnWidth(sheetId, filled.column + index) - marginPoints
      )
      const cell = { row: filled.row + down, column: filled.column + index, rows: 1, columns: 1 }
      const wraps = book.format(sheetId, cell).wrap === true
      return wraps ? wrappedLines(text, Math.floor(points / characterPoints)) : 1
    })
    book.setRowHeight(sheetId, filled.row + down, 1, linePoints * Math.max(1, ...lines))
  })
}

function longestLine(text: string): number {
  return Math.max(...text.split('\n').map((line) => line.length))
}

function wrappedLines(text: string, characters: number): number {
  return text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / characters)), 0)
}
