import { isBlank, trimmed, type Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import type { Problem } from '../../../shared/problems'
import type { CellReader } from '../cellReader'
import { noKeys, placeOrAdd, type FewKeys } from './fewKeys'
import { columnGiving, type Part } from './part'
import { plain } from './plain'
import { treeKey } from './treeKeys'
import { zoneAt, zonesOf, type Zones } from './zones'

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
export const telling = [
  'zone',
  'site',
  'species',
  'trunk',
  'height',
  'crownBase'
] as const satisfies readonly Field[]
export type Telling = (typeof telling)[number]

/** The columns of a part that tell trees apart, in the order of `telling` (-1 for none), and the one of the limbs' ids. */
interface TellingColumns {
  readonly columns: readonly number[]
  readonly limb: number
  /** Lines between the rows that name zones; null where there are none. */
  readonly zones: Zones | null
}

function tellingOf(part: Part): TellingColumns {
  const zones = zonesOf(part)
  return {
    zones: zones === null || zones.lines.length === 0 ? null : zones,
    columns: telling.map((field) => columnGiving(part, field)),
    limb: part.group === null ? columnGiving(part, 'limb') : -1
  }
}

/** The readers of all parts, by which a cell is told that says that nothing was measured, such as "n/a". */
export type PartReaders = ReadonlyMap<Part, ReadonlyMap<Field, CellReader>>

function isNothing(readers: PartReaders, part: Part, row: number, field: Field): boolean {
  return readers.get(part)?.get(field)?.isBlank(row) === true
}

/** Sizes that differ by less are two readings of one tree (house judgment). */
const sameSize = 0.15

const firstNumber = /^[^\d−-]*(\d+(?:[.,]\d+)?)/
/** What is larger is no size, but a day. */
const largestSize = 36_000

/** The first number of a cell; NaN, which contradicts nothing, where it gives no size. */
function sizeIn(cell: Cell | undefined): number {
  const found = typeof cell === 'string' ? firstNumber.exec(cell)?.[1]?.replace(',', '.') : cell
  const size = found === undefined || found === null ? NaN : Number(found)
  return size > 0 && size < largestSize ? size : NaN
}

/** Whether two cells cannot both hold of one tree. */
function areTwo(field: Telling, mine: Cell | undefined, theirs: Cell | undefined): boolean {
  if (plain(mine) === plain(theirs)) return false
  if (field === 'zone' || field === 'site' || field === 'species') return true
  const [one, other] = [sizeIn(mine), sizeIn(theirs)]
  return Math.abs(one - other) > sameSize * Math.max(one, other)
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
  readonly limbs: FewKeys
  /** The line of the zone above its rows; null where none was met. */
  zone: string | null
  against: Set<Telling> | null
  twice: boolean
}

const noCells: readonly undefined[] = telling.map(() => undefined)

/** The ids whose rows contradict each other, with what they contradict each other in. */
export function conflictsIn(rows: readonly IdentifiedRow[], readers: PartReaders): Map<string, Conflict> {
  const met = new Map<string, Met>()
  const columnsOfPart = new Map<Part, TellingColumns>()
  let any = false
  // Rows of a tree mostly stand together, so that the part and the tree are those of the row before.
  let before: IdentifiedRow | undefined
  let read: TellingColumns | undefined
  let known: Met | undefined
  for (const each of rows) {
    const { part, key } = each
    if (part !== before?.part) read = columnsOfPart.get(part)
    if (read === undefined) columnsOfPart.set(part, (read = tellingOf(part)))
    if (key !== before?.key) known = met.get(key)
    if (known === undefined)
      met.set(
        key,
        (known = { cells: noCells.slice(), limbs: noKeys(), zone: null, against: null, twice: false })
      )
    if (meet(known, each, read, readers)) any = true
    before = each
  }
  if (!any) return new Map()
  return new Map(
    [...met].flatMap(([key, { against, twice }]) =>
      against !== null || twice ? [[key, { against: against ?? new Set<Telling>(), twice }]] : []
    )
  )
}

/** Compares a row with those of its id that came before; whether it contradicts them. */
function meet(
  known: Met,
  { part, row }: IdentifiedRow,
  { columns, limb, zones }: TellingColumns,
  readers: PartReaders
): boolean {
  let contradicts = false
  if (zones !== null) {
    const zone = zoneAt(zones, row)
    if (known.zone !== null && known.zone !== zone) {
      contradicts = true
      known.against = (known.against ?? new Set()).add('zone')
    }
    known.zone ??= zone
  }
  const cells = part.block.rows[row] ?? []
  for (let at = 0; at < columns.length; at++) {
    const mine = cells[columns[at] ?? -1]
    const theirs = known.cells[at]
    if (mine === theirs || isBlank(mine)) continue
    const field = telling[at] ?? 'site'
    if (theirs === undefined) known.cells[at] = isNothing(readers, part, row, field) ? undefined : mine
    else if (!isNothing(readers, part, row, field) && areTwo(field, mine, theirs)) {
      contradicts = true
      known.against = (known.against ?? new Set()).add(field)
    }
  }
  const id = cells[limb]
  if (id === undefined || isBlank(id)) return contradicts
  if (placeOrAdd(known.limbs, treeKey(trimmed(String(id)))) < 0) return contradicts
  known.twice = true
  return true
}
