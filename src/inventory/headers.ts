import type { Cell } from '../../shared/cells'
import { fieldFromWords, readHeader, type Field } from '../../shared/columns'

/** Whether a row reads like the headers of an inventory: at least three known columns, a tree or limb among them. */
export function looksLikeHeaders(row: readonly Cell[]): boolean {
  const fields = new Set<Field>()
  for (const cell of row) {
    const field = typeof cell === 'string' ? fieldFromWords(readHeader(cell).words) : null
    if (field !== null) fields.add(field)
  }
  return fields.size >= 3 && (fields.has('tree') || fields.has('limb'))
}
