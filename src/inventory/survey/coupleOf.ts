import { coupleIn, type Couple } from '../headers/twoThings'
import type { ColumnMatch } from '../inventory'
import { lengthOf } from '../lengthOf'

/** What the two numbers in the cells of a column may be: as its header says, or by what it was nearly taken for. */
export function coupleOf({ header, unit, runnerUp }: ColumnMatch): Couple {
  const named = coupleIn(header)
  if (named !== null) return named
  const kind = runnerUp === null ? null : lengthOf(runnerUp)
  return kind === 'height' || (kind === null && (unit === 'ft' || unit === 'm'))
    ? ['origin', 'tip']
    : ['diameter', 'stem']
}
