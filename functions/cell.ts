import { isErrorText } from '../shared/cells'
import { refuse, type Refusal } from '../shared/refusal'
import type { Argument } from './argument'

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

/** Nothing in it, as far as this parameter is concerned. */
export function isBlankFor(argument: Argument<unknown>, cell: PlainCell): boolean {
  if (cell === null) return true
  if (typeof cell === 'string') return cell.trim() === ''
  return cell === 0 && argument.zeroIsBlank
}

/** The value of one cell for a parameter: read, its fallback where blank, or why there is none. */
export function readCell<T>(argument: Argument<T>, cell: PlainCell): T | Refusal {
  if (cell === null || isBlankFor(argument, cell))
    return argument.fallback ?? refuse(`${argument.name} is blank: give a value.`, 'missing')
  if (isErrorText(cell))
    return refuse(
      `${argument.name} holds the error ${String(cell)}: mend that cell.`,
      cell === '#N/A' ? 'missing' : 'wrong'
    )
  return argument.read(cell)
}
