import { quoted, type Cell } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { firstOf } from '../../../shared/words/some'
import { cellIn, lettersOf, type SheetCells } from './sheetCells'

/** Signs that programs put before a cell to say that it is text: an apostrophe or one like it, a caret, an equals sign. */
const mark = /^['’‘`´^=](?=.*[\p{L}\p{N}])/su
/** Signs around the whole text of a cell. */
const around = /^(?:"([^"]+)"|“([^“”]+)”|«\s*([^«»]+?)\s*»|=\s*"([^"]+)")$/u
/** The name of a sort is written so: 'Bowhall'. */
const namesSort = /^(['’‘`´]).*(?:['’‘`´])$/su

/** Rows that are looked at, and the share of the texts of a column that have to bear a mark. House judgment. */
const looked = 200
const mostly = 0.8

/** Columns named in the line about them. */
const named = 8

/** Numbers that can be read in one way only; three decimals look like thousands, and zeros in front belong to an id. */
const plainNumber = /^-?(?:0|[1-9]\d{0,14})(?:\.(?:\d{1,2}|\d{4,10}))?$/

/** The text of a cell without its mark; null where it bears none. */
function bare(cell: Cell | undefined): string | null {
  if (typeof cell !== 'string' || cell.length < 2) return null
  const inside = around.exec(cell.trim())
  if (inside !== null) return inside.slice(1).find((text) => text !== undefined) ?? null
  const text = cell.trimStart()
  return mark.test(text) && !namesSort.test(text.trim()) ? text.slice(1) : null
}

/** The columns in which nearly every filled cell is a text that bears a mark. */
function markedColumns({ rows }: SheetCells): number[] {
  const filled: number[] = []
  const marked: number[] = []
  for (let row = 0; row < Math.min(rows.length, looked); row++) {
    const cells = rows[row] ?? []
    for (let column = 0; column < cells.length; column++) {
      const cell = cells[column]
      if (cell === null || cell === undefined || cell === '') continue
      filled[column] = (filled[column] ?? 0) + 1
      if (bare(cell) !== null) marked[column] = (marked[column] ?? 0) + 1
    }
  }
  return marked.flatMap((count, column) =>
    count >= 2 && count >= ((filled[column] ?? 0) - 1) * mostly ? [column] : []
  )
}

/** The sheets without the marks that stand before or around all cells of a column, and what is told of that. */
export function withoutMarks(sheets: readonly SheetCells[]): {
  readonly sheets: readonly SheetCells[]
  readonly told: readonly Problem[]
} {
  const told: Problem[] = []
  const read = sheets.map((sheet) => {
    const columns = markedColumns(sheet)
    const [first] = columns
    if (first === undefined) return sheet
    const at = sheet.rows.findIndex((cells) => bare(cells[first]) !== null)
    const letters = firstOf(
      columns.map((column) => lettersOf(sheet, at, column)),
      named
    )
    const facts = {
      columns: `column${columns.length === 1 ? '' : 's'} ${letters}`,
      text: quoted(sheet.rows[at]?.[first])
    }
    told.push(problem('text-marks', cellIn(sheet, at, first), facts))
    const numbers = new Set(columns.filter((column) => holdsPlainNumbers(sheet, column)))
    return { ...sheet, rows: sheet.rows.map((cells) => unmarked(cells, columns, numbers)) }
  })
  return { sheets: told.length === 0 ? sheets : read, told }
}

/** Whether all numbers of a column can be read in one way; the others tell how each is meant, and stay as they are typed. */
function holdsPlainNumbers({ rows }: SheetCells, column: number): boolean {
  return rows.every((cells) => {
    const text = bare(cells[column])?.trim() ?? ''
    return !/^[-\d.,'’ ]*\d[-\d.,'’ ]*$/.test(text) || plainNumber.test(text)
  })
}

function unmarked(cells: readonly Cell[], columns: readonly number[], numbers: ReadonlySet<number>): Cell[] {
  const own = [...cells]
  for (const column of columns) {
    const text = bare(cells[column])
    if (text === null) continue
    own[column] = numbers.has(column) && plainNumber.test(text.trim()) ? Number(text) + 0 : text
  }
  return own
}
