import { isBlank, type Cell } from '../../../shared/cells'
import { fold } from '../headers/headerText'
import { judged, type Judged } from './rowWords'
import { zoneLine } from './zoneNames'

/** What a row below the headers is; only data opens a tree. */
export type RowKind = 'blank' | 'header again' | 'total' | 'note' | 'no tree' | 'data'

/** A row by itself: a "statistic" is one of data, unless it stands beside a total ("SE", "N", "Q1"). */
export type LoneKind = RowKind | 'statistic'

/** The columns of a table, by which its rows are judged. */
export interface JudgedColumns {
  /** The cells of the headers. */
  readonly names: readonly Cell[]
  /** The columns of the ids of tree and limb, or -1. */
  readonly idAt: number
  readonly limbAt: number
  /** The columns of notes. */
  readonly notesAt: ReadonlySet<number>
  /** The columns that give a field, so that a lone sentence beside the table is told from a tree with little measured. */
  readonly known: ReadonlySet<number>
  /** What ids look like where other cells stand beside them: all numbers, some with a space. */
  readonly ids: {
    readonly areNumbers: boolean
    readonly haveSpaces: boolean
    readonly areZones: () => boolean
  }
}

/** Cells that a line of a zone fills at most, unless one text fills all of them. House judgment. */
const mostOfLine = 3

/** Numbers of a row from which something was measured there. House judgment. */
const measuredFrom = 4

/** The kind of a row; `above` is the last row of data, whose texts need no second look. */
export function kindOfRow(
  row: readonly Cell[],
  columns: JudgedColumns,
  above: readonly Cell[] = []
): LoneKind {
  const { idAt, limbAt, notesAt, known } = columns
  let filled = 0
  let numbers = 0
  let at = -1
  let first: Judged | null = null
  let total = false
  let noTree = false
  let noted = false
  for (let column = 0; column < row.length; column++) {
    const cell = row[column]
    if (cell === null || cell === undefined) continue
    if (typeof cell !== 'string') {
      if (filled++ === 0) at = column
      if (typeof cell === 'number') numbers++
      continue
    }
    if (cell === above[column] && at >= 0) {
      filled++
      continue
    }
    if (isBlank(cell)) continue
    const text = judged(cell)
    if (filled++ === 0) {
      at = column
      first = text
    }
    if (text.noTree && notesAt.has(column)) noted = true
    else if (text.noTree) noTree = true
    total ||= text.total && !text.isAlsoMiddling && text.folded.length < 30
  }
  if (filled === 0) return 'blank'
  // Beside measurements, a note of a stump is of another one.
  if (noTree || (noted && numbers < measuredFrom))
    return repeats(row, columns.names) ? 'header again' : 'no tree'
  if (numbers === 0 && isDrawn(row)) return 'note'
  if (numbers <= 1 && (repeats(row, columns.names) || countsInLetters(row, filled))) return 'header again'
  if (first?.total === true || (total && isBlank(row[idAt]))) return 'total'
  if (numbers >= 3 && at !== limbAt && filled === numbers + 1 && first?.statistic === true) return 'statistic'
  if (first?.note === true && ((filled - numbers >= numbers && filled <= 4) || isExample(first.folded)))
    return 'note'
  if (numbers >= 3 && row[at] === 1 && countsColumns(row, filled)) return 'header again'
  if (
    numbers <= 1 &&
    (filled <= mostOfLine || first?.folded === fold(String(row.at(-1))).trim()) &&
    zoneLine(row) !== null
  )
    return columns.ids.areZones() ? 'data' : 'note'
  if (filled === 1 && first !== null && known.size >= 3 && isLone(first.folded, at, columns)) return 'note'
  return 'data'
}

function isExample(text: string): boolean {
  return /^(?:example|sample|beispiel|bsp|exemple|ejemplo|muster)/.test(text)
}

/** A line drawn with signs: dashes in every cell. */
function isDrawn(row: readonly Cell[]): boolean {
  return row.every(
    (cell) => isBlank(cell) || (typeof cell === 'string' && /^\s*[-=_*.|:+–—~\s]{2,}\s*$/.test(cell))
  )
}

/** Whether a row counts the columns: 1, 2, 3 and so on, or (a), (b), (c). */
function countsColumns(row: readonly Cell[], filled: number): boolean {
  const cells = row.filter((cell) => !isBlank(cell))
  return filled >= 4 && cells.every((cell, at) => cell === at + 1)
}

function countsInLetters(row: readonly Cell[], filled: number): boolean {
  const cells = row.filter((cell) => !isBlank(cell))
  const letter = (at: number): string => String.fromCharCode(97 + at)
  return (
    filled >= 4 &&
    cells.every(
      (cell, at) =>
        typeof cell === 'string' &&
        /^[([]?([a-z])[)\].]?$/i.exec(cell.trim())?.[1]?.toLowerCase() === letter(at)
    )
  )
}

/** Whether the only text of a row is a sentence, a title or something beside the table. */
function isLone(text: string, at: number, { idAt, known, ids }: JudgedColumns): boolean {
  return (
    (at === idAt && ((ids.areNumbers && !/^\d/.test(text)) || (!ids.haveSpaces && text.includes(' ')))) ||
    text.length > 24 ||
    text.split(' ').length >= 4 ||
    /[:!]$/.test(text) ||
    (at !== idAt && text.includes(' ')) ||
    !known.has(at)
  )
}

/** Whether a row says what the headers say, as where a table goes on after a page. */
function repeats(row: readonly Cell[], names: readonly Cell[]): boolean {
  let same = 0
  let other = 0
  for (let column = 0; column < Math.max(row.length, names.length); column++) {
    const [mine, theirs] = [row[column], names[column]]
    if (isBlank(mine) && isBlank(theirs)) continue
    if (typeof mine === 'string' && typeof theirs === 'string' && fold(mine).trim() === fold(theirs).trim())
      same++
    else if (!isBlank(mine)) other++
  }
  return same >= 2 && same >= other * 4
}
