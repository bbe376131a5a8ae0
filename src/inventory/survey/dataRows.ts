import { isBlank, type Cell } from '../../../shared/cells'
import { columnHeaded } from './headerRows'
import type { SheetTable } from './sheetTables'
import { speciesInRows } from './speciesParts'
import { unitsInRows } from './unitCells'
import { namesZone } from './zoneNames'

/** Stands for "the same as above". */
const ditto =
  /^(?:["″”〃„]{1,2}|''|’’|,,|\^|d[o°º]\.?|dto\.?|ditto|dito|d(?:es)?gl\.?|ebenso|[ií]dem|[ií]d\.?|ibid\.?|same|same as above|(?:as|see) above|wie (?:oben|vor)|[sw]\. ?o\.?|siehe oben|meme|même|ci-dessus|igual|(?:lo )?mismo|↓|[-–] ?["″”] ?[-–])$/i

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

/** The columns with a mark; what the row above, which has none, says too is no mark. */
function dittosIn(row: readonly Cell[], above: readonly Cell[]): readonly number[] {
  let found: number[] | null = null
  for (let column = 0; column < row.length; column++) {
    const cell = row[column]
    if (typeof cell !== 'string' || cell.length > longest || cell === above[column]) continue
    if (isDitto(cell)) (found ??= []).push(column)
  }
  return found ?? none
}

type MergesOverRows = NonNullable<SheetTable['sheet']['merges']>

/** A row in which what its marks and merges stand for is written out; the row itself where it has none. */
function writtenOut(
  row: Cell[],
  at: number,
  above: readonly Cell[],
  dittos: readonly number[],
  merges: MergesOverRows
): Cell[] {
  const over = merges.filter(({ top, bottom }) => at > top && at <= bottom)
  if (dittos.length === 0 && over.length === 0) return row
  const own = [...row]
  for (const column of dittos) own[column] = above[column] ?? null
  for (const { left, right } of over)
    for (let column = left; column <= right; column++)
      if (isBlank(own[column])) own[column] = above[column] ?? null
  return own
}

/** What the rows of a table are written with. */
interface Writing {
  readonly sheetRows: SheetTable['sheet']['rows']
  /** The row of the names, which becomes row 0. */
  readonly names: number
  readonly idAt: number
  readonly merges: MergesOverRows
  readonly together: Together
}

/** A loop of its own, as the engine keeps what it compiled for one that meets the same shapes in every inventory. */
function writeRows(into: Cell[][], rows: readonly number[], writing: Writing): void {
  const { sheetRows, names, idAt, merges, together } = writing
  let above: readonly Cell[] = []
  /** The row above as it stands, as long as it has no mark. */
  let plain: readonly Cell[] = []
  for (const row of rows) {
    const typed = sheetRows[row] as Cell[]
    const dittos = dittosIn(typed, plain)
    plain = dittos.length === 0 ? typed : none
    // A lone mark in a row may be anything, such as an inch without its number.
    const meant = dittos.length >= 2 || dittos.includes(idAt) ? dittos : none
    const isPlain = meant.length === 0 && merges.length === 0
    const own = isPlain ? typed : writtenOut(typed, row, above, meant, merges)
    into[row - names] = together === null ? own : [...together(own)]
    above = own
  }
}

type Together = ((row: readonly Cell[]) => readonly Cell[]) | null

function inTurn(first: Together, second: Together): Together {
  if (first === null || second === null) return first ?? second
  return (row) => second(first(row))
}

/**
 * The rows of a table as its block holds them: the names first, then every row down to the last with data; a row of another
 * kind is empty. What a ditto mark or a merge over rows stands for is written out, in a copy of the row.
 */
export function dataRows(table: SheetTable): Cell[][] {
  const { sheet, header, rows } = table
  const { names, last: below } = header
  const cells = Array<Cell[]>((rows.at(-1) ?? names) - names + 1).fill(nothing)
  cells[0] = [...(sheet.rows[names] ?? [])]
  writeRows(cells, rows, {
    sheetRows: sheet.rows,
    names,
    idAt: columnHeaded(header, 'tree'),
    merges: (sheet.merges ?? []).filter(({ top, bottom }) => bottom > top && top > below),
    together: inTurn(unitsInRows(sheet, header, rows), speciesInRows(header))
  })
  fillZones(cells, table)
  return cells
}

/** Where a column of zones is blank below lines that name them, each row has the zone of the line above it. */
function fillZones(into: Cell[][], { header, rows, sections }: SheetTable): void {
  const column = columnHeaded(header, 'zone')
  const lines = column < 0 ? [] : sections.filter(({ text }) => namesZone(text))
  if (lines.length === 0) return
  let next = 0
  let zone: string | null = null
  for (const row of rows) {
    for (; (lines[next]?.row ?? Infinity) < row; next++) zone = lines[next]?.text ?? null
    const at = row - header.names
    const cells = into[at]
    if (zone !== null && cells !== undefined && isBlank(cells[column]))
      into[at] = Object.assign([...cells], { [column]: zone })
  }
}
