/** The values of an .xlsx and the names on them, without looks: all that a plan needs of a file. */
import { HucreError, XmlError, type Cell as LibraryCell, type CellValue, type Sheet } from 'hucre'
import { readXlsx } from 'hucre/xlsx'
import { cellAddress, type Cell } from '../../../shared/cells'
import { longestCellText } from '../../sheets/typedText'
import { counted } from '../../../shared/words/counts'
import { showDate } from '../../../shared/words/dates'
import type { FileName } from './fileBook'
import { namesIn, serialOf } from './foundValues'
import type { FoundPicture } from './picturesIn'
import type { FileSettings } from './settingsPart'
import { valuesPackage } from './valuesPackage'
import { UnusablePackage, type PackageFault } from './zipParts'

/** Merged cells, ends included; rows and columns count from 0. */
export interface Merge {
  top: number
  left: number
  bottom: number
  right: number
}

export interface SheetValues {
  name: string
  hidden: boolean
  /** Numbers that are shown as percentages are texts such as "5 %". */
  rows: Cell[][]
  merges: Merge[]
  /** Rows and columns that a person hid or filtered away. */
  hiddenRows: ReadonlySet<number>
  hiddenColumns: ReadonlySet<number>
}

export interface BookValues {
  sheets: SheetValues[]
  names: FileName[]
  /** What the add-in keeps in the workbook. */
  settings: FileSettings
  /** Pictures on its sheets, on each from the top down. */
  pictures: readonly FoundPicture[]
}

/** The bytes are no workbook that can be read: why, as a part of a sentence. */
export interface UnreadableBook {
  unreadable: string
}

/** A date as other programs write it, with the midnight that nobody typed. */
const midnight = /^\d{4}-\d{2}-\d{2}(?=T00:00(?::00(?:\.0+)?)?Z?$)/

/** A date is handed on as a text, "2026-03-01": as a number it would be read as an amount or a length. */
function cellOf(value: CellValue): Cell {
  if (value === '') return null
  if (typeof value === 'string') return value.length < 16 ? value : (midnight.exec(value)?.[0] ?? value)
  const isDay = value instanceof Date && !Number.isNaN(value.getTime())
  return isDay ? showDate(value) : serialOf(value)
}

class LongCell extends Error {
  constructor(readonly address: string) {
    super(address)
  }
}

/** A formula that its program left without a result: it stands for itself, so that a reader can tell it from a blank. */
function isUnsolved({ formula, value }: LibraryCell): boolean {
  return formula !== undefined && value === null
}

function numbersOf(hidden: Iterable<readonly [number, { hidden?: boolean }]>): Set<number> {
  const found = new Set<number>()
  for (const [number, each] of hidden) if (each.hidden === true) found.add(number)
  return found
}

function valuesOf(sheet: Sheet): SheetValues {
  const { name, hidden, veryHidden, rows, merges = [], rowDefs = new Map(), columns = [] } = sheet
  const width = rows[0]?.length ?? 0
  rows.forEach((row, number) => {
    for (let at = 0; at < row.length; at++) {
      const cell = cellOf(row[at] ?? null)
      if (typeof cell === 'string' && cell.length > longestCellText)
        throw new LongCell(cellAddress(number, at, name))
      row[at] = cell
    }
  })
  for (const [at, cell] of sheet.cells ?? []) {
    const [row = 0, column = 0] = at.split(',').map(Number)
    const cells = rows[row]
    if (cells !== undefined && isUnsolved(cell))
      cells[column] = `=${cell.formula === '' ? '…' : (cell.formula ?? '')}`
  }
  return {
    name,
    hidden: hidden === true || veryHidden === true,
    rows: rows as Cell[][],
    merges: merges.map(({ startRow, startCol, endRow, endCol }) => ({
      top: startRow,
      left: startCol,
      bottom: endRow,
      right: endCol
    })),
    hiddenRows: numbersOf(rowDefs),
    hiddenColumns: numbersOf(columns.slice(0, width).entries())
  }
}

const faults: Record<PackageFault, string> = {
  'no zip': 'it is no .xlsx file, whatever its name says',
  damaged: 'a part of it is missing or damaged',
  password: 'it is protected by a password',
  'older kind': 'it is a workbook of the older kind .xls, whatever its name says',
  'too large': 'it unpacks to more than fits into memory',
  entities: 'it declares entities of its own, which no workbook does'
}

/** What the library reports, in words for a person. */
function reported({ message }: HucreError): string {
  const line = message.split('\n')[0] ?? ''
  const far = /^Sheet "(.*)" spans (\d+) rows x (\d+) columns/.exec(line)
  if (far !== null)
    return `sheet “${far[1] ?? ''}” has cells as far away as ${cellAddress(Number(far[2]) - 1, Number(far[3]) - 1)}`
  const missing = /missing worksheet file for sheet "(.*)"$/.exec(line)
  return missing === null ? line.replace(/^Invalid XLSX: /, '') : `its sheet “${missing[1] ?? ''}” is missing`
}

function whyUnreadable(error: unknown): string {
  if (error instanceof UnusablePackage) return faults[error.fault]
  if (error instanceof LongCell)
    return `${error.address} holds more than ${counted(longestCellText, 'character')}`
  if (error instanceof XmlError) return faults.damaged
  return error instanceof HucreError ? reported(error) : faults.damaged
}

export async function unpackValues(bytes: Uint8Array): Promise<BookValues | UnreadableBook> {
  try {
    const { bytes: values, cellless, settings, pictures } = await valuesPackage(bytes)
    const { sheets, namedRanges } = await readXlsx(values, { sheets: ({ name }) => !cellless.has(name) })
    return { sheets: sheets.map(valuesOf), names: namesIn(namedRanges), settings, pictures }
  } catch (error) {
    return { unreadable: whyUnreadable(error) }
  }
}
