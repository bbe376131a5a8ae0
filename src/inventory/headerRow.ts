import type { Cell } from '../../shared/cells'
import type { Field } from '../../shared/columns'
import { likelyFields } from './headers/likelihood'

/** What a header's words are taken for at least, before anything below it is looked at (house judgment). */
const likelyEnough = 0.55

/** Whether a row names the columns of an inventory, in any wording: at least three known columns, a tree or limb among them. */
export function namesColumns(row: readonly Cell[]): boolean {
  const fields = new Set<Field>()
  for (const cell of row) {
    const best = typeof cell === 'string' && cell.length <= 120 ? likelyFields(cell)[0] : undefined
    if (best !== undefined && best.score >= likelyEnough) fields.add(best.field)
  }
  return fields.size >= 3 && (fields.has('tree') || fields.has('limb'))
}
