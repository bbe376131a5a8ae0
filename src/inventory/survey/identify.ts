import { addressIn, isBlank, quoted, type Cell } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { grouped } from '../../../shared/words/figures'
import { listed } from '../../../shared/words/lists'
import type { CellReader } from '../cellReader'
import { isUnread, type Reading } from '../reading'
import type { Identified, IdentifiedRow } from './identity'
import type { JoinedRows } from './joins'
import type { Part } from './part'
import { sectionAt } from './tellers'
import { shownId, treeKey } from './treeKeys'

/** A part with the reader of its ids; null where it has no column for them. */
export interface ReadPart {
  readonly part: Part
  readonly ids: CellReader | null
}

/** Ids whose writings differ, named in one line. */
const shownAlike = 4

/** Gives every row of every part the id of its tree: its own, the one above it, that of the form, or the sheet's name. */
export class Identifier {
  private readonly known = new Map<string, { id: string; key: string }>()
  private readonly firstTyped = new Map<string, { typed: string; cell: string }>()
  private readonly alike = new Map<string, string>()
  private readonly rows: IdentifiedRow[] = []
  private readonly refused: Identified['refused'][number][] = []
  private below = 0
  private firstBelow = ''

  constructor(private readonly problems: Problem[]) {}

  /** The parts of one table: a form, where there is one, then the table or the groups of its columns. */
  addTable(parts: readonly ReadPart[], sheetStandsForTree: boolean, joined?: JoinedRows): void {
    const form = parts.find(({ part }) => part.rows.length === 1 && part.block.placeOf !== undefined)
    const tables = parts.filter((each) => each !== form)
    const [first] = tables
    if (first === undefined) return
    const own =
      joined !== undefined
        ? first.part.rows.map((row) => this.fromJoin(first.part, row, joined))
        : first.ids !== null
          ? this.fromColumn(first.part, first.ids)
          : this.fromLimbs(first.part)
    const divided = own === null && (first.part.sections ?? []).length > 0
    const constant = own === null && !divided ? this.fromForm(form, first.part, sheetStandsForTree) : null
    if (divided) this.sayOnce(problem('ids-from-lines', addressIn(first.part.block, 0, 0)))
    else if (own === null && constant === null)
      this.sayOnce(problem('id-from-row', addressIn(first.part.block, 0, 0)))
    const rows = own ?? first.part.rows.map((row) => constant ?? this.ofRow(first.part, row))
    this.addForm(form, rows)
    for (const { part } of tables)
      part.rows.forEach((row, at) => {
        const found = rows[at]
        if (found === undefined) return
        if ('why' in found) {
          if (part === first.part) this.refused.push({ part, row, why: found.why })
        } else this.rows.push({ part, row, id: found.id, key: found.key })
      })
  }

  finish(): Identified {
    if (this.below > 0)
      this.problems.push(problem('ids-below', this.firstBelow, { count: grouped(this.below) }))
    const [first] = [...this.alike.keys()]
    if (first !== undefined) {
      const shown = [...this.alike.values()].slice(0, shownAlike)
      const more = this.alike.size - shown.length
      const text = listed([...shown, ...(more > 0 ? [`${more} more`] : [])])
      this.problems.push(problem('ids-alike', this.firstTyped.get(first)?.cell ?? '', { text }))
    }
    return { rows: this.rows, refused: this.refused }
  }

  private sayOnce(found: Problem): void {
    if (!this.problems.some(({ code }) => code === found.code)) this.problems.push(found)
  }

  private identity(typed: string): { id: string; key: string } {
    let found = this.known.get(typed)
    if (found === undefined) {
      const id = shownId(typed)
      found = { id, key: treeKey(id) }
      this.known.set(typed, found)
    }
    return found
  }

  /** The ids that a column gives; a blank one is inherited where ids stand on the first row of a tree only. */
  private fromColumn(part: Part, ids: CellReader): ({ id: string; key: string } | { why: Problem })[] {
    const read = part.rows.map((row) => ids.read(row) as Reading<string>)
    const inherits = standOnce(read)
    let last: { id: string; key: string } | null = null
    return part.rows.map((row, at) => {
      const reading = read[at] ?? null
      if (isUnread(reading)) return { why: reading }
      if (typeof reading === 'string') {
        last = this.named(reading, ids, row)
        if (last.id !== '') return last
      }
      const below: { id: string; key: string } | null = last
      if (below === null || !inherits || !sameTree(part, row, at)) return { why: withoutTree(ids, row) }
      this.below++
      if (this.firstBelow === '') this.firstBelow = ids.address(row)
      return below
    })
  }

  private named(typed: string, ids: CellReader, row: number): { id: string; key: string } {
    const found = this.identity(typed)
    const first = this.firstTyped.get(found.key)
    if (first === undefined) this.firstTyped.set(found.key, { typed, cell: ids.address(row) })
    else if (first.typed !== typed && !this.alike.has(found.key))
      this.alike.set(found.key, `“${quoted(first.typed)}” and “${quoted(typed)}”`)
    return found
  }

  private fromJoin(
    part: Part,
    row: number,
    joined: JoinedRows
  ): { id: string; key: string } | { why: Problem } {
    const id = joined.get(row) ?? ''
    return id === '' ? { why: withoutTreeAt(addressIn(part.block, row, 0)) } : this.identity(id)
  }

  /** Where the ids of limbs hold those of the trees ("T1-A"), and nothing else names the trees; else null. */
  private fromLimbs(part: Part): { id: string; key: string }[] | null {
    const found = treesWithinLimbs(part)
    if (found === null) return null
    const { column, trees, first } = found
    this.sayOnce(problem('ids-within-limbs', addressIn(part.block, 0, column), { text: quoted(first) }))
    return trees.map((id) => this.identity(id))
  }

  /** Without a column of ids: the id that the form names, else the name of the sheet, else none. */
  private fromForm(
    form: ReadPart | undefined,
    { block }: Part,
    sheetStandsForTree: boolean
  ): { id: string; key: string } | null {
    const typed = (form?.ids?.read(1) ?? null) as Reading<string>
    if (typeof typed === 'string') return this.identity(typed)
    if (form === undefined && !sheetStandsForTree) return null
    this.sayOnce(problem('id-from-sheet', ''))
    return this.identity(block.sheet)
  }

  /** Where nothing names the trees, each row is one. */
  private ofRow(part: Part, row: number): { id: string; key: string } {
    const { block } = part
    const section = sectionAt(part, row)
    if (section !== '') return this.identity(treeInLine(section))
    return this.identity(`row ${block.top + row + 1}`)
  }

  /** The form belongs to the only tree of its table; of several trees it tells the site alone. */
  private addForm(
    form: ReadPart | undefined,
    rows: readonly ({ id: string; key: string } | { why: Problem })[]
  ): void {
    if (form === undefined) return
    const trees = new Map(rows.flatMap((each) => ('why' in each ? [] : [[each.key, each] as const])))
    const part = form.part
    const told =
      trees.size === 1 ? part : { ...part, matches: part.matches.filter(({ field }) => field === 'site') }
    if (told.matches.length === 0) return
    for (const tree of trees.values()) this.rows.push({ part: told, row: 1, ...tree })
  }
}

/** The trees that the ids of limbs hold ("T1-A"), one a row; null where they hold none. */
export function treesWithinLimbs({ matches, rows, block }: Part): {
  readonly column: number
  readonly trees: readonly string[]
  readonly first: string
} | null {
  const column = matches.find(({ field }) => field === 'limb')?.column ?? -1
  const ids = rows.map((row) => String(block.rows[row]?.[column] ?? '').trim())
  const trees = ids.map((id) => /^(.+?)\s*[-_/.:]\s*[\p{L}\d]+$/u.exec(id)?.[1] ?? '')
  if (column < 0 || trees.includes('') || new Set(trees).size === trees.length) return null
  return { column, trees, first: ids[0] ?? '' }
}

/** The id in a line such as "Tree 12 - Red maple": what follows the word for a tree, else the whole line. */
function treeInLine(text: string): string {
  const found =
    /^(?:tree|baum|arbre|[aá]rbol)\.?\s*(?:#|n[or°º]\.?|nr\.?)?\s*([\p{L}-]{0,3}\d[\p{L}\d-]*)/iu.exec(text)
  return found?.[1] ?? text
}

function withoutTree(ids: CellReader, row: number): Problem {
  return withoutTreeAt(ids.address(row))
}

function withoutTreeAt(place: string): Problem {
  return problem('limb-without-tree', place, { row: Number(/\d+$/.exec(place)?.[0] ?? 0) })
}

/** Ids stand on the first row of a tree where they are blank more often than repeated on the row below. */
function standOnce(read: readonly Reading<string>[]): boolean {
  let blanks = 0
  let repeats = 0
  let last: Reading<string> = null
  for (const reading of read) {
    if (reading === null) blanks++
    else {
      if (reading === last) repeats++
      last = reading
    }
  }
  return blanks > 0 && (repeats === 0 || blanks > repeats)
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
