import { isErrorText } from '../shared/cells'

/** A cell brought down to what it can hold. */
export type PlainCell = string | number | boolean | null

/** What a spreadsheet may hand over for one cell, brought down to a plain value; errors become their text. */
export function plainCell(cell: unknown): PlainCell {
  if (cell === null || cell === undefined) return null
  if (typeof cell === 'number' || typeof cell === 'string' || typeof cell === 'boolean') return cell
  if (typeof cell !== 'object') return '#UNKNOWN!'
  if ('basicValue' in cell) return plainCell(cell.basicValue)
  if ('code' in cell && typeof cell.code === 'string') return errorText(cell.code)
  return '#UNKNOWN!'
}

function errorText(code: string): string {
  return isErrorText(code) ? code : '#UNKNOWN!'
}
