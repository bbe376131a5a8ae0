import { columnOf, type Field } from '../../shared/columns'
import { asDoubt, problem, type Problem } from '../../shared/problems'
import type { CellReader } from './cellReader'
import {
  blankLimb,
  keptColumns,
  put,
  template,
  type Building,
  type KeptColumn,
  type Readers
} from './columnReaders'
import { leaveUnplanned, rowPlace, type Limb, type OpenInventory, type Tree } from './inventory'
import { isUnread, Noted, valueOf, type Reading } from './reading'

/** The measurements that a limb is planned by; each has columns of its own, or of two that stand for it. */
const measurements = ['diameter', 'stem', 'origin', 'tip'] as const
type Measurement = (typeof measurements)[number]

/** What a row is called that is the leader itself. */
const leaderWords =
  /^(?:the )?(?:central |main )?leader$|^(?:mittel|haupt|leit|stamm)?leittrieb$|^leittrieb$|^terminale?$|^(?:la )?fl[eè]che$|^gu[ií]a(?: central)?$|^l[ií]der$/i

const nothing: Limb = template({ ...blankLimb, row: 0, unplannable: null })

/** Sentences already reported for a block: a missing column is reported once and not with every limb. */
export type SaidOfColumns = Map<Field, Problem>

/** Reads the limb of one row. A limb that lacks a measurement the plan needs says so in `unplannable`. */
export class LimbReader {
  private readonly columns: readonly KeptColumn[]
  private readonly measured: Readonly<Partial<Record<Measurement, CellReader>>>
  private readonly second: CellReader | undefined
  private readonly role: CellReader | undefined
  private readonly ids: CellReader | undefined
  private readonly below: CellReader | undefined

  constructor(
    readers: Readers,
    private readonly inventory: OpenInventory,
    private readonly said: SaidOfColumns,
    /** The inventory's number of row 0 of the part, and the name of a limb without an id, where the part has one. */
    private readonly first: number,
    private readonly group: string | null
  ) {
    const all = new Set<string>(measurements)
    this.columns = keptColumns(readers, 'limb').filter(({ key }) => !all.has(key))
    const [diameter, stem, origin, tip] = measurements.map((field) => readers.get(field))
    this.measured = { diameter, stem, origin, tip }
    this.second = readers.get('diameter2')
    this.role = readers.get('role')
    this.ids = readers.get('limb')
    this.below = readers.get('stemBelow')
  }

  read(tree: Pick<Tree, 'id'>, row: number): Limb {
    const limb: Building<Limb> = { ...nothing, row: this.first + row }
    for (const column of this.columns) {
      const reading = column.reader.read(row)
      if (reading !== null) put(limb, column, reading, this.inventory.problems)
    }
    if (limb.id === '') limb.id = this.group ?? `row ${rowPlace(this.inventory, limb.row).number}`
    if (this.role === undefined && leaderWords.test(limb.id)) this.takeForLeader(limb, row)
    this.readMeasurements(tree, limb, row)
    return limb
  }

  /** Where nothing gives the roles of limbs, a row that is called the leader is one, which is reported once. */
  private takeForLeader(limb: Building<Limb>, row: number): void {
    limb.role = 'leader'
    if (this.said.has('role')) return
    const found = problem('leader-by-name', this.ids?.address(row) ?? '', { text: limb.id })
    this.said.set('role', found)
    this.inventory.problems.push(found)
  }

  /** Diameter, stem, origin and tip. A leader needs none of them, dead wood only its diameter. */
  private readMeasurements(tree: Pick<Tree, 'id'>, limb: Building<Limb>, row: number): void {
    const needed = limb.role !== 'leader'
    const live = needed && !limb.dead
    limb.diameter = this.take(tree, limb, row, 'diameter', needed, this.diameter(row))
    limb.stem = this.take(tree, limb, row, 'stem', live, this.stem(limb, row))
    limb.origin = this.take(tree, limb, row, 'origin', live, this.reading('origin', row))
    limb.tip = this.take(tree, limb, row, 'tip', live, this.reading('tip', row))
    if (limb.unplannable !== null) leaveUnplanned(this.inventory, tree.id, limb.row, limb.unplannable)
  }

  private reading(field: Measurement, row: number): Reading<number> {
    return (this.measured[field]?.read(row) ?? null) as Reading<number>
  }

  /** The mean of two readings where there is a second one. */
  private diameter(row: number): Reading<number> {
    const first = this.reading('diameter', row)
    if (this.second === undefined || first === null || isUnread(first)) return first
    const reads = columnOf('diameter2').reads
    const other = valueOf(this.second.read(row), reads, this.inventory.problems) as number | null
    if (other === null) return first
    return first instanceof Noted ? new Noted((first.value + other) / 2, first.note) : (first + other) / 2
  }

  /** The stem above the union where it was measured, otherwise the one below; the one that is not used is only a doubt. */
  private stem(limb: Building<Limb>, row: number): Reading<number> {
    const above = this.reading('stem', row)
    const below = (this.below?.read(row) ?? null) as Reading<number>
    if (above === null) {
      limb.measured = below === null ? 'above' : 'below'
      return below
    }
    if (isUnread(below)) this.inventory.problems.push(asDoubt(below, 'the stem above the union is used'))
    return above
  }

  /** The value of a measurement; where the plan needs it and there is none, the limb keeps the reason. */
  private take(
    tree: Pick<Tree, 'id'>,
    limb: Building<Limb>,
    row: number,
    field: Measurement,
    needed: boolean,
    reading: Reading<number>
  ): number | null {
    if (typeof reading === 'number') return reading
    const { problems } = this.inventory
    if (isUnread(reading)) {
      problems.push(needed ? reading : asDoubt(reading, 'it was left out'))
      if (needed) limb.unplannable ??= reading.message
      return null
    }
    if (reading === null) {
      if (needed) limb.unplannable ??= this.missing(tree, limb, row, field).message
      return null
    }
    problems.push(reading.note)
    return reading.value
  }

  /** A blank cell is reported with its address; a missing column is reported once for the whole block. */
  private missing(tree: Pick<Tree, 'id'>, limb: Building<Limb>, row: number, field: Measurement): Problem {
    const { problems } = this.inventory
    const { name } = columnOf(field)
    const reader = this.measured[field] ?? (field === 'stem' ? this.below : undefined)
    if (reader === undefined) return this.missingColumn(field)
    const facts = { column: name.toLowerCase(), limb: limb.id, tree: tree.id }
    const found = problem('missing-value', reader.address(row), facts)
    problems.push(found)
    return found
  }

  private missingColumn(field: Measurement & Field): Problem {
    const before = this.said.get(field)
    if (before !== undefined) return before
    const { name } = columnOf(field)
    const found = problem('needed-column', '', { column: `the ${name.toLowerCase()}`, name })
    this.said.set(field, found)
    this.inventory.problems.push(found)
    return found
  }
}
