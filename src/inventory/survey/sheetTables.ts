import { isBlank, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { fold } from '../headers/headerText'
import { likelyFields } from '../headers/likelihood'
import { mayNameColumns, readHeaderRows, type HeaderRows } from './headerRows'
import { kindOfRow, type RowKind } from './rowKinds'
import { noAnswers, type AnswerFor } from './answers'
import type { SheetCells } from './sheetCells'

/** A table found on a sheet: its header rows and the rows below them, each with its kind. */
export interface SheetTable {
  readonly sheet: SheetCells
  readonly header: HeaderRows
  /** Data rows within the sheet's cells. */
  readonly rows: readonly number[]
  /** What was passed over below the headers: kind and rows. */
  readonly passed: ReadonlyMap<Exclude<RowKind, 'data' | 'blank'>, readonly number[]>
  /** Row after the last one of the table. */
  readonly end: number
  /** Values that stand beside their label above the table, as in a form. */
  readonly labeled: readonly LabeledValue[]
}

/** A label with its value, such as "Tree no: 12". */
export interface LabeledValue {
  readonly field: Field
  readonly label: string
  readonly value: Cell
  readonly row: number
  readonly column: number
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

function sameNames(a: readonly Cell[] | undefined, b: readonly Cell[] | undefined): boolean {
  const names = (row: readonly Cell[] | undefined): string =>
    (row ?? [])
      .map((cell) => (isBlank(cell) ? '' : fold(String(cell)).trim()))
      .join('|')
      .replace(/\|+$/, '')
  return names(a) === names(b)
}

/** Every table of a sheet, from the top down. */
export function sheetTables(sheet: SheetCells, answerFor: AnswerFor = noAnswers): SheetTable[] {
  const { rows } = sheet
  const candidates: number[] = []
  for (let row = 0; row < rows.length; row++) if (mayNameColumns(rows[row] ?? [])) candidates.push(row)
  const headers: HeaderRows[] = []
  candidates.forEach((row, index) => {
    const before = headers.at(-1)
    if (before !== undefined && (row <= before.last || sameNames(rows[before.names], rows[row]))) return
    const header = readHeaderRows(sheet, row, candidates[index + 1] ?? rows.length, answerFor)
    if (header === null || !isTable(header)) return
    // Names on two rows: the lower one with the upper as titles is the better reading where it says more.
    if (before !== undefined && header.first <= before.names && before.last <= before.names) {
      if (header.total > before.total) headers[headers.length - 1] = header
      return
    }
    headers.push(header)
  })
  return headers.map((header, index) =>
    tableBelow(sheet, header, headers[index + 1]?.first ?? rows.length, headers[index - 1])
  )
}

function tableBelow(
  sheet: SheetCells,
  header: HeaderRows,
  end: number,
  before: HeaderRows | undefined
): SheetTable {
  const names = sheet.rows[header.names] ?? []
  const idAt = header.columns.find(({ meaning }) => meaning.field === 'tree')?.column ?? -1
  const known = new Set(
    header.columns.flatMap(({ column, meaning }) => (meaning.field === null ? [] : [column]))
  )
  const rows: number[] = []
  const passed = new Map<Exclude<RowKind, 'data' | 'blank'>, number[]>()
  for (let row = header.last + 1; row < end; row++) {
    const kind = kindOfRow(sheet.rows[row] ?? [], names, idAt, known)
    if (kind === 'data') rows.push(row)
    else if (kind !== 'blank') passed.set(kind, [...(passed.get(kind) ?? []), row])
  }
  return {
    sheet,
    header,
    rows,
    passed,
    end,
    labeled: labeledValues(sheet, before === undefined ? 0 : before.last + 1, header.first)
  }
}

/** Labels of the tree with their values, beside or in one cell, between two rows. */
function labeledValues(sheet: SheetCells, from: number, to: number): LabeledValue[] {
  const found: LabeledValue[] = []
  for (let row = Math.max(from, to - 30); row < to; row++) {
    const cells = sheet.rows[row] ?? []
    for (let column = 0; column < cells.length; column++) {
      const cell = cells[column]
      if (typeof cell !== 'string' || cell.length > 80) continue
      const within = /^([^:]{2,40}):\s*(\S.*)$/.exec(cell.trim())
      const label = (within?.[1] ?? cell).replace(/:\s*$/, '').trim()
      const best = likelyFields(label)[0]
      if (best === undefined || best.score < 0.8 || columnOf(best.field).of !== 'tree') continue
      let at = column
      let value: Cell = within?.[2] ?? null
      if (value === null) {
        at = cells.findIndex((other, place) => place > column && !isBlank(other))
        value = cells[at] ?? null
        // The next label is no value.
        if (at < 0 || (typeof value === 'string' && /:\s*$/.test(value))) continue
      }
      if (found.some(({ field }) => field === best.field)) continue
      found.push({ field: best.field, label, value, row, column: at })
      column = at
    }
  }
  return found
}
