import { isBlank, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { mayBeForeign } from '../headers/dictionary'
import { fold, readHeaderText } from '../headers/headerText'
import { bandsOf, bandSheet } from './bands'
import { headStart, labeledValues, type LabeledValue } from './formRows'
import { columnHeaded, mayNameColumns, readHeaderRows, type HeaderRows } from './headerRows'
import { crownBaseByUse } from './crownBaseByUse'
import { codesOfTrees } from './codesOfTrees'
import { columnsByUse } from './columnsByUse'
import { confirmedIds } from './confirmedIds'
import { limbColumnsByUse } from './limbColumnsByUse'
import { kindOfRow, type JudgedColumns, type RowKind } from './rowKinds'
import { noAnswers, type AnswerFor } from './answers'
import { countFilled, type SheetCells } from './sheetCells'
import { withSpeciesParts } from './speciesParts'
import { totalsWithoutWord } from './sums'
import { treesAlone } from './treesAlone'
import { numbersOfTrees, treesByNumber } from './treesByNumber'
import { namesZone, zoneLine } from './zoneNames'

/** A table found on a sheet: its header rows and the rows below them, each with its kind. */
export interface SheetTable {
  readonly sheet: SheetCells
  readonly header: HeaderRows
  /** Data rows within the sheet's cells. */
  readonly rows: readonly number[]
  /** What was passed over below the headers: kind and rows. */
  readonly passed: ReadonlyMap<Exclude<RowKind, 'data' | 'blank'>, readonly number[]>
  /** Lines of text between the data, which divide it; rows within the sheet's cells. */
  readonly sections: readonly { readonly row: number; readonly text: string }[]
  /** Rows with more cells than headers, whose values stand under the wrong ones; each with its first cell too many. */
  readonly shifted: ReadonlyMap<number, number>
  /** Row after the last one of the table. */
  readonly end: number
  /** Values that stand beside their label above the table, as in a form. */
  readonly labeled: readonly LabeledValue[]
}

const identifying: readonly Field[] = [
  'tree',
  'limb',
  'diameter',
  'trunk',
  'height',
  'stem',
  'species',
  'tip'
]

function fieldsOf({ columns }: HeaderRows): Field[] {
  return columns.flatMap(({ meaning }) => meaning.field ?? [])
}

/** A header has to name two fields at least, one of them of the kind that makes a survey. */
function isTable(header: HeaderRows): boolean {
  const fields = fieldsOf(header)
  return fields.length >= 2 && fields.some((field) => identifying.includes(field)) && header.total >= 1.5
}

/** Share of the names that have to be the same for the headers to stand again, as with "(continued)" in one. House judgment. */
const mostlySame = 0.7

function sameNames(a: readonly Cell[] = [], b: readonly Cell[] = []): boolean {
  let same = 0
  let filled = 0
  for (let column = 0; column < Math.max(a.length, b.length); column++) {
    const [one, other] = [a[column], b[column]]
    if (isBlank(one) && isBlank(other)) continue
    filled++
    if (!isBlank(one) && !isBlank(other) && fold(String(one)).trim() === fold(String(other)).trim()) same++
  }
  return filled > 0 && same >= filled * mostlySame
}

/** Whether a row only says again what the headers above say; below a form of its own it begins another table. */
function repeats(sheet: SheetCells, before: HeaderRows, row: number): boolean {
  const head = headStart(sheet, row, before.last + 1)
  return sameNames(sheet.rows[before.names], sheet.rows[row]) && labeledValues(sheet, head, row).length === 0
}

/** Every table of a sheet, from the top down; tables side by side from the left. */
export function sheetTables(sheet: SheetCells, answerFor: AnswerFor = noAnswers): SheetTable[] {
  const whole = tablesBelow(sheet, answerFor)
  const bands = whole.length === 0 ? [] : bandsOf(sheet)
  if (bands.length < 2) return whole
  const apart = bands.map((band) => tablesBelow(bandSheet(sheet, band), answerFor))
  const named = apart.filter((tables) =>
    tables.some(({ header, labeled }) => namesTrees(header) || labeled.some(({ field }) => field === 'tree'))
  )
  return named.length >= 2 ? named.flat() : whole
}

function namesTrees(header: HeaderRows): boolean {
  return fieldsOf(header).includes('tree')
}

function rowsOfNames({ rows, says }: SheetCells): number[] {
  const found: number[] = []
  for (let row = 0; row < rows.length; row++)
    if (
      (mayNameColumns(rows[row] ?? []) && !isLineOfZone(rows[row] ?? [])) ||
      (says !== undefined && row < headRows && areExplained(rows[row] ?? [], says))
    )
      found.push(row)
  return found
}

/** "Zone A", "4 trees": the words are those of headers. */
function isLineOfZone(row: readonly Cell[]): boolean {
  const first = row.find((cell) => !isBlank(cell))
  return typeof first === 'string' && namesZone(first) && zoneLine(row) !== null
}

/** Rows in which names may stand that are explained elsewhere. */
const headRows = 60

function areExplained(row: readonly Cell[], says: NonNullable<SheetCells['says']>): boolean {
  const texts = row.map((cell, column) => (typeof cell === 'string' ? says(cell, column) : null))
  return (
    texts.some((text) => text !== null) && mayNameColumns(row.map((cell, column) => texts[column] ?? cell))
  )
}

/** Every table of a sheet whose columns stand together, from the top down. */
function tablesBelow(sheet: SheetCells, answerFor: AnswerFor): SheetTable[] {
  const { rows } = sheet
  const candidates = rowsOfNames(sheet)
  const headers: HeaderRows[] = []
  candidates.forEach((row, index) => {
    const before = headers.at(-1)
    if (before !== undefined && (row <= before.last || repeats(sheet, before, row))) return
    const header = readHeaderRows(sheet, row, candidates[index + 1] ?? rows.length, answerFor)
    if (header === null || !isTable(header)) return
    // Names on two rows: the lower one with the upper as titles is the better reading where it says more.
    if (before !== undefined && header.first <= before.names && before.last <= before.names) {
      if (header.total > before.total) headers[headers.length - 1] = header
      return
    }
    headers.push(header)
  })
  // What stands above the headers, such as a form or a title, is no part of the table before.
  const heads = headers.map(({ first }, index) =>
    headStart(sheet, first, (headers[index - 1]?.last ?? -1) + 1)
  )
  return headers.map((header, index) =>
    tableBelow(sheet, header, heads[index] ?? 0, heads[index + 1] ?? rows.length, answerFor)
  )
}

/** Notes that stand alone in their row, with data below them. */
function sectionsIn(
  { rows }: SheetCells,
  data: readonly number[],
  notes: readonly number[]
): SheetTable['sections'] {
  const last = data.at(-1) ?? -1
  return notes.flatMap((row) => {
    if (row >= last) return []
    const zone = zoneLine(rows[row] ?? [])
    if (zone !== null) return [{ row, text: zone }]
    const filled = (rows[row] ?? []).filter((cell) => !isBlank(cell))
    const [text] = filled
    return filled.length === 1 && typeof text === 'string' && /\p{L}|\d/u.test(text)
      ? [{ row, text: text.trim() }]
      : []
  })
}

/** Rows that go on right after the last header with numbers: a comma in a value has parted it. */
function shiftedRows(
  { rows, merges = [] }: SheetCells,
  header: HeaderRows,
  data: readonly number[]
): ReadonlyMap<number, number> {
  const last = Math.max(...header.columns.map(({ column }) => column))
  const isTitled = merges.some(({ top, right }) => top <= header.last && right > last)
  return isTitled ? new Map<number, number>() : numbersFrom(rows, data, last + 1)
}

/** The rows that hold something in a column, and a number there or behind it; each with that column. */
function numbersFrom(rows: SheetCells['rows'], data: readonly number[], column: number): Map<number, number> {
  const found = new Map<number, number>()
  for (const row of data) {
    const cells = rows[row] ?? []
    if (cells.length <= column || isBlank(cells[column])) continue
    if (cells.slice(column).some((cell) => typeof cell === 'number')) found.set(row, column)
  }
  return found
}

/** Rows whose ids are looked at. */
const looked = 200

/** What ids look like in rows with more in them than an id. */
function looksOfIds(rows: readonly (readonly Cell[])[], idAt: number): JudgedColumns['ids'] {
  const ids: string[] = []
  let areZones: boolean | null = null
  for (const row of rows) {
    const id = row[idAt]
    if (!isBlank(id) && countFilled(row) >= 2) ids.push(String(id).trim())
  }
  return {
    areNumbers: ids.length > 0 && ids.every((id) => /^\d+[a-z]?$/i.test(id)),
    haveSpaces: ids.length === 0 || ids.some((id) => id.includes(' ')),
    areZones: () =>
      (areZones ??= rows.some((row) => zoneLine(row) === null && namesZone(String(row[idAt] ?? ''))))
  }
}

type Passed = Map<Exclude<RowKind, 'data' | 'blank'>, number[]>

/** The rows of data, and what else stands between two rows. */
function rowsByKind(
  sheetRows: SheetCells['rows'],
  from: number,
  end: number,
  columns: JudgedColumns
): { rows: number[]; passed: Passed } {
  const rows: number[] = []
  const passed: Passed = new Map()
  let above: readonly Cell[] = []
  let belowTotal = false
  /** Rows that are totals if one follows them. */
  let open: number[] = []
  const pass = (kind: Exclude<RowKind, 'data' | 'blank'>, ...more: readonly number[]): void => {
    if (more.length > 0) passed.set(kind, [...(passed.get(kind) ?? []), ...more])
  }
  /** The tree that was last named stands no more, and the rows below it without an id are its. */
  let gone = false
  for (let row = from; row < end; row++) {
    const cells = sheetRows[row] ?? []
    const lone = kindOfRow(cells, columns, above)
    if (lone === 'blank') continue
    if (columns.idAt >= 0 && !isBlank(cells[columns.idAt])) gone = lone === 'no tree'
    const kind = gone && (lone === 'data' || lone === 'statistic') ? 'no tree' : lone
    if (kind === 'statistic') {
      if (belowTotal) pass('total', row)
      else open.push(row)
      continue
    }
    belowTotal = kind === 'total'
    if (belowTotal) pass('total', ...open)
    else if (open.length > 0) rows.push(...open)
    open = []
    if (kind === 'data') {
      rows.push(row)
      above = cells
    } else pass(kind, row)
  }
  rows.push(...open)
  return { rows, passed }
}

/** Columns of notes, of limbs and of other things ("Stakes"), where "removed" is of no tree. */
function besides(header: HeaderRows): ReadonlySet<number> {
  const others = header.columns.filter(
    ({ name, meaning: { field } }) =>
      field === 'treeNotes' ||
      (field !== null && columnOf(field).of === 'limb') ||
      readHeaderText(name).words.some(mayBeForeign)
  )
  return new Set(others.map(({ column }) => column))
}

/** The headers with the column of the trees' ids, as it is used; a form above the table names its tree. */
function withIds(
  sheet: SheetCells,
  header: HeaderRows,
  data: readonly number[],
  hasForm: boolean
): HeaderRows {
  const named = numbersOfTrees(sheet, treesByNumber(sheet, header, data), data)
  const used = confirmedIds(sheet, columnsByUse(sheet, named, data), data)
  return hasForm ? used : codesOfTrees(sheet, used, data)
}

function tableBelow(
  sheet: SheetCells,
  header: HeaderRows,
  head: number,
  end: number,
  answerFor: AnswerFor
): SheetTable {
  const names = sheet.rows[header.names] ?? []
  const idAt = columnHeaded(header, 'tree')
  const columns: JudgedColumns = {
    names,
    idAt,
    limbAt: columnHeaded(header, 'limb'),
    notesAt: besides(header),
    ids: looksOfIds(sheet.rows.slice(header.last + 1, Math.min(end, header.last + 1 + looked)), idAt),
    known: new Set(header.columns.flatMap(({ column, meaning }) => (meaning.field === null ? [] : [column])))
  }
  const { rows, passed } = rowsByKind(sheet.rows, header.last + 1, end, columns)
  const sums = totalsWithoutWord(sheet.rows, rows, columns.idAt)
  if (sums.length > 0)
    passed.set(
      'total',
      [...(passed.get('total') ?? []), ...sums].sort((a, b) => a - b)
    )
  const data = sums.length === 0 ? rows : rows.filter((row) => !sums.includes(row))
  const shifted = shiftedRows(sheet, header, data)
  const labeled = labeledValues(sheet, head, header.first)
  const used = limbColumnsByUse(sheet, header, data, labeled.length > 0)
  const ids = withIds(sheet, used, data, labeled.length > 0)
  return {
    sheet,
    header: treesAlone(
      crownBaseByUse(sheet, withSpeciesParts(sheet, ids, data, answerFor), data),
      labeled.length > 0
    ),
    rows: data,
    shifted,
    passed,
    sections: sectionsIn(sheet, data, passed.get('note') ?? []),
    end,
    labeled
  }
}
