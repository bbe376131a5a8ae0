import { problem, type Problem } from '../../../shared/problems'
import { isBlank, quoted } from '../../../shared/cells'
import { listed } from '../../../shared/words/lists'
import type { AnswerFor } from '../survey/answers'
import { cellIn, type SheetCells } from '../survey/sheetCells'
import { sheetTables, type SheetTable } from '../survey/sheetTables'
import { kindOfTable } from '../survey/tableKind'
import { tableAddress } from '../survey/tableAddress'
import { withCombinedColumns } from './combinedColumns'
import { withLineSizes } from './lineSizes'
import { fromLong } from './long'
import { withPartedColumns } from './partedColumns'
import { withMeasuredTexts } from './measuredTexts'
import { fromRecordKinds } from './recordKinds'
import { withTickedAnswers } from './tickedAnswers'
import { treesBelow } from './treesBelow'
import { turned } from './turned'

/** The tables of a sheet, of its rows as they stand or put into another arrangement, and what is told of that. */
export interface Arranged {
  readonly tables: readonly SheetTable[]
  readonly told: readonly Problem[]
}

/** Every table of a sheet that is read in the arrangement in which it tells of trees or limbs. */
export function arrangedTables(sheet: SheetCells, answerFor: AnswerFor): Arranged {
  const apart = withCombinedColumns(sheet, answerFor)
  const found = apart === null ? null : arrangedAsNamed(apart.sheet, answerFor)
  if (apart === null || found === null || !found.tables.some(isUsed)) return withoutParts(sheet, answerFor)
  const told = apart.parted.map(({ row, column, text, parts }) =>
    problem('measures-parted', cellIn(sheet, row, column), {
      text,
      parts: listed(parts.map((part) => `“${part}”`))
    })
  )
  return { tables: found.tables, told: [...told, ...found.told] }
}

/** The tables by their headers; where they tell of no trees, by the sizes that stand in texts. */
function withoutParts(sheet: SheetCells, answerFor: AnswerFor): Arranged {
  const found = arrangedAsNamed(sheet, answerFor)
  const texts = found.tables.some(isUsed) ? null : withMeasuredTexts(sheet)
  const tables = texts === null ? [] : sheetTables(texts.sheet, answerFor).filter(isUsed)
  if (texts === null || tables.length === 0) return found
  const { row, column, text, example } = texts
  return { tables, told: [problem('sizes-in-texts', cellIn(sheet, row, column), { text, example })] }
}

function arrangedAsNamed(sheet: SheetCells, answerFor: AnswerFor): Arranged {
  const trees = treesBelow(sheet)
  if (trees !== null) {
    const { count, area } = trees
    const below = tablesAsTheyStand(trees.sheet, answerFor)
    const facts = { count, last: cellIn(sheet, area.row, area.to) }
    const found = problem('trees-in-columns', cellIn(sheet, area.row, area.from), facts)
    if (below.tables.some(isUsed)) return { tables: below.tables, told: [found, ...below.told] }
  }
  return tablesAsTheyStand(sheet, answerFor)
}

function tablesAsTheyStand(sheet: SheetCells, answerFor: AnswerFor): Arranged {
  const upright = sheetTables(sheet, answerFor)
  const told: Problem[] = []
  const tables = upright.flatMap((table) => {
    const kinds = fromRecordKinds(table)
    const other = kinds === null ? [] : sheetTables(kinds, answerFor).filter(isUsed)
    if (other.length > 0) told.push(problem('record-kinds', tableAddress(table)))
    return other.length > 0 ? other : [table]
  })
  const said = weightOf(tables)
  if (said < weak) {
    const found = otherArrangement(sheet, answerFor)
    if (found !== null && weightOf(found.tables) > said * clearly) return found
  }
  return { tables: tables.flatMap((table) => parted(table, answerFor, told)), told }
}

/** A table whose headers say so little may be a false one, and another arrangement has to say so many times as much. House judgment. */
const weak = 3
const clearly = 1.5

/** How well the names of the best table that tells of trees or limbs are understood. */
function weightOf(tables: readonly SheetTable[]): number {
  return Math.max(0, ...tables.filter(isUsed).map(({ header }) => header.total))
}

const isUsed = (table: SheetTable): boolean => kindOfTable(table) !== null

function otherArrangement(sheet: SheetCells, answerFor: AnswerFor): Arranged | null {
  const long = fromLong(sheet)
  const fromRows = long === null ? [] : sheetTables(long, answerFor)
  const told: Problem[] = []
  const finished = (tables: readonly SheetTable[], found: Problem): Arranged => ({
    tables: tables.flatMap((table) => parted(table, answerFor, told)),
    told: [found, ...told]
  })
  if (long !== null && fromRows.some(isUsed))
    return finished(fromRows, problem('one-measurement-a-row', cellIn(long, 0, 0)))
  const side = turned(sheet)
  const fromSide = side === null ? [] : sheetTables(side.sheet, answerFor)
  if (side === null || !fromSide.some(isUsed)) return null
  const at = cellIn(side.sheet, 0, 0)
  return finished(fromSide, problem(side.isForm ? 'form-alone' : 'table-turned', at))
}

/** The table with columns parted that hold two numbers in a cell, and those joined that are ticked for one answer each. */
function parted(table: SheetTable, answerFor: AnswerFor, told: Problem[]): readonly SheetTable[] {
  const two = withPartedColumns(table)
  const first = two === null ? table : (sameTable(two.sheet, table, answerFor) ?? table)
  if (first !== table)
    for (const column of two?.parted ?? [])
      told.push(problem('column-parted', at(table, column), { text: nameAt(table, column) }))
  const ticked = withTickedAnswers(first)
  const second = ticked === null ? first : (sameTable(ticked.sheet, first, answerFor) ?? first)
  if (second !== first)
    for (const { column, text } of ticked?.joined ?? [])
      told.push(problem('answers-ticked', at(first, column), { text }))
  return [withLines(second, answerFor, told)]
}

/** The table with the sizes of its trees that stand in lines of text between its rows, or in notes. */
function withLines(table: SheetTable, answerFor: AnswerFor, told: Problem[]): SheetTable {
  const lines = withLineSizes(table)
  if (lines === null) return table
  const [open] = lines.open
  const { sheet } = table
  const textAt = (row: number): string => quoted(sheet.rows[row]?.find((cell) => !isBlank(cell)))
  if (open !== undefined)
    told.push(
      problem('sizes-in-lines', cellIn(sheet, open, 0), { text: textAt(open), count: lines.open.length })
    )
  const [read] = lines.read
  const [note] = lines.notes
  const found =
    read === undefined && note === undefined ? undefined : sameTable(lines.sheet, table, answerFor)
  if (found === undefined) return table
  if (read !== undefined)
    told.push(problem('sizes-from-lines', cellIn(sheet, read, 0), { text: textAt(read) }))
  if (note !== undefined)
    told.push(problem('sizes-from-notes', cellIn(sheet, note.row, note.column), { text: quoted(note.cell) }))
  return found
}

/** The table that stands in the same rows of a sheet with other columns. */
function sameTable(
  sheet: SheetCells,
  { header, end }: SheetTable,
  answerFor: AnswerFor
): SheetTable | undefined {
  return sheetTables(sheet, answerFor).find((each) => each.header.names === header.names && each.end === end)
}

function at({ sheet, header }: SheetTable, column: number): string {
  return cellIn(sheet, header.names, column)
}

function nameAt({ header }: SheetTable, column: number): string {
  return quoted(header.columns.find((each) => each.column === column)?.name ?? '')
}
