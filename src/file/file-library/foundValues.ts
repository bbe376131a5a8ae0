/** What the library gives of values and names, in our words; it runs in a browser too. */
import { dateToSerial, type CellValue, type NamedRange } from 'hucre'
import type { Cell } from '../../../shared/cells'
import type { FileName } from './fileBook'
import { isReservedName } from './printNames'

/** The library gives dates as moments; a cell holds the serial (in the 1900 system, whatever the file counts in). */
export function serialOf(value: CellValue): Cell {
  return value instanceof Date ? dateToSerial(value) : value
}

/** Names of the workbook as its author gave them; those of the file format are left out. */
export function namesIn(ranges: readonly NamedRange[] = []): FileName[] {
  return ranges
    .filter(({ name }) => !isReservedName(name))
    .map(({ name, range, scope }) => ({ name, range, ...(scope === undefined ? {} : { scope }) }))
}
