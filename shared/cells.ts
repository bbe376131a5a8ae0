/** One spreadsheet cell as the readers hand it over. Error cells arrive as their text, for instance "#N/A". */
export type Cell = string | number | boolean | null

/** A rectangle of cells and where its top left corner sits (row and column counted from 0). */
export interface CellBlock {
  rows: Cell[][]
  sheet: string
  top: number
  left: number
  /** Where a cell of the block stands in the sheet, for cells that were gathered from several places. */
  placeOf?(row: number, column: number): { row: number; column: number }
}

/** Cells of a sheet as they were read, from the place of the first of them. */
export interface ReadCells {
  readonly sheet: string
  readonly rows: readonly (readonly Cell[])[]
  readonly top: number
  readonly left: number
}

/** A rectangle of rows and columns of a sheet, counted from 0. */
export interface Area {
  row: number
  column: number
  rows: number
  columns: number
}

/** The area of cells that were read, or null where there are none. */
export function areaRead({ rows, top, left }: Omit<ReadCells, 'sheet'>): Area | null {
  const columns = rows[0]?.length ?? 0
  return columns === 0 ? null : { row: top, column: left, rows: rows.length, columns }
}

/** The cells that two areas share, or null. */
export function sharedPart(one: Area, other: Area): Area | null {
  const row = Math.max(one.row, other.row)
  const column = Math.max(one.column, other.column)
  const rows = Math.min(one.row + one.rows, other.row + other.rows) - row
  const columns = Math.min(one.column + one.columns, other.column + other.columns) - column
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : null
}

/** The column's letters: 0 gives A, 26 gives AA. */
export function columnLetters(column: number): string {
  let letters = ''
  for (let rest = column; rest >= 0; rest = Math.floor(rest / 26) - 1)
    letters = String.fromCharCode(65 + (rest % 26)) + letters
  return letters
}

/** A sheet's name as it stands in an address: quoted wherever a formula would need it. */
export function sheetPrefix(sheet: string): string {
  if (sheet === '') return ''
  const plain =
    /^[A-Za-z_][A-Za-z0-9_.]*$/.test(sheet) && !/^([A-Za-z]{1,3}[0-9]+|[Rr][0-9]*[Cc]?[0-9]*)$/.test(sheet)
  return plain ? `${sheet}!` : quotedPrefix(sheet)
}

/** The same, quoted in any case: what names of a workbook and of a file hold. */
export function quotedPrefix(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'!`
}

/** The address of one cell, rows and columns counted from 0: (4, 2, "Trees") gives Trees!C5. */
export function cellAddress(row: number, column: number, sheet = ''): string {
  return `${sheetPrefix(sheet)}${columnLetters(column)}${row + 1}`
}

/** The address of a rectangle of cells: B2:C4, or B2 where it is one cell. */
export function areaOf(area: Area): string {
  const first = cellAddress(area.row, area.column)
  const last = cellAddress(area.row + area.rows - 1, area.column + area.columns - 1)
  return first === last ? first : `${first}:${last}`
}

/** The same with dollar signs, as names and charts hold it: $B$2:$C$4. */
export function absoluteArea(area: Area): string {
  return areaOf(area).replace(/[A-Z]+|\d+/g, '$$$&')
}

/** The address of a cell of the block, counted within the block. */
export function addressIn(block: CellBlock, row: number, column: number): string {
  const place = block.placeOf?.(row, column)
  return place === undefined
    ? cellAddress(block.top + row, block.left + column, block.sheet)
    : cellAddress(place.row, place.column, block.sheet)
}

/** A sign of plain text other than a space; NaN, the code of no sign, is none. */
function isPlainSign(code: number): boolean {
  return code > 32 && code < 127
}

/** Nothing in it: null, an empty text or only spaces. Most texts begin with a plain sign, which tells at once. */
export function isBlank(cell: Cell | undefined): boolean {
  if (typeof cell !== 'string') return cell === null || cell === undefined
  return !isPlainSign(cell.charCodeAt(0)) && cell.trim() === ''
}

/** "#", with which the texts of errors begin. */
const numberSign = 35

/** Whether a text can be taken as it stands: neither blank nor an error, and without spaces around. */
export function isPlainText(text: string): boolean {
  const first = text.charCodeAt(0)
  return isPlainSign(first) && first !== numberSign && isPlainSign(text.charCodeAt(text.length - 1))
}

/** A text as `trim` gives it; most are what they are. */
export function trimmed(text: string): string {
  return isPlainText(text) ? text : text.trim()
}

const errorTexts =
  /^#(N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!|FIELD!|BLOCKED!|CONNECT!|BUSY!|GETTING_DATA|UNKNOWN!)/

/** The text of a spreadsheet error, for instance "#N/A". */
export function isErrorText(cell: Cell | undefined): boolean {
  return typeof cell === 'string' && cell.startsWith('#') && errorTexts.test(cell)
}

/** A text as it may be shown inside a sentence: one line, at most 40 characters. */
export function quoted(cell: Cell | undefined): string {
  const text = String(cell ?? '')
    .replace(/\s+/g, ' ')
    .trim()
  return text.length > 40 ? `${text.slice(0, 39)}…` : text
}
