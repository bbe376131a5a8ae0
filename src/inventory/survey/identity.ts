import { isBlank, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import type { Problem } from '../../../shared/problems'
import type { Part } from './part'
import { treeKey } from './treeKeys'

/** A row with the id that it gives or inherits. */
export interface IdentifiedRow {
  readonly part: Part
  /** Row of the part's block. */
  readonly row: number
  readonly id: string
  /** What the id is compared by. */
  readonly key: string
}

/** Rows with the tree each belongs to, and those that belong to none. */
export interface Identified {
  readonly rows: readonly IdentifiedRow[]
  readonly refused: readonly { readonly part: Part; readonly row: number; readonly why: Problem }[]
}

/** What tells one tree from another with the same id; values that change with a slip of the pen stand last. */
export const telling = ['site', 'species', 'trunk', 'height', 'crownBase'] as const satisfies readonly Field[]
export type Telling = (typeof telling)[number]

/** The columns of a part that tell trees apart, each with its place among `telling`, and the one of the limbs' ids. */
interface TellingColumns {
  readonly columns: readonly { readonly at: number; readonly column: number }[]
  readonly limb: number
}

function tellingOf({ matches, group }: Part): TellingColumns {
  const columnOf = (field: Field): number => matches.find((match) => match.field === field)?.column ?? -1
  return {
    columns: telling.flatMap((field, at) => {
      const column = columnOf(field)
      return column < 0 ? [] : [{ at, column }]
    }),
    limb: group === null ? columnOf('limb') : -1
  }
}

export function plain(cell: Cell | undefined): string {
  return String(cell ?? '')
    .trim()
    .toLowerCase()
}

/** Whether a cell says that nothing was measured, such as "n/a". */
export type IsNothing = (part: Part, row: number, field: Field) => boolean

/** Sizes that differ by less are two readings of one tree (house judgment). */
const sameSize = 0.15

/** Whether two cells cannot both hold of one tree. */
function areTwo(field: Telling, mine: Cell | undefined, theirs: Cell | undefined): boolean {
  if (plain(mine) === plain(theirs)) return false
  if (field === 'site' || field === 'species') return true
  const [one, other] = [Number(mine), Number(theirs)]
  return !(Math.abs(one - other) <= sameSize * Math.max(one, other))
}

/** What the rows of one id say against each other. */
export interface Conflict {
  readonly against: ReadonlySet<Telling>
  /** A limb's id comes twice. */
  readonly twice: boolean
}

interface Met {
  /** What was first typed of each of `telling`. */
  readonly cells: (Cell | undefined)[]
  /** The ids of limbs; null as long as there are none. */
  limbs: Set<string> | null
  against: Set<Telling> | null
  twice: boolean
}

/** The ids whose rows contradict each other, with what they contradict each other in. */
export function conflictsIn(rows: readonly IdentifiedRow[], isNothing: IsNothing): Map<string, Conflict> {
  const met = new Map<string, Met>()
  const columnsOfPart = new Map<Part, TellingColumns>()
  let any = false
  for (const { part, row, key } of rows) {
    let read = columnsOfPart.get(part)
    if (read === undefined) columnsOfPart.set(part, (read = tellingOf(part)))
    let known = met.get(key)
    if (known === undefined) met.set(key, (known = { cells: [], limbs: null, against: null, twice: false }))
    const cells = part.block.rows[row] ?? []
    for (const { at, column } of read.columns) {
      const [mine, theirs] = [cells[column], known.cells[at]]
      if (mine === theirs || isBlank(mine)) continue
      const field = telling[at] ?? 'site'
      if (theirs === undefined) known.cells[at] = isNothing(part, row, field) ? undefined : mine
      else if (!isNothing(part, row, field) && areTwo(field, mine, theirs)) {
        any = true
        known.against = (known.against ?? new Set()).add(field)
      }
    }
    const limb = cells[read.limb]
    if (limb === undefined || isBlank(limb)) continue
    const id = treeKey(String(limb).trim())
    if (known.limbs?.has(id) === true) any = known.twice = true
    known.limbs = (known.limbs ?? new Set()).add(id)
  }
  if (!any) return new Map()
  return new Map(
    [...met].flatMap(([key, { against, twice }]) =>
      against !== null || twice ? [[key, { against: against ?? new Set<Telling>(), twice }]] : []
    )
  )
}
