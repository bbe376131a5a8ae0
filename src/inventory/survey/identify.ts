import { addressIn, isBlank, quoted, type Cell } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { grouped } from '../../../shared/words/figures'
import { firstOf } from '../../../shared/words/some'
import type { CellReader } from '../cellReader'
import { isUnread, type Reading } from '../reading'
import type { Identified, IdentifiedRow } from './identity'
import type { JoinedRows } from './joins'
import { columnGiving, type Part } from './part'
import { sectionAt } from './tellers'
import { shownId, treeKey } from './treeKeys'
import { numberWord, treeWord } from './treeWords'

/** A part with the reader of its ids; null where it has no column for them. */
export interface ReadPart {
  readonly part: Part
  readonly ids: CellReader | null
}

/** Ids whose writings differ, named in one line. */
const shownAlike = 4

/** The id of a tree, and what it is compared by. */
interface Identity {
  readonly id: string
  readonly key: string
}
type IdentityOrWhy = Identity | { readonly why: Problem }

/** What is known of ids, each by what was typed, and those that differ in nothing but their writing. */
interface Known {
  readonly identities: Map<string, Identity>
  readonly firstTyped: Map<string, { readonly typed: string; readonly ids: CellReader; readonly row: number }>
  readonly alike: Map<string, string>
  /** Rows that inherit the id above them, and the first of them. */
  below: number
  firstBelow: string
}

/** Gives every row of every part the id of its tree: its own, the one above it, that of the form, or the sheet's name. */
export interface Identifier {
  /** The parts of one table: a form, where there is one, then the table or the groups of its columns. */
  addTable(parts: readonly ReadPart[], sheetStandsForTree: boolean, joined?: JoinedRows): void
  finish(): Identified
}

export function identifier(problems: Problem[]): Identifier {
  const known: Known = {
    identities: new Map(),
    firstTyped: new Map(),
    alike: new Map(),
    below: 0,
    firstBelow: ''
  }
  const rows: IdentifiedRow[] = []
  const refused: Identified['refused'][number][] = []

  function addTable(parts: readonly ReadPart[], sheetStandsForTree: boolean, joined?: JoinedRows): void {
    const isForm = ({ part }: ReadPart): boolean => part.isForm
    const [form, place] = parts.filter(isForm)
    const tables = parts.filter((each) => !isForm(each))
    const [first] = tables
    if (first === undefined) return
    const own =
      joined !== undefined
        ? first.part.rows.map((row) => fromJoin(first.part, row, joined))
        : first.ids !== null
          ? fromColumn(known, first.part, first.ids)
          : fromLimbs(first.part)
    const divided = own === null && areOfTrees(first.part)
    const constant =
      own === null && !divided
        ? fromForm(form, first.part, sheetStandsForTree && first.part.of !== 'trees')
        : null
    if (divided) sayOnce(problem('ids-from-lines', addressIn(first.part.block, 0, 0)))
    else if (own === null && constant === null)
      sayOnce(problem('id-from-row', addressIn(first.part.block, 0, 0)))
    const identities =
      own ?? first.part.rows.map((row) => constant ?? ofRow(first.part, row, sheetStandsForTree))
    addForm(form, place, identities)
    for (const { part } of tables) addRows(rows, refused, part, identities, part === first.part)
  }

  function finish(): Identified {
    const { alike, firstTyped, below, firstBelow } = known
    if (below > 0) problems.push(problem('ids-below', firstBelow, { count: grouped(below) }))
    const [first] = [...alike.keys()]
    if (first !== undefined) {
      const text = firstOf([...alike.values()], shownAlike)
      const { ids, row } = firstTyped.get(first) ?? {}
      problems.push(problem('ids-alike', row === undefined ? '' : (ids?.address(row) ?? ''), { text }))
    }
    return { rows, refused }
  }

  function sayOnce(found: Problem): void {
    if (!problems.some(({ code }) => code === found.code)) problems.push(found)
  }

  const identity = (typed: string): Identity => identityOf(known, typed)

  function fromJoin(part: Part, row: number, joined: JoinedRows): IdentityOrWhy {
    const id = joined.get(row) ?? ''
    return id === '' ? { why: withoutTreeAt(addressIn(part.block, row, 0)) } : identity(id)
  }

  /** Where the ids of limbs hold those of the trees ("T1-A"), and nothing else names the trees; else null. */
  function fromLimbs(part: Part): Identity[] | null {
    const found = treesWithinLimbs(part)
    if (found === null) return null
    const { column, trees, first } = found
    sayOnce(problem('ids-within-limbs', addressIn(part.block, 0, column), { text: quoted(first) }))
    return trees.map((id) => identity(id))
  }

  /** Without a column of ids: the id that the form names, else the name of the sheet, else none. */
  function fromForm(
    form: ReadPart | undefined,
    { block }: Part,
    sheetStandsForTree: boolean
  ): Identity | null {
    const typed = (form?.ids?.read(1) ?? null) as Reading<string>
    if (typeof typed === 'string') return identity(typed)
    if (form === undefined && !sheetStandsForTree) return null
    sayOnce(problem('id-from-sheet', ''))
    return identity(block.sheet)
  }

  /** Where nothing names the trees, each row is one; of several sheets, by the name of its sheet too. */
  function ofRow(part: Part, row: number, ofSheets: boolean): Identity {
    const { block } = part
    const section = areOfTrees(part) ? sectionAt(part, row) : ''
    if (section !== '') return identity(treeInLine(section))
    const name = `row ${block.top + row + 1}`
    return identity(ofSheets ? `${block.sheet} ${name}` : name)
  }

  /** The form belongs to the only tree of its table; of several trees it tells the place alone. */
  function addForm(
    form: ReadPart | undefined,
    place: ReadPart | undefined,
    identities: readonly IdentityOrWhy[]
  ): void {
    const trees = new Map(identities.flatMap((each) => ('why' in each ? [] : [[each.key, each] as const])))
    const told = trees.size === 1 ? form : place
    if (told === undefined) return
    for (const tree of trees.values()) rows.push({ part: told.part, row: 1, id: tree.id, key: tree.key })
  }

  return { addTable, finish }
}

function addRows(
  rows: IdentifiedRow[],
  refused: Identified['refused'][number][],
  part: Part,
  identities: readonly IdentityOrWhy[],
  isFirst: boolean
): void {
  for (let at = 0; at < part.rows.length; at++) {
    const row = part.rows[at]
    const found = identities[at]
    if (row === undefined || found === undefined) continue
    if (!('why' in found)) rows.push({ part, row, id: found.id, key: found.key })
    else if (isFirst) refused.push({ part, row, why: found.why })
  }
}

function identityOf({ identities }: Known, typed: string): Identity {
  let found = identities.get(typed)
  if (found === undefined) {
    const id = shownId(typed)
    found = { id, key: treeKey(id) }
    identities.set(typed, found)
  }
  return found
}

function named(known: Known, typed: string, ids: CellReader, row: number): Identity {
  const { firstTyped, alike } = known
  const found = identityOf(known, typed)
  const first = firstTyped.get(found.key)
  if (first === undefined) firstTyped.set(found.key, { typed, ids, row })
  else if (first.typed !== typed && !alike.has(found.key))
    alike.set(found.key, `“${quoted(first.typed)}” and “${quoted(typed)}”`)
  return found
}

/** The ids that a column gives; a blank one is inherited where ids stand on the first row of a tree only. */
function fromColumn(known: Known, part: Part, ids: CellReader): IdentityOrWhy[] {
  const read: Reading<string>[] = []
  for (const row of part.rows) read.push(ids.read(row) as Reading<string>)
  const inherits = standOnce(read, part)
  const found: IdentityOrWhy[] = []
  let last: Identity | null = null
  let lastRead: string | null = null
  for (let at = 0; at < read.length; at++) {
    const reading = read[at] ?? null
    // Most rows bear the id of the row above.
    if (last !== null && reading !== null && reading === lastRead) {
      found.push(last)
      continue
    }
    const row = part.rows[at] ?? 0
    if (typeof reading === 'string') last = named(known, reading, ids, row)
    lastRead = typeof reading === 'string' && last?.id !== '' ? reading : null
    if (isUnread(reading)) found.push({ why: reading })
    else if (last !== null && (lastRead !== null || (inherits && sameTree(part, row, at)))) {
      if (lastRead === null) countBelow(known, ids, row)
      found.push(last)
    } else found.push({ why: withoutTree(ids, row) })
  }
  return found
}

function countBelow(known: Known, ids: CellReader, row: number): void {
  known.below++
  if (known.firstBelow === '') known.firstBelow = ids.address(row)
}

/** The trees that the ids of limbs hold, one a row, with the column of those ids and the first of them. */
interface WithinLimbs {
  readonly column: number
  readonly trees: readonly string[]
  readonly first: string
}

/** What was found in a part, as it is asked for before its rows are read and with them. */
const withinLimbs = new WeakMap<Part, { readonly found: WithinLimbs | null }>()

/** The trees that the ids of limbs hold ("T1-A"); null where they hold none. */
export function treesWithinLimbs(part: Part): WithinLimbs | null {
  const before = withinLimbs.get(part)
  if (before !== undefined) return before.found
  const found = findWithinLimbs(part)
  withinLimbs.set(part, { found })
  return found
}

function findWithinLimbs(part: Part): WithinLimbs | null {
  const { rows, block } = part
  const column = columnGiving(part, 'limb')
  const ids = rows.map((row) => String(block.rows[row]?.[column] ?? '').trim())
  const trees = ids.map((id) => /^(.+?)\s*[-_/.:]\s*[\p{L}\d]+$/u.exec(id)?.[1] ?? '')
  if (column < 0 || trees.includes('') || new Set(trees).size === trees.length) return null
  return { column, trees, first: ids[0] ?? '' }
}

/** Lines between rows of limbs stand for the trees; rows of trees are trees of their own. */
function areOfTrees({ of, sections }: Part): boolean {
  return of !== 'trees' && sections.length > 0
}

const treeLine = new RegExp(`^${treeWord}\\.?\\s*${numberWord}?\\s*([\\p{L}-]{0,3}\\d[\\p{L}\\d-]*)`, 'iu')

/** The id in a line such as "Tree 12 - Red maple": what follows the word for a tree, else the whole line. */
function treeInLine(text: string): string {
  return treeLine.exec(text)?.[1] ?? text
}

function withoutTree(ids: CellReader, row: number): Problem {
  return withoutTreeAt(ids.address(row))
}

function withoutTreeAt(place: string): Problem {
  return problem('limb-without-tree', place, { row: Number(/\d+$/.exec(place)?.[0] ?? 0) })
}

/**
 * Ids stand on the first row of a tree where they are blank more often than repeated on the row below; a row that was
 * entered twice says nothing of it.
 */
function standOnce(read: readonly Reading<string>[], part: Part): boolean {
  let blanks = 0
  for (const reading of read) if (reading === null) blanks++
  if (blanks === 0) return false
  let repeats = 0
  let last = -1
  read.forEach((reading, at) => {
    if (reading === null) return
    if (reading === read[last] && !areAlike(part, last, at)) repeats++
    last = at
  })
  return repeats === 0 || blanks > repeats
}

/** Whether two rows of a part say the same in every cell. */
function areAlike({ block, rows }: Part, one: number, other: number): boolean {
  const [cells = [], others = []] = [block.rows[rows[one] ?? -1], block.rows[rows[other] ?? -1]]
  return cells.length === others.length && cells.every((cell, column) => cell === others[column])
}

/** Whether a row without an id says nothing else of a tree than the row above it. */
function sameTree({ block, matches, rows }: Part, row: number, at: number): boolean {
  const above = rows[at - 1]
  return matches.every(({ field, column }) => {
    if (field === null || !treeFields.has(field)) return true
    const cell: Cell | undefined = block.rows[row]?.[column]
    if (isBlank(cell)) return true
    const before = above === undefined ? undefined : block.rows[above]?.[column]
    return before === cell
  })
}

const treeFields: ReadonlySet<string> = new Set([
  'species',
  'trunk',
  'height',
  'crownBase',
  'spread',
  'caliper'
])
