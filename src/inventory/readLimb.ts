import { addressIn } from '../../shared/cells'
import { columnOf } from '../../shared/columns'
import { asDoubt, problem, type Problem } from '../../shared/problems'
import { atLeast } from '../formulas/boundary'
import type { CellReader } from './cellReader'
import { checkAlongLimb } from './checkLimb'
import {
  blankLimb,
  isAsked,
  keptColumns,
  put,
  template,
  type Building,
  type KeptColumn
} from './columnReaders'
import { neverMeasured } from './neverMeasured'
import { leaveUnplanned, rowPlace, type Limb, type OpenInventory, type Tree } from './inventory'
import type { OpenPart } from './openParts'
import { isUnread, Noted, valueOf, type Reading } from './reading'
import { saysUnmeasured } from './values/missing'

/** The measurements that a limb is planned by; each has columns of its own, or of two that stand for it. */
const measurements = ['diameter', 'stem', 'origin', 'tip'] as const
type Measurement = (typeof measurements)[number]

/** What a row is called that is the leader itself. */
const leaderWords =
  /^(?:the )?(?:central |main )?leader$|^(?:mittel|haupt|leit|stamm)?leittrieb$|^leittrieb$|^terminale?$|^(?:la )?fl[eè]che$|^gu[ií]a(?: central)?$|^l[ií]der$/i

const nothing: Limb = template({ ...blankLimb, row: 0, unplannable: null })

/** Sentences already reported for a block: a missing column is reported once and not with every limb. */
export type SaidOfColumns = Map<string, Problem>

/** What limbs are read with. */
export interface LimbReader {
  readonly open: OpenPart
  readonly inventory: OpenInventory
  readonly said: SaidOfColumns
  readonly columns: readonly KeptColumn[]
  readonly diameters: CellReader | undefined
  readonly stems: CellReader | undefined
  readonly origins: CellReader | undefined
  readonly tips: CellReader | undefined
  /** Second readings of diameters, and stems below unions. */
  readonly second: CellReader | undefined
  readonly below: CellReader | undefined
  /** Whether no limb of several trees has a stem beside it: none was measured, and none of them shows which is the leader. */
  readonly neverMeasured: () => boolean
}

export function limbReader(open: OpenPart, inventory: OpenInventory, said: SaidOfColumns): LimbReader {
  const { readers } = open
  const all = new Set<string>(measurements)
  return {
    open,
    inventory,
    said,
    columns: keptColumns(readers, 'limb').filter(({ key }) => !all.has(key)),
    diameters: readers.get('diameter'),
    stems: readers.get('stem'),
    origins: readers.get('origin'),
    tips: readers.get('tip'),
    second: readers.get('diameter2'),
    below: readers.get('stemBelow'),
    neverMeasured: neverMeasured(open)
  }
}

/** Reads the limb of one row. A limb that lacks a measurement the plan needs says so in `unplannable`. */
export function readLimb(reader: LimbReader, tree: Pick<Tree, 'id' | 'height'>, row: number): Limb {
  const { open, inventory, columns } = reader
  const limb: Building<Limb> = { ...nothing, row: open.first + row }
  for (const column of columns) {
    const reading = column.reader.read(row)
    if (reading === null) continue
    put(limb, column, reading, inventory.problems)
    if (isUnread(reading) && isAsked(column.reads)) limb.unplannable ??= reading.message
  }
  if (limb.id === '') limb.id = open.part.group ?? `row ${rowPlace(inventory, limb.row).number}`
  if (leaderWords.test(limb.id)) markLeader(reader, limb, row)
  readMeasurements(reader, tree, limb, row)
  checkAlongLimb(reader, tree, limb, row)
  return limb
}

/** Where nothing gives the roles of limbs, a row that is called the leader is one, which is reported once. */
function markLeader(
  { open: { readers }, inventory, said }: LimbReader,
  limb: Building<Limb>,
  row: number
): void {
  if (readers.has('role')) return
  limb.role = 'leader'
  if (said.has('role')) return
  const found = problem('leader-by-name', readers.get('limb')?.address(row) ?? '', { text: limb.id })
  said.set('role', found)
  inventory.problems.push(found)
}

/**
 * Diameter, stem, origin and tip. A leader needs none of them, dead wood only its diameter, and of a row that is asked about
 * anyway nothing more is asked.
 */
function readMeasurements(
  reader: LimbReader,
  tree: Pick<Tree, 'id' | 'height'>,
  limb: Building<Limb>,
  row: number
): void {
  const needed = limb.role !== 'leader' && limb.unplannable === null
  const live = needed && !limb.dead
  limb.diameter = take(reader, tree, limb, row, 'diameter', needed, diameterAt(reader, row))
  const stem = stemAt(reader, limb, row)
  const tip = numberAt(reader.tips, row)
  const needsStem = live && !(stem === null && mayLead(reader, tree, limb, tip, row))
  limb.stem = take(reader, tree, limb, row, 'stem', needsStem, stem)
  limb.origin = take(reader, tree, limb, row, 'origin', live, numberAt(reader.origins, row))
  limb.tip = take(reader, tree, limb, row, 'tip', live, tip)
  if (limb.unplannable !== null) leaveUnplanned(reader.inventory, tree.id, limb.row, limb.unplannable)
}

/**
 * An unmarked stem on the trunk that reaches the upper half of its tree and has no stem beside it, though others have one, and
 * none that was only not measured: it may be the leader, which the plan decides.
 */
function mayLead(
  { stems, below, neverMeasured }: LimbReader,
  { height }: Pick<Tree, 'height'>,
  { role, parent, dead, broken }: Building<Limb>,
  tip: Reading<number>,
  row: number
): boolean {
  if ((stems ?? below) === undefined || height === null || tip === null || isUnread(tip)) return false
  if (saysUnmeasured((stems ?? below)?.raw(row)) || neverMeasured()) return false
  const reaches = typeof tip === 'number' ? tip : tip.value
  return role === null && parent === null && !dead && !broken && atLeast(reaches, height / 2)
}

function numberAt(column: CellReader | undefined, row: number): Reading<number> {
  return column === undefined ? null : (column.read(row) as Reading<number>)
}

/** The mean of two readings where there is a second one. */
function diameterAt({ diameters, second, inventory }: LimbReader, row: number): Reading<number> {
  const found = numberAt(diameters, row)
  if (second === undefined || found === null || isUnread(found)) return found
  const other = valueOf(second.read(row), columnOf('diameter2').reads, inventory.problems) as number | null
  if (other === null) return found
  return found instanceof Noted ? new Noted((found.value + other) / 2, found.note) : (found + other) / 2
}

/** The stem above the union where it was measured, otherwise the one below; the one that is not used is only a doubt. */
function stemAt({ stems, below, inventory }: LimbReader, limb: Building<Limb>, row: number): Reading<number> {
  const above = numberAt(stems, row)
  const under = numberAt(below, row)
  if (above === null) {
    limb.measured = under === null ? 'above' : 'below'
    return under
  }
  if (isUnread(under)) inventory.problems.push(asDoubt(under, 'the stem above the union is used'))
  return above
}

/** The value of a measurement; where the plan needs it and there is none, the limb keeps the reason. */
function take(
  reader: LimbReader,
  tree: Pick<Tree, 'id'>,
  limb: Building<Limb>,
  row: number,
  field: Measurement,
  needed: boolean,
  reading: Reading<number>
): number | null {
  if (typeof reading === 'number') return reading
  const { problems } = reader.inventory
  if (isUnread(reading)) {
    problems.push(needed ? reading : asDoubt(reading, 'it was left out'))
    if (needed) limb.unplannable ??= reading.message
    return null
  }
  if (reading === null) {
    if (needed) limb.unplannable ??= missing(reader, tree, limb, row, field).message
    return null
  }
  problems.push(reading.note)
  return reading.value
}

/** A blank cell is reported with its address; a missing column is reported once for the whole block. */
function missing(
  reader: LimbReader,
  tree: Pick<Tree, 'id'>,
  limb: Building<Limb>,
  row: number,
  field: Measurement
): Problem {
  const { name } = columnOf(field)
  const column = reader.open.readers.get(field) ?? (field === 'stem' ? reader.below : undefined)
  if (column === undefined) return missingColumn(reader, field)
  const facts = { column: name.toLowerCase(), limb: limb.id, tree: tree.id }
  const found = problem('missing-value', column.address(row), facts)
  reader.inventory.problems.push(found)
  return found
}

function missingColumn({ said, inventory, open }: LimbReader, field: Measurement): Problem {
  const isElsewhere = inventory.matches.some((match) => match.field === field)
  if (isElsewhere) return lacking(said, inventory, open, field)
  const before = said.get(field)
  if (before !== undefined) return before
  const { name } = columnOf(field)
  const found = problem('needed-column', '', { column: `the ${name.toLowerCase()}`, name })
  said.set(field, found)
  inventory.problems.push(found)
  return found
}

/** Some columns lack a measurement that others give: reported once for a group of columns, or a table. */
function lacking(
  said: SaidOfColumns,
  inventory: OpenInventory,
  { part }: OpenPart,
  field: Measurement
): Problem {
  const where = addressIn(part.block, 0, Math.min(...part.matches.map(({ column }) => column)))
  const group = part.group === null ? `The table at ${where}` : `The group “${part.group}”`
  const key = `${group}\n${field}`
  const before = said.get(key)
  if (before !== undefined) return before
  const found = problem('group-lacks', '', { group, column: columnOf(field).name.toLowerCase() })
  said.set(key, found)
  inventory.problems.push(found)
  return found
}
