import { quoted } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { listed } from '../../../shared/words/lists'
import { firstOf } from '../../../shared/words/some'
import { conflictsIn, type Identified, type IdentifiedRow, type PartReaders } from './identity'
import { plain } from './plain'
import { idCell, type Part } from './part'
import { tellerFor, tellersOf, timeOf, type Teller } from './tellers'

/** Trees named in the line about ids that several trees bear. */
const named = 4

/**
 * Tells trees apart that bear one id: an id whose rows contradict each other, in values or by a limb that comes twice,
 * belongs to several trees where their place, a line between the rows, the sheet or another column tells them apart; they
 * are named by it. Where it is the time of the survey, the latest is kept.
 */
export function tellApart(
  rows: readonly IdentifiedRow[],
  readers: PartReaders,
  problems: Problem[]
): Identified {
  const conflicts = conflictsIn(rows, readers)
  if (conflicts.size === 0) return { rows, refused: [] }
  const of = new Map<string, IdentifiedRow[]>()
  for (const each of rows) if (conflicts.has(each.key)) of.set(each.key, [...(of.get(each.key) ?? []), each])
  const known = tellersOf(rows)
  const tellers = new Map<string, Teller>()
  for (const [key, conflict] of conflicts) {
    const teller = tellerFor(conflict, of.get(key) ?? [], rows, known, readers)
    if (teller !== null) tellers.set(key, teller)
  }
  if (tellers.size === 0) return { rows, refused: [] }
  return new Apart(rows, tellers).told(problems)
}

/** Rows while their trees are told apart. */
class Apart {
  private readonly names = new Map<string, Set<string>>()
  private readonly refused: Identified['refused'][number][] = []
  private readonly before: IdentifiedRow[] = []
  private readonly last = new Map<string, { part: Part; text: string }>()

  constructor(
    private readonly rows: readonly IdentifiedRow[],
    private readonly tellers: ReadonlyMap<string, Teller>
  ) {}

  told(problems: Problem[]): Identified {
    const latest = this.latestOf()
    const rows = this.rows.flatMap((each): IdentifiedRow | readonly [] => {
      const teller = this.tellers.get(each.key)
      if (teller === undefined) return each
      const text = this.textOf(teller, each)
      if (teller.isTime) return this.ifLatest(each, text, latest.get(each.key))
      if (text === '') return this.untold(each)
      const id = `${each.id} (${text})`
      this.names.set(each.key, (this.names.get(each.key) ?? new Set()).add(id))
      return { ...each, id, key: `${each.key} (${plain(text)})` }
    })
    problems.push(...this.problems())
    return { rows, refused: this.refused }
  }

  private textOf(teller: Teller, { part, row, key }: IdentifiedRow): string {
    const own = teller.tell(part, row)
    const before = this.last.get(key)
    const text = own !== '' ? own : before?.part === part ? before.text : ''
    this.last.set(key, { part, text })
    return text
  }

  /** The time of each id's last survey. */
  private latestOf(): Map<string, number> {
    const latest = new Map<string, number>()
    for (const { part, row, key } of this.rows) {
      const teller = this.tellers.get(key)
      if (teller?.isTime !== true) continue
      const time = timeOf(teller.tell(part, row))
      latest.set(key, Math.max(latest.get(key) ?? -Infinity, Number.isNaN(time) ? -Infinity : time))
    }
    return latest
  }

  private ifLatest(each: IdentifiedRow, text: string, latest = -Infinity): IdentifiedRow | readonly [] {
    const time = timeOf(text)
    if (Number.isNaN(time) || time >= latest) return each
    this.before.push(each)
    return []
  }

  /** A limb of another table names none of the trees alone; any other row stays with the id as it is. */
  private untold(each: IdentifiedRow): IdentifiedRow | readonly [] {
    const { part, row, id } = each
    if (part.of !== 'limbs' || part.group !== null) return each
    this.refused.push({ part, row, why: problem('limb-of-several', idCell(part, row), { tree: id }) })
    return []
  }

  private problems(): Problem[] {
    const [first] = this.before
    const told: Problem[] = []
    if (first !== undefined) {
      const by = this.tellers.get(first.key)?.by ?? ''
      told.push(problem('earlier-surveys', idCell(first.part, first.row), { count: this.before.length, by }))
    }
    const all = [...this.names.values()].flatMap((each) => [...each])
    if (all.length === 0) return told
    const trees = firstOf(
      all.map((name) => `“${quoted(name)}”`),
      named
    )
    const whose = this.rows.find(({ key }) => this.names.has(key))
    const by = listed([...new Set([...this.names.keys()].flatMap((key) => this.tellers.get(key)?.by ?? []))])
    told.push(
      problem('several-trees', whose === undefined ? '' : idCell(whose.part, whose.row), { by, trees })
    )
    return told
  }
}
