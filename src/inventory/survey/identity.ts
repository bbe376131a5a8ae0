import { addressIn, isBlank, quoted, type Cell } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { listed } from '../../../shared/words/lists'
import type { Part } from './part'

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
const telling = ['site', 'species', 'trunk', 'height', 'crownBase'] as const satisfies readonly Field[]
type Telling = (typeof telling)[number]

/** Values that contradict, of so many fields, are two trees and not a slip (house judgment). */
const contradictions = 2

/** The columns of a part that tell trees apart, each with its place among `telling`. */
type TellingColumns = readonly { readonly at: number; readonly column: number }[]

function tellingOf({ matches }: Part): TellingColumns {
  return telling.flatMap((field, at) => {
    const match = matches.find((each) => each.field === field)
    return match === undefined ? [] : [{ at, column: match.column }]
  })
}

function plain(cell: Cell | undefined): string {
  return String(cell ?? '')
    .trim()
    .toLowerCase()
}

interface Met {
  /** What was first typed of each of `telling`. */
  readonly cells: (Cell | undefined)[]
  readonly part: Part
  /** The fields in which rows contradict each other; null as long as none do. */
  against: Set<Telling> | null
  sheets: boolean
}

/** An id whose rows contradict each other. */
interface Contradicted {
  readonly against: ReadonlySet<Telling>
  readonly sheets: boolean
}

/** The ids whose rows contradict each other in more than a slip explains. */
function contradicted(rows: readonly IdentifiedRow[]): Map<string, Contradicted> {
  const met = new Map<string, Met>()
  const columnsOfPart = new Map<Part, TellingColumns>()
  let any = false
  for (const { part, row, key } of rows) {
    let columns = columnsOfPart.get(part)
    if (columns === undefined) columnsOfPart.set(part, (columns = tellingOf(part)))
    if (columns.length === 0) continue
    let known = met.get(key)
    if (known === undefined) met.set(key, (known = { cells: [], part, against: null, sheets: false }))
    const cells = part.block.rows[row] ?? []
    for (const { at, column } of columns) {
      const [mine, theirs] = [cells[column], known.cells[at]]
      if (mine === theirs || isBlank(mine)) continue
      if (theirs === undefined) known.cells[at] = mine
      else if (plain(mine) !== plain(theirs)) {
        any = true
        known.against = (known.against ?? new Set()).add(telling[at] ?? 'site')
        known.sheets ||= part.block.sheet !== known.part.block.sheet
      }
    }
  }
  if (!any) return new Map()
  const usual = zones(rows)
  return new Map(
    [...met].flatMap(([key, { against, sheets }]) =>
      against !== null && (against.size >= contradictions || (against.has('site') && usual))
        ? [[key, { against, sheets }]]
        : []
    )
  )
}

/** Whether sites are places with several trees each, so that one id on two of them is two trees and not a slip. */
function zones(rows: readonly IdentifiedRow[]): boolean {
  const ids = new Map<string, Set<string>>()
  for (const { part, row, key } of rows) {
    const column = part.matches.find(({ field }) => field === 'site')?.column
    const site = column === undefined ? null : part.block.rows[row]?.[column]
    if (isBlank(site)) continue
    const place = plain(site)
    ids.set(place, (ids.get(place) ?? new Set()).add(key))
  }
  return ids.size > 1 && [...ids.values()].every(({ size }) => size > 1)
}

/** What tells the trees with one id apart, as it is added to the id. */
function tellerOf({ against, sheets }: Contradicted): (part: Part, row: number) => string {
  const field = against.has('site') ? 'site' : sheets ? null : against.has('species') ? 'species' : 'height'
  return (part, row) => {
    if (field === null) return part.block.sheet
    const match = part.matches.find((each) => each.field === field)
    const cell = match === undefined ? null : part.block.rows[row]?.[match.column]
    const { name } = columnOf(field)
    return isBlank(cell) ? '' : field === 'height' ? `${name.toLowerCase()} ${quoted(cell)}` : quoted(cell)
  }
}

/**
 * Tells trees apart that bear one id: an id whose rows contradict each other in place, species and sizes belongs to several
 * trees, which are then named by what tells them apart. Rows that cannot be told stay with the id alone.
 */
export function tellApart(rows: readonly IdentifiedRow[], problems: Problem[]): Identified {
  const several = contradicted(rows)
  if (several.size === 0) return { rows, refused: [] }
  const tellers = new Map([...several].map(([key, met]) => [key, tellerOf(met)]))
  const last = new Map<string, { part: Part; told: string }>()
  const names = new Map<string, Set<string>>()
  const refused: Identified['refused'][number][] = []
  const told = rows.flatMap((each): IdentifiedRow | readonly [] => {
    const teller = tellers.get(each.key)
    if (teller === undefined) return each
    const own = teller(each.part, each.row)
    const before = last.get(each.key)
    const apart = own !== '' ? own : before?.part === each.part ? before.told : ''
    last.set(each.key, { part: each.part, told: apart })
    if (apart === '') {
      // A limb of another table names none of the trees alone.
      if (each.part.of !== 'limbs' || each.part.group !== null) return each
      refused.push({ part: each.part, row: each.row, why: ofSeveral(each) })
      return []
    }
    const id = `${each.id} (${apart})`
    names.set(each.key, (names.get(each.key) ?? new Set()).add(id))
    return { ...each, id, key: `${each.key} (${plain(apart)})` }
  })
  problems.push(severalTrees(several, names, rows))
  return { rows: told, refused }
}

function ofSeveral({ part, row, id }: IdentifiedRow): Problem {
  const column = part.matches.find(({ field }) => field === 'tree')?.column ?? 0
  return problem('limb-of-several', addressIn(part.block, row, column), { tree: id })
}

/** Trees named in the line about ids that several trees bear. */
const named = 4

function severalTrees(
  several: ReadonlyMap<string, Contradicted>,
  names: ReadonlyMap<string, ReadonlySet<string>>,
  rows: readonly IdentifiedRow[]
): Problem {
  const first = rows.find(({ key }) => several.has(key))
  const column = first?.part.matches.find(({ field }) => field === 'tree')?.column
  const [[, met]] = [...several] as [[string, Contradicted]]
  const fields = listed([...met.against].map((field) => columnOf(field).name.toLowerCase()))
  const all = [...names.values()].flatMap((each) => [...each])
  const shown = all.slice(0, named).map((name) => `“${quoted(name)}”`)
  const more = all.length - shown.length
  const cell = first === undefined || column === undefined ? '' : addressIn(first.part.block, 0, column)
  return problem('several-trees', cell, {
    fields,
    trees: listed([...shown, ...(more > 0 ? [`${more} more`] : [])])
  })
}
