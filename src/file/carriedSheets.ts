/** What --out carries along so that its workbook can be planned again: the inventory as it was read, and the user's sheets. */
import type { Cell, CellBlock } from '../../shared/cells'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { freeSheetName } from '../sheets/ownSheets'
import type { Content, SheetDescription } from '../sheets/sheet'
import type { BookSheet, FilePicture } from './file-library/fileBook'
import { sheetCells } from './sheetCells'

/** Characters of a sheet's name, and what none may hold, as Excel has it (from memory). */
const longestName = 31
const notInNames = /[[\]:*?/\\]|\p{Cc}/gu

/** A name that a sheet can have. */
function possibleName(name: string): string {
  const possible = name
    .replace(notInNames, ' ')
    .replace(/^'+|'+$/g, '')
    .trim()
    .slice(0, longestName)
    .trim()
  return possible === '' || possible.toLowerCase() === 'history' ? 'Inventory' : possible
}

/** The same with a number behind it where another sheet has it. */
function freeName(name: string, taken: readonly string[]): string {
  const possible = possibleName(name)
  return freeSheetName(possible.slice(0, longestName - 5), taken) === possible.slice(0, longestName - 5)
    ? freeSheetName(possible, taken)
    : freeSheetName(possible.slice(0, longestName - 5), taken)
}

/** Names for sheets as they were read, by their names then; most are the same. */
export function carriedNames(sheets: readonly SheetCells[]): ReadonlyMap<string, string> {
  const names = new Map<string, string>()
  for (const { name } of sheets) names.set(name, freeName(name, [...names.values()]))
  return names
}

/** The cells at their places in the sheet. */
function placed({ rows, top, left }: SheetCells): Cell[][] {
  const before = Array.from({ length: top }, (): Cell[] => [])
  const beside = Array<Cell>(left).fill(null)
  return [...before, ...rows.map((row) => [...beside, ...row])]
}

/** Characters a column is wide at least and at most. */
const [narrowest, widest] = [8, 40]

function widthsOf(rows: readonly (readonly Cell[])[]): number[] {
  const widths: number[] = []
  for (const row of rows)
    row.forEach((cell, column) => {
      const length = Math.min(widest, String(cell ?? '').length + 2)
      widths[column] = Math.max(widths[column] ?? narrowest, length)
    })
  return Array.from(widths, (width) => width ?? narrowest)
}

/** A sheet of the inventory as it was read: its cells, its merges, its pictures, and what was hidden of it. */
export function carriedInventory(
  sheet: SheetCells,
  name: string,
  pictures: readonly FilePicture[] = []
): BookSheet {
  const { top, left, merges = [], hidden, hiddenRows = new Set(), hiddenColumns = new Set() } = sheet
  const rows = placed(sheet)
  const widths = widthsOf(rows)
  const columns = Math.max(0, ...[...hiddenColumns].map((column) => left + column + 1), widths.length)
  return {
    name,
    ...(hidden === true ? { hidden } : {}),
    ...sheetCells({ rows, widths, formats: [] }),
    columns: Array.from({ length: columns }, (_none, column) => ({
      width: widths[column] ?? narrowest,
      ...(hiddenColumns.has(column - left) ? { hidden: true } : {})
    })),
    rowSizes: new Map([...hiddenRows].map((row) => [top + row, { hidden: true }])),
    merged: merges.map((merge) => ({
      row: top + merge.top,
      column: left + merge.left,
      rows: merge.bottom - merge.top + 1,
      columns: merge.right - merge.left + 1
    })),
    ...(pictures.length === 0 ? {} : { pictures: [...pictures] }),
    freeze: { rows: 0, columns: 0 },
    gridlines: true,
    page: {},
    footer: ''
  }
}

/** A share that was read as the text it is shown as, where the sheet as we write it holds a number. */
function asWritten(cell: Cell, fresh: Content | undefined): Content {
  const share =
    typeof fresh === 'number' && typeof cell === 'string' ? /^(-?[\d.]+) %$/.exec(cell)?.[1] : undefined
  return share === undefined ? cell : Number((Number(share) / 100).toPrecision(15))
}

/**
 * A sheet of the user's own as it was read: with the looks it was first written with where its rows are still in their
 * places, otherwise plain.
 */
export function carriedSheet({ rows }: CellBlock, fresh: SheetDescription): SheetDescription {
  const inPlace =
    rows.length === fresh.rows.length &&
    rows.every((row, at) => String(row[0] ?? '') === String(fresh.rows[at]?.[0] ?? ''))
  if (inPlace)
    return {
      ...fresh,
      rows: rows.map((row, at) => row.map((cell, column) => asWritten(cell, fresh.rows[at]?.[column])))
    }
  const { kind, name, freezeColumns, page } = fresh
  const columns = Math.max(fresh.widths.length, ...rows.map((row) => row.length))
  const widths = Array.from({ length: columns }, (_none, column) => fresh.widths[column] ?? narrowest)
  return {
    ...{ kind, name, freezeRows: 0, freezeColumns, page: { ...page, titleRow: null } },
    ...{ rows: rows.map((row) => [...row]), formats: [], tables: [], heights: [], widths }
  }
}
