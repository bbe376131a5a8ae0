import type { Reads } from '../../shared/columnKinds'
import { columns, type Column, type Field, type LimbValues, type TreeValues } from '../../shared/columns'
import type { Problem } from '../../shared/problems'
import type { CellReader } from './cellReader'
import { valueOf, type Reading } from './reading'

/** The readers of the columns that a block has. */
export type Readers = ReadonlyMap<Field, CellReader>

/** A tree or limb while it is read. */
export type Building<T> = { -readonly [K in keyof T]: T[K] }

/** A column whose values go into a tree or limb under a name of its own. */
export interface KeptColumn {
  readonly reader: CellReader
  readonly reads: Reads<unknown>
  readonly key: string
  /** The column's place in the dictionary. */
  readonly place: number
}

function keyOf({ into, field }: Column): string {
  return into ?? field
}

/** The columns of trees or of limbs that the block has and the model keeps by themselves, in the dictionary's order. */
export function keptColumns(readers: Readers, of: Column['of']): readonly KeptColumn[] {
  return columns.flatMap((column: Column & { field: Field }, place) => {
    const reader = readers.get(column.field)
    if (reader === undefined || column.of !== of || column.joins !== undefined) return []
    return [{ reader, reads: column.reads, key: keyOf(column), place }]
  })
}

function blanks(of: Column['of']): Record<string, unknown> {
  const kept = columns.filter((column: Column) => column.of === of && column.joins === undefined)
  return Object.fromEntries(kept.map((column: Column) => [keyOf(column), column.reads.absent]))
}

/** A tree and a limb of which nothing is known. */
export const blankTree = blanks('tree') as unknown as TreeValues
export const blankLimb = blanks('limb') as unknown as LimbValues

/**
 * Plain values to spread into many objects that name no further key. Parsed, because JavaScript keeps what it parses in
 * a form that is copied some thirty times as fast; without it, reading an inventory takes six times as long.
 */
export function template<T>(values: T): T {
  return JSON.parse(JSON.stringify(values)) as T
}

/** Whether a word of the column that is not known is asked, as nothing may be planned on a guess at it. */
export function isAsked({ kind, unread }: Reads<unknown>): boolean {
  return kind === 'choice' && unread === 'row'
}

/** Puts what a cell gives where it belongs; the dictionary's types hold the value to the place. */
export function put(
  into: object,
  { key, reads }: KeptColumn,
  reading: Reading<unknown>,
  problems: Problem[]
): void {
  ;(into as Record<string, unknown>)[key] = valueOf(reading, reads, problems)
}
