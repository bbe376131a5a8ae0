import { isBlank, quoted } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { listed } from '../../../shared/words/lists'
import { firstOf, rowsNamed } from '../../../shared/words/some'
import type { ReadingChoices } from '../inventory'
import type { RowKind } from './rowKinds'
import { cellIn, numberOfRow, type SheetCells } from './sheetCells'
import { tableAddress } from './tableAddress'
import type { SurveyTable } from './surveyTable'
import { namesZone } from './zoneNames'
import { zoneLines } from './zones'

/** Runs of rows that a line about them names: what was left out is to be found again. */
export const namedRuns = 7

/** Tables and sheets that a line names. */
const named = 6

/** Everything that was left out, taken in though hidden, or put together: a line each. */
export function tellOf(
  sheets: readonly SheetCells[],
  tables: readonly SurveyTable[],
  choices: ReadingChoices
): Problem[] {
  const several = new Set(tables.map(({ sheet }) => sheet.name)).size > 1
  return [
    ...sheetsLeftOut(sheets, tables, choices),
    ...putTogether(tables, several),
    ...zonesTold(tables),
    ...tables.flatMap((table) => [...inGroups(table), ...passed(table), ...hidden(table)])
  ]
}

function titled(name: string): string {
  return `“${name}”`
}

function sheetsLeftOut(
  sheets: readonly SheetCells[],
  tables: readonly SurveyTable[],
  { sheet: asked }: ReadingChoices
): Problem[] {
  const read = new Set(tables.map(({ sheet }) => sheet.name))
  const others = sheets.filter(({ name, rows }) => !read.has(name) && rows.some((row) => !row.every(isBlank)))
  if (asked !== undefined || tables.length === 0) return []
  const names = (list: readonly SheetCells[]): string =>
    firstOf(
      list.map(({ name }) => titled(name)),
      named
    )
  const plain = others.filter((sheet) => sheet.hidden !== true)
  const hiddenOnes = others.filter((sheet) => sheet.hidden === true)
  const from = firstOf([...read].map(titled), named)
  return [
    ...(plain.length > 0 ? [problem('sheets-left-out', '', { sheets: names(plain), from })] : []),
    ...(hiddenOnes.length > 0 ? [problem('hidden-sheets-left-out', '', { sheets: names(hiddenOnes) })] : [])
  ]
}

function putTogether(tables: readonly SurveyTable[], several: boolean): Problem[] {
  const [first] = tables
  if (first === undefined || tables.length < 2) return []
  const forms = tables.filter(({ labeled }) => labeled.length > 0)
  const of = (kind: SurveyTable['of']): readonly string[] =>
    tables.filter((table) => table.of === kind).map(tableAddress)
  const at = tableAddress(first)
  const [trees, limbs] = [of('trees'), of('limbs')]
  if (trees.length > 0 && limbs.length > 0)
    return [problem('tables-joined', at, { trees: firstOf(trees, named), limbs: firstOf(limbs, named) })]
  if (forms.length === tables.length) return [problem('forms-read', at, { count: tables.length })]
  const places = several
    ? `the sheets ${firstOf([...new Set(tables.map(({ sheet }) => titled(sheet.name)))], named)}`
    : `the tables ${firstOf(tables.map(tableAddress), named)}`
  return [problem('tables-stacked', at, { places })]
}

/** That zones stand in lines between the rows, or in the names of sheets, and in no column. */
function zonesTold(tables: readonly SurveyTable[]): Problem[] {
  const inLines = tables.flatMap((table) => (table.of === 'limbs' ? [] : linesTold(table)))
  const open = tables.filter(
    ({ header, of }) => of !== 'limbs' && !header.columns.some(({ meaning }) => meaning.field === 'zone')
  )
  const sheet = open.find((table) => namesZone(table.sheet.name))
  if (inLines.length > 0 || sheet === undefined) return inLines
  return [problem('zones-from-sheets', tableAddress(sheet), { zone: quoted(sheet.sheet.name) })]
}

function linesTold(table: SurveyTable): Problem[] {
  const lines = zoneLines(table)
  const [first] = lines
  if (first === undefined) return []
  const zone = quoted(table.sections.find(({ row }) => row === first)?.text ?? '')
  const numbers = lines.map((row) => numberOfRow(table.sheet, row))
  return [
    problem('zones-from-lines', cellIn(table.sheet, first, 0), { zone, rows: rowsNamed(numbers, namedRuns) })
  ]
}

function inGroups({ header, sheet }: SurveyTable): Problem[] {
  const groups = header.groups?.groups ?? []
  const columns = groups.flatMap((group) => group.columns).filter((column) => column >= 0)
  if (columns.length === 0) return []
  const at = (column: number): string => cellIn(sheet, header.names, column)
  const [from, to] = [Math.min(...columns), Math.max(...columns)]
  return [problem('columns-in-groups', at(from), { count: groups.length, last: at(to) })]
}

const kinds = {
  'header again': 'headers-again',
  total: 'totals-left-out',
  note: 'notes-left-out',
  'no tree': 'no-trees-left-out'
} as const satisfies Record<Exclude<RowKind, 'blank' | 'data'>, string>

function passed(table: SurveyTable): Problem[] {
  const { sheet, passed: rows } = table
  const zones = [...zoneLines(table), ...(sheet.readLines ?? [])]
  return [...rows].flatMap(([kind, all]) => {
    const list = zones.length === 0 ? all : all.filter((row) => !zones.includes(row))
    if (list.length === 0) return []
    const numbers = list.map((row) => numberOfRow(sheet, row))
    const cell = cellIn(sheet, list[0] ?? 0, 0)
    return problem(kinds[kind], cell, { rows: rowsNamed(numbers, namedRuns) })
  })
}

/** Rows and columns that are hidden and were read all the same. */
function hidden({ sheet, rows, header }: SurveyTable): Problem[] {
  const hiddenRows = sheet.hiddenRows
  const inRows = hiddenRows === undefined ? [] : rows.filter((row) => hiddenRows.has(row))
  const columns = header.columns.filter(
    ({ column, meaning }) => meaning.field !== null && sheet.hiddenColumns?.has(column)
  )
  const told: Problem[] = []
  const first = inRows[0]
  if (first !== undefined)
    told.push(
      problem('rows-hidden', cellIn(sheet, first, 0), {
        rows: rowsNamed(
          inRows.map((row) => numberOfRow(sheet, row)),
          namedRuns
        )
      })
    )
  const [column] = columns
  if (column !== undefined) {
    const at = cellIn(sheet, header.names, column.column)
    const names = listed(columns.map(({ name }) => titled(name)))
    told.push(problem('columns-hidden', at, { columns: names }))
  }
  return told
}
