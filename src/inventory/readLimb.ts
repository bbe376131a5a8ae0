import { columnOf, type Field } from '../../shared/columns'
import { asDoubt, problem, type Problem } from '../../shared/problems'
import type { CellReader } from './cellReader'
import { blankLimb, keptColumns, put, template, type Building } from './columnReaders'
import { leaveUnplanned, rowPlace, type Limb, type OpenInventory, type Tree } from './inventory'
import type { OpenPart } from './openPart'
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
export interface LimbReader {
  read(tree: Pick<Tree, 'id'>, row: number): Limb
}

export function limbReader(
  { part: { group }, readers, first: firstRow }: OpenPart,
  inventory: OpenInventory,
  said: SaidOfColumns
): LimbReader {
  const { problems } = inventory
  const all = new Set<string>(measurements)
  const columns = keptColumns(readers, 'limb').filter(({ key }) => !all.has(key))
  const diameters = readers.get('diameter')
  const stems = readers.get('stem')
  const origins = readers.get('origin')
  const tips = readers.get('tip')
  const second = readers.get('diameter2')
  const below = readers.get('stemBelow')
  const hasRoles = readers.has('role')

  function read(tree: Pick<Tree, 'id'>, row: number): Limb {
    const limb: Building<Limb> = { ...nothing, row: firstRow + row }
    for (const column of columns) {
      const reading = column.reader.read(row)
      if (reading !== null) put(limb, column, reading, problems)
    }
    if (limb.id === '') limb.id = group ?? `row ${rowPlace(inventory, limb.row).number}`
    if (!hasRoles && leaderWords.test(limb.id)) takeForLeader(limb, row)
    readMeasurements(tree, limb, row)
    return limb
  }

  /** Where nothing gives the roles of limbs, a row that is called the leader is one, which is reported once. */
  function takeForLeader(limb: Building<Limb>, row: number): void {
    limb.role = 'leader'
    if (said.has('role')) return
    const found = problem('leader-by-name', readers.get('limb')?.address(row) ?? '', { text: limb.id })
    said.set('role', found)
    problems.push(found)
  }

  /** Diameter, stem, origin and tip. A leader needs none of them, dead wood only its diameter. */
  function readMeasurements(tree: Pick<Tree, 'id'>, limb: Building<Limb>, row: number): void {
    const needed = limb.role !== 'leader'
    const live = needed && !limb.dead
    limb.diameter = take(tree, limb, row, 'diameter', needed, diameterAt(row))
    limb.stem = take(tree, limb, row, 'stem', live, stemAt(limb, row))
    limb.origin = take(tree, limb, row, 'origin', live, numberAt(origins, row))
    limb.tip = take(tree, limb, row, 'tip', live, numberAt(tips, row))
    if (limb.unplannable !== null) leaveUnplanned(inventory, tree.id, limb.row, limb.unplannable)
  }

  /** The mean of two readings where there is a second one. */
  function diameterAt(row: number): Reading<number> {
    const found = numberAt(diameters, row)
    if (second === undefined || found === null || isUnread(found)) return found
    const other = valueOf(second.read(row), columnOf('diameter2').reads, problems) as number | null
    if (other === null) return found
    return found instanceof Noted ? new Noted((found.value + other) / 2, found.note) : (found + other) / 2
  }

  /** The stem above the union where it was measured, otherwise the one below; the one that is not used is only a doubt. */
  function stemAt(limb: Building<Limb>, row: number): Reading<number> {
    const above = numberAt(stems, row)
    const under = numberAt(below, row)
    if (above === null) {
      limb.measured = under === null ? 'above' : 'below'
      return under
    }
    if (isUnread(under)) problems.push(asDoubt(under, 'the stem above the union is used'))
    return above
  }

  /** The value of a measurement; where the plan needs it and there is none, the limb keeps the reason. */
  function take(
    tree: Pick<Tree, 'id'>,
    limb: Building<Limb>,
    row: number,
    field: Measurement,
    needed: boolean,
    reading: Reading<number>
  ): number | null {
    if (typeof reading === 'number') return reading
    if (isUnread(reading)) {
      problems.push(needed ? reading : asDoubt(reading, 'it was left out'))
      if (needed) limb.unplannable ??= reading.message
      return null
    }
    if (reading === null) {
      if (needed) limb.unplannable ??= missing(tree, limb, row, field).message
      return null
    }
    problems.push(reading.note)
    return reading.value
  }

  /** A blank cell is reported with its address; a missing column is reported once for the whole block. */
  function missing(tree: Pick<Tree, 'id'>, limb: Building<Limb>, row: number, field: Measurement): Problem {
    const { name } = columnOf(field)
    const reader = readers.get(field) ?? (field === 'stem' ? below : undefined)
    if (reader === undefined) return missingColumn(field)
    const facts = { column: name.toLowerCase(), limb: limb.id, tree: tree.id }
    const found = problem('missing-value', reader.address(row), facts)
    problems.push(found)
    return found
  }

  function missingColumn(field: Measurement & Field): Problem {
    const before = said.get(field)
    if (before !== undefined) return before
    const { name } = columnOf(field)
    const found = problem('needed-column', '', { column: `the ${name.toLowerCase()}`, name })
    said.set(field, found)
    problems.push(found)
    return found
  }

  return { read }
}

function numberAt(reader: CellReader | undefined, row: number): Reading<number> {
  return reader === undefined ? null : (reader.read(row) as Reading<number>)
}
