/** Addresses in A1 notation, read and written as the Excel API does. Rows and columns count from 0. */
import { type Area, columnLetters, sheetPrefix } from './cells'

/** The size of an Excel worksheet. */
export const sheetRows = 1_048_576
export const sheetColumns = 16_384

export const wholeSheet: Area = { row: 0, column: 0, rows: sheetRows, columns: sheetColumns }

/** For instance B2:C4, B:C for whole columns, 2:4 for whole rows. */
export function areaAddress(area: Area): string {
  const last = { row: area.row + area.rows - 1, column: area.column + area.columns - 1 }
  if (area.columns === sheetColumns) return `${area.row + 1}:${last.row + 1}`
  const [from, to] = [columnLetters(area.column), columnLetters(last.column)]
  if (area.rows === sheetRows) return `${from}:${to}`
  const first = `${from}${area.row + 1}`
  return area.rows === 1 && area.columns === 1 ? first : `${first}:${to}${last.row + 1}`
}

export function fullAddress(sheet: string, area: Area): string {
  return sheetPrefix(sheet) + areaAddress(area)
}

/** With dollar signs, as names hold it: 'Cut plan'!$A$1:$B$2. */
export function absoluteAddress(sheet: string, area: Area): string {
  return sheetPrefix(sheet) + areaAddress(area).replace(/[A-Z]+|\d+/g, '$$$&')
}

export interface ParsedAddress {
  sheet: string | null
  area: Area
}

const edge = /^(?:\$?([A-Z]{1,3}))?(?:\$?(\d{1,7}))?$/i

/** Null where the text is no address of one area. */
export function parseAddress(text: string): ParsedAddress | null {
  const { sheet, rest } = splitSheet(text.trim())
  const ends = rest.split(':').map((end) => edge.exec(end.trim()))
  const [first, second = first] = ends
  if (ends.length > 2 || !first || !second) return null
  if ((first[1] === undefined) !== (second[1] === undefined)) return null
  if ((first[2] === undefined) !== (second[2] === undefined)) return null
  const single = ends.length === 1 && (first[1] === undefined || first[2] === undefined)
  if (single) return null
  const columns = span(columnNumber(first[1]), columnNumber(second[1]), sheetColumns)
  const rows = span(rowNumber(first[2]), rowNumber(second[2]), sheetRows)
  if (!columns || !rows) return null
  return { sheet, area: { row: rows.from, column: columns.from, rows: rows.count, columns: columns.count } }
}

function splitSheet(text: string): { sheet: string | null; rest: string } {
  const mark = text.lastIndexOf('!')
  if (mark < 0) return { sheet: null, rest: text }
  const name = text.slice(0, mark)
  const plain = name.startsWith("'") && name.endsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name
  return { sheet: plain, rest: text.slice(mark + 1) }
}

function columnNumber(letters: string | undefined): number | null {
  if (letters === undefined) return null
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1
}

function rowNumber(digits: string | undefined): number | null {
  return digits === undefined ? null : Number(digits) - 1
}

/** Null stands for "not given": the whole extent. */
function span(one: number | null, other: number | null, limit: number) {
  if (one === null || other === null) return { from: 0, count: limit }
  const from = Math.min(one, other)
  const to = Math.max(one, other)
  return from < 0 || to >= limit ? null : { from, count: to - from + 1 }
}

/** The smallest area that holds both. */
export function boundingArea(one: Area, other: Area): Area {
  const row = Math.min(one.row, other.row)
  const column = Math.min(one.column, other.column)
  return {
    row,
    column,
    rows: Math.max(one.row + one.rows, other.row + other.rows) - row,
    columns: Math.max(one.column + one.columns, other.column + other.columns) - column
  }
}

export function withinSheet(area: Area): boolean {
  return (
    area.row >= 0 &&
    area.column >= 0 &&
    area.rows >= 1 &&
    area.columns >= 1 &&
    area.row + area.rows <= sheetRows &&
    area.column + area.columns <= sheetColumns
  )
}
