/**
 * The cells of sheets as XML (ECMA-376 part 1, 18.3.1), written in one pass. The file library works out the look of every
 * cell again and makes several objects a cell, which takes longer than all the rest of a long file.
 */
import { columnLetters, isErrorText, type Area, type Cell } from '../../../shared/cells'
import type { BookSheet, FileCell, FileLook, FileRow } from './fileBook'
import type { FileStyle } from './fileStyle'

/** What the sheets of a file share: the number of each look, and the texts with the number of each. */
export interface SharedOfBook {
  readonly numberOf: (style: FileStyle | undefined) => number
  readonly texts: Map<string, number>
}

/** What XML has other signs for, and control characters, which it cannot hold: they are written by their numbers. */
const special = /[&<>\p{Cc}]/gu

const signs: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '\t': '\t',
  '\n': '\n'
}

/** A control character as a text of an .xlsx holds it (ECMA-376 part 1, ST_Xstring). */
function byNumber(sign: string): string {
  return `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`
}

function escaped(text: string): string {
  return text.replace(special, (sign) => signs[sign] ?? byNumber(sign))
}

function numberOfText(text: string, texts: Map<string, number>): number {
  const known = texts.get(text)
  if (known !== undefined) return known
  texts.set(text, texts.size)
  return texts.size - 1
}

function textXml(place: string, text: string, texts: Map<string, number>): string {
  return `<c${place} t="s"><v>${String(numberOfText(text, texts))}</v></c>`
}

/** A cell with a value; empty where there is nothing to write. */
function valueXml(place: string, value: Cell, texts: Map<string, number>): string {
  if (value === null) return place.includes(' s=') ? `<c${place}/>` : ''
  if (typeof value === 'number') return Number.isFinite(value) ? `<c${place}><v>${String(value)}</v></c>` : ''
  if (typeof value === 'boolean') return `<c${place} t="b"><v>${value ? '1' : '0'}</v></c>`
  return isErrorText(value) ? `<c${place} t="e"><v>${escaped(value)}</v></c>` : textXml(place, value, texts)
}

function formulaXml(place: string, formula: string, result: Cell | undefined): string {
  const written = `<f>${escaped(formula)}</f>`
  if (typeof result === 'string') return `<c${place} t="str">${written}<v>${escaped(result)}</v></c>`
  if (typeof result === 'boolean') return `<c${place} t="b">${written}<v>${result ? '1' : '0'}</v></c>`
  return typeof result === 'number'
    ? `<c${place}>${written}<v>${String(result)}</v></c>`
    : `<c${place}>${written}</c>`
}

/** A cell that stands by its address. */
interface PlacedCell {
  readonly column: number
  readonly cell: Partial<FileCell>
}

const noCells: readonly PlacedCell[] = []

/** The cells that stand by their address, by row and from the left. */
function placedCells({ cells }: BookSheet): readonly (PlacedCell[] | undefined)[] {
  const rows: (PlacedCell[] | undefined)[] = []
  for (const [address, cell] of cells ?? []) {
    const comma = address.indexOf(',')
    const row = Number(address.slice(0, comma))
    while (rows.length <= row) rows.push(undefined)
    ;(rows[row] ??= []).push({ column: Number(address.slice(comma + 1)), cell })
  }
  for (const row of rows) row?.sort((a, b) => a.column - b.column)
  return rows
}

/** The look of a cell by its attribute, where it has one of its own. */
const lookXml = (look: number): string => (look === 0 ? '' : ` s="${String(look)}"`)

/** The looks of the values of a row as attributes, and which of them can be seen on a blank cell. */
interface RowLooks {
  readonly attributes: readonly string[]
  readonly shows: readonly boolean[]
}

function rowLooks(looks: readonly FileLook[], { numberOf }: SharedOfBook): RowLooks {
  return {
    attributes: looks.map(({ style }) => lookXml(numberOf(style))),
    shows: looks.map(({ shows }) => shows)
  }
}

/** The looks of every row; those that are one are looked up once. */
function looksByRow({ looks, columns = [] }: BookSheet, shared: SharedOfBook): (row: number) => RowLooks {
  const ofColumns = rowLooks(
    columns.map(({ style }) => ({ style, shows: style !== undefined })),
    shared
  )
  if (looks === undefined) return () => ofColumns
  const known = new Map<readonly FileLook[], RowLooks>()
  for (const each of looks) if (!known.has(each)) known.set(each, rowLooks(each, shared))
  return (row) => known.get(looks[row] ?? []) ?? ofColumns
}

function ownXml(place: string, cell: Partial<FileCell>, texts: Map<string, number>): string {
  const { value = null, formula, formulaResult, richText } = cell
  if (formula !== undefined) return formulaXml(place, formula, formulaResult)
  return richText === undefined
    ? valueXml(place, value, texts)
    : textXml(place, richText[0]?.text ?? '', texts)
}

/** What the cells of a row are written from. */
interface RowToWrite {
  readonly row: number
  readonly values: readonly Cell[]
  readonly looks: RowLooks
  /** Cells that stand by their address, from the left. */
  readonly own: readonly PlacedCell[]
}

/** The place of the last value that is not blank, or -1. */
function lastFilled(values: readonly Cell[]): number {
  let at = values.length - 1
  while (at >= 0 && values[at] === null) at--
  return at
}

/**
 * The cells of a row. A cell among the values that has no look itself has that of its place. Blank cells are written up to the
 * last value, as somebody may fill them in, and beyond it where their look can be seen.
 */
function rowXml(
  { row, values, looks, own }: RowToWrite,
  letters: readonly string[],
  { numberOf, texts }: SharedOfBook
): string {
  const number = `${String(row + 1)}"`
  let xml = ''
  let at = 0
  const lastOwn = own.at(-1)?.column ?? -1
  const last = Math.max(values.length - 1, lastOwn)
  const filled = Math.max(lastFilled(values), lastOwn)
  for (let column = 0; column <= last; column++) {
    const cell = own[at]?.column === column ? own[at++]?.cell : undefined
    const value = values[column] ?? null
    if (cell === undefined && value === null && column > filled && looks.shows[column] !== true) continue
    const look =
      cell?.style === undefined && column < values.length
        ? (looks.attributes[column] ?? '')
        : lookXml(numberOf(cell?.style))
    const place = ` r="${letters[column] ?? columnLetters(column)}${number}${look}`
    xml += cell === undefined ? valueXml(place, value, texts) : ownXml(place, cell, texts)
  }
  return xml
}

function rowAttributes(row: number, size: FileRow | undefined): string {
  const height = size?.height === undefined ? '' : ` ht="${String(size.height)}" customHeight="1"`
  return ` r="${String(row + 1)}"${height}${size?.hidden === true ? ' hidden="1"' : ''}`
}

/** The rows of a sheet with what its cells hold and how they look, and the rectangle that they fill from the first cell on. */
export function sheetDataXml(sheet: BookSheet, shared: SharedOfBook): { xml: string; area: Area } {
  const { rows = [], rowSizes = new Map<number, FileRow>(), columns = [] } = sheet
  const placed = placedCells(sheet)
  const looksOf = looksByRow(sheet, shared)
  const letters = columns.map((_, column) => columnLetters(column))
  let count = Math.max(rows.length, placed.length)
  for (const row of rowSizes.keys()) count = Math.max(count, row + 1)
  let right = Math.max(1, columns.length)
  const written: string[] = ['<sheetData>']
  for (let row = 0; row < count; row++) {
    const [values, own, size] = [rows[row] ?? [], placed[row] ?? noCells, rowSizes.get(row)]
    right = Math.max(right, values.length, (own.at(-1)?.column ?? -1) + 1)
    const cells = rowXml({ row, values, looks: looksOf(row), own }, letters, shared)
    if (cells === '' && size === undefined) continue
    written.push(`<row${rowAttributes(row, size)}${cells === '' ? '/>' : `>${cells}</row>`}`)
  }
  written.push('</sheetData>')
  return { xml: written.join(''), area: { row: 0, column: 0, rows: Math.max(1, count), columns: right } }
}

/** All texts of a workbook, each once. */
export function sharedTextsXml(texts: ReadonlyMap<string, number>): string {
  const written: string[] = []
  for (const text of texts.keys())
    written.push(
      `<si><t${/^\s|\s$|[\n\t]/.test(text) ? ' xml:space="preserve"' : ''}>${escaped(text)}</t></si>`
    )
  const count = String(written.length)
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" uniqueCount="${count}">${written.join('')}</sst>`
}
