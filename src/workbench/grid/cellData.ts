/** One cell of the grid's own data and what it means to a spreadsheet's user. */
import { CellValueType, type ICellData, type IObjectMatrixPrimitiveType, type Nullable } from '@univerjs/core'
import type { Area, Cell } from '../../../shared/cells'

export function richText(cell: ICellData): string | null {
  const text = cell.p?.body?.dataStream
  return text === undefined ? null : text.replace(/\r\n$/, '').replaceAll('\r', '\n')
}

/** What a cell of the grid holds, as a spreadsheet's user would name it; nothing is null. */
export function cellValue(cell: Nullable<ICellData>): Cell {
  if (!cell) return null
  const text = richText(cell)
  if (text !== null) return text
  const { v, t } = cell
  if (v === undefined || v === null) return null
  if (t === CellValueType.BOOLEAN) return v === true || v === 1 || String(v).toUpperCase() === 'TRUE'
  if (t === CellValueType.NUMBER) return Number(v)
  return v
}

/** What to store for a typed value: "=" begins a formula and "'" a text, as Excel reads them. */
export function typedCell(value: Cell): ICellData {
  const empty = { f: null, si: null, p: null, ref: null }
  if (value === null || value === '') return { ...empty, v: null, t: null }
  if (typeof value === 'number') return { ...empty, v: value, t: CellValueType.NUMBER }
  if (typeof value === 'boolean') return { ...empty, v: value ? 1 : 0, t: CellValueType.BOOLEAN }
  if (value.startsWith('=') && value.length > 1) return { ...empty, f: value, v: null, t: null }
  return { ...empty, v: value.startsWith("'") ? value.slice(1) : value, t: CellValueType.STRING }
}

/** Builds the sparse table of cells that the grid's mutations take. */
export function cellMatrix(
  area: Area,
  cell: (row: number, column: number) => ICellData
): IObjectMatrixPrimitiveType<ICellData> {
  const rows: IObjectMatrixPrimitiveType<ICellData> = {}
  for (let row = 0; row < area.rows; row++) {
    const cells: Record<number, ICellData> = {}
    for (let column = 0; column < area.columns; column++) cells[area.column + column] = cell(row, column)
    rows[area.row + row] = cells
  }
  return rows
}
