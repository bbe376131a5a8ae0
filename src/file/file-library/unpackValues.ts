/** The values of an .xlsx and the names on them, without looks: all that a plan needs of a file. */
import { dateToSerial, HucreError, type CellValue, type NamedRange } from 'hucre'
import { readXlsx } from 'hucre/xlsx'
import type { Cell } from '../../../shared/cells'
import { showDate } from '../../../shared/words/dates'
import type { FileName } from './fileBook'
import { isReservedName } from './printNames'

export interface SheetValues {
  name: string
  hidden: boolean
  rows: Cell[][]
}

export interface BookValues {
  sheets: SheetValues[]
  names: FileName[]
}

/** The bytes are no workbook that can be read. */
export interface UnreadableBook {
  /** What the library says of it in one line, or null. */
  unreadable: string | null
}

/** The library gives dates as moments; a cell holds the serial (in the 1900 system, whatever the file counts in). */
export function serialOf(value: CellValue): Cell {
  return value instanceof Date ? dateToSerial(value) : value
}

/** A date is handed on as a text, "2026-03-01": as a number it would be read as an amount or a length. */
function cellOf(value: CellValue): Cell {
  if (value === '') return null
  const isDay = value instanceof Date && !Number.isNaN(value.getTime())
  return isDay ? showDate(value) : serialOf(value)
}

/** Names of the workbook as its author gave them; those of the file format are left out. */
export function namesIn(ranges: readonly NamedRange[] = []): FileName[] {
  return ranges
    .filter(({ name }) => !isReservedName(name))
    .map(({ name, range, scope }) => ({ name, range, ...(scope === undefined ? {} : { scope }) }))
}

export async function unpackValues(bytes: Uint8Array): Promise<BookValues | UnreadableBook> {
  try {
    const { sheets, namedRanges } = await readXlsx(bytes)
    return {
      sheets: sheets.map(({ name, hidden, veryHidden, rows }) => ({
        name,
        hidden: hidden === true || veryHidden === true,
        rows: rows.map((row) => row.map(cellOf))
      })),
      names: namesIn(namedRanges)
    }
  } catch (error) {
    return { unreadable: error instanceof HucreError ? (error.message.split('\n')[0] ?? '') : null }
  }
}
