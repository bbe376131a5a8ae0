import { problem, type Problem } from '../../../shared/problems'
import { grouped } from '../../../shared/words/figures'
import { cellIn, type SheetCells } from './sheetCells'

/** Columns of a sheet that are looked at: no inventory has as many, and to weigh more against each other takes too long. */
const most = 1000

/** The sheets with no more columns than are looked at, and what is told of the others. */
export function narrowed(sheets: readonly SheetCells[]): {
  readonly sheets: readonly SheetCells[]
  readonly told: readonly Problem[]
} {
  const told: Problem[] = []
  const read = sheets.map((sheet) => {
    let width = 0
    for (const row of sheet.rows) width = Math.max(width, row.length)
    if (width <= most) return sheet
    const facts = { count: grouped(width), limit: grouped(most) }
    told.push(problem('columns-beyond', cellIn(sheet, 0, most), facts))
    return { ...sheet, rows: sheet.rows.map((row) => row.slice(0, most)) }
  })
  return { sheets: told.length === 0 ? sheets : read, told }
}
