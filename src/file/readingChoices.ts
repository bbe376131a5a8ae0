/** The arguments about reading, held against the sheets of the file. */
import { columnLetters, isBlank, quoted, type Cell } from '../../shared/cells'
import { parseAddress } from '../../shared/a1Notation'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { listed } from '../../shared/words/lists'
import { firstOf } from '../../shared/words/some'
import type { ColumnAnswer, ReadingChoices } from '../inventory/inventory'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { comparable } from './columnArgument'
import type { Wanted } from './planArguments'

/** Rows of a sheet in which a header is looked for, and names that a sentence lists. */
const searchedRows = 100
const mostListed = 30

function quotedList(texts: readonly string[]): string {
  return firstOf(
    texts.map((text) => `“${quoted(text)}”`),
    mostListed
  )
}

/** The sheet of that name, as it is spelled in the file. */
function sheetNamed(sheets: readonly SheetCells[], name: string, argument: string): SheetCells | Refusal {
  const exact = sheets.find((sheet) => sheet.name === name)
  const alike = sheets.filter((sheet) => comparable(sheet.name) === comparable(name))
  const found = exact ?? (alike.length === 1 ? alike[0] : undefined)
  if (found !== undefined) return found
  const choices =
    sheets.length === 0
      ? 'the file has none'
      : `the file has ${quotedList(sheets.map((sheet) => sheet.name))}`
  return refuse(`${argument}: there is no sheet “${quoted(name)}”; ${choices}.`)
}

const widthOf = ({ rows, left }: SheetCells): number =>
  left + rows.reduce((most, row) => Math.max(most, row.length), 0)

const texts = (row: readonly Cell[]): string[] =>
  row.flatMap((cell) => (typeof cell === 'string' && !isBlank(cell) ? [cell.trim()] : []))

/** What is likely the header row, for a sentence: the one with the most texts near the top. */
function likelyHeaders({ rows }: SheetCells): string[] {
  return rows
    .slice(0, searchedRows)
    .map(texts)
    .reduce((most, each) => (each.length > most.length ? each : most), [])
}

/** The columns of a sheet that bear this header, by row. */
function columnsUnder({ rows, left }: SheetCells, header: string): string[][] {
  const key = comparable(header)
  const bears = (cell: Cell) => typeof cell === 'string' && comparable(cell) === key
  return rows
    .slice(0, searchedRows)
    .map((row) => row.flatMap((cell, at) => (bears(cell) ? [columnLetters(left + at)] : [])))
    .filter((letters) => letters.length > 0)
}

/** Why no column of these sheets is the one that was named, or null. */
function whyNoColumn({ column, header }: ColumnAnswer, sheets: readonly SheetCells[]): string | null {
  if (column !== undefined) {
    const number = parseAddress(`${column}:${column}`)?.area.column ?? 0
    if (sheets.some((sheet) => number < widthOf(sheet))) return null
    const under = sheets.flatMap((sheet) => columnsUnder(sheet, column).flat())
    if (under.length > 0)
      return `no sheet has a column ${column}; for the header “${column}” write ${listed([...new Set(under)])}.`
    const ends = sheets.map(
      (sheet) => `“${quoted(sheet.name)}” ends with ${columnLetters(Math.max(0, widthOf(sheet) - 1))}`
    )
    return `no sheet has a column ${column}; ${listed(ends.slice(0, mostListed))}.`
  }
  const rows = sheets.flatMap((sheet) => columnsUnder(sheet, header ?? ''))
  const several = rows.find((letters) => letters.length > 1)
  if (several !== undefined)
    return `“${quoted(header)}” stands over columns ${listed(several)}: name one by its letters.`
  if (rows.length > 0) return null
  const headers = [...new Set(sheets.flatMap(likelyHeaders))]
  return `no column is headed “${quoted(header)}”; ${headers.length === 0 ? 'the file has no headers' : `there are ${quotedList(headers)}`}.`
}

function answerIn(answer: ColumnAnswer, sheets: readonly SheetCells[]): ColumnAnswer | Refusal {
  const argument = `--column for ${answer.column ?? `“${quoted(answer.header)}”`}`
  const sheet = answer.sheet === undefined ? null : sheetNamed(sheets, answer.sheet, argument)
  if (isRefusal(sheet)) return sheet
  const why = whyNoColumn(answer, sheet === null ? sheets : [sheet])
  if (why !== null) return refuse(`${argument}: ${why}`)
  return sheet === null ? answer : { ...answer, sheet: sheet.name }
}

/** The choices to read these sheets by, or one sentence about an argument that does not fit them. */
export function readingChoices(
  { answers, system, sheet: name }: Pick<Wanted, 'answers' | 'system' | 'sheet'>,
  sheets: readonly SheetCells[]
): ReadingChoices | Refusal {
  const sheet = name === null ? null : sheetNamed(sheets, name, `--sheet ${name}`)
  if (isRefusal(sheet)) return sheet
  const fitted = answers.map((answer) => answerIn(answer, sheet === null ? sheets : [sheet]))
  const wrong = fitted.find(isRefusal)
  if (wrong !== undefined) return wrong
  return {
    ...(fitted.length === 0
      ? {}
      : { answers: fitted.filter((each): each is ColumnAnswer => !isRefusal(each)) }),
    ...(system === null ? {} : { system }),
    ...(sheet === null ? {} : { sheet: sheet.name })
  }
}
