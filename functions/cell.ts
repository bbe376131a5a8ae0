import { isErrorText } from '../shared/cells'
import { refuse, type Refusal } from '../shared/refusal'
import type { Argument } from './argument'
import type { Cells } from './grid'
import type { PlainCell } from './plainCell'

/** Nothing in it, as far as this parameter is concerned. */
export function isBlankFor(argument: Argument<unknown>, cell: PlainCell): boolean {
  if (cell === null) return true
  if (typeof cell === 'string') return cell.trim() === ''
  return cell === 0 && argument.zeroIsBlank
}

/** The value of one cell of a range for a parameter: read, its fallback where blank, or why there is none. */
export function readCell<T>(argument: Argument<T>, cell: PlainCell, range?: Cells): T | Refusal {
  if (cell === null || isBlankFor(argument, cell))
    return argument.fallback ?? refuse(`${argument.name} is blank: give a value.`, 'missing')
  if (isErrorText(cell))
    return refuse(
      `${argument.name} holds the error ${String(cell)}: correct that cell.`,
      cell === '#N/A' ? 'missing' : 'wrong'
    )
  return argument.read(cell, range)
}
