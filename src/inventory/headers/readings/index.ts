import type { Field } from '../../../../shared/columns'
import { ofLimbs } from './ofLimbs'
import { ofTrees } from './ofTrees'
import { readingOf, type Reading } from './reading'

export type { Reading, Standing } from './reading'

/** Every field with the ways in which it is headed. */
export const readings: readonly { readonly field: Field; readonly readings: readonly Reading[] }[] = (
  Object.entries({ ...ofTrees, ...ofLimbs }) as [Field, readonly string[]][]
).map(([field, lines]) => ({ field, readings: lines.map(readingOf) }))
