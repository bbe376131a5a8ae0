import type { Field } from '../../shared/columns'
import { problem } from '../../shared/problems'
import { optional, type CellReader } from './cellReader'
import { fieldAddress, leaveUnplanned, type Inventory, type Limb, type Tree } from './inventory'

const names = {
  diameter: 'The limb diameter',
  stem: 'The stem diameter at the union',
  origin: 'The origin height',
  tip: 'The tip height'
}

type Measured =
  'angle' | 'bearing' | 'length' | 'lowestFoliage' | 'lateralHeight' | 'lateral' | 'cut' | 'foliageShare'

/** Values a limb may do without, each with how its column is read. */
const optionalValues: readonly [
  Field,
  Measured | 'lastCutShare' | 'lastCutYear',
  (reader: CellReader, row: number) => number | null
][] = [
  ['angle', 'angle', (reader, row) => reader.degrees(row, 180)],
  ['bearing', 'bearing', (reader, row) => reader.degrees(row, 360)],
  ['length', 'length', (reader, row) => reader.height(row)],
  ['lowestFoliage', 'lowestFoliage', (reader, row) => reader.height(row)],
  ['lateralHeight', 'lateralHeight', (reader, row) => reader.height(row)],
  ['lateral', 'lateral', (reader, row) => reader.diameter(row)],
  ['cut', 'cut', (reader, row) => reader.diameter(row)],
  ['lastCutShare', 'lastCutShare', (reader, row) => reader.share(row)],
  ['lastCutDate', 'lastCutYear', (reader, row) => reader.year(row)],
  ['foliageShare', 'foliageShare', (reader, row) => reader.share(row)]
]

/** Reads the limb of one row. A limb that lacks a measurement the plan needs says so in `unplannable`. */
export class LimbReader {
  private readonly id: CellReader | undefined
  private readonly parent: CellReader | undefined
  private readonly notes: CellReader | undefined
  private readonly role: CellReader | undefined
  private readonly bark: CellReader | undefined
  private readonly live: CellReader | undefined
  private readonly flags: { name: 'broken' | 'rubbing' | 'decay'; reader: CellReader }[]
  private readonly optionals: {
    name: (typeof optionalValues)[number][1]
    reader: CellReader
    read: (reader: CellReader, row: number) => number | null
  }[]
  private readonly diameter: CellReader | undefined
  private readonly diameter2: CellReader | undefined
  private readonly stem: CellReader | undefined
  private readonly stemBelow: CellReader | undefined
  private readonly measured: CellReader | undefined
  private readonly origin: CellReader | undefined
  private readonly tip: CellReader | undefined

  constructor(
    readers: ReadonlyMap<Field, CellReader>,
    private readonly inventory: Inventory
  ) {
    this.id = readers.get('limb')
    this.parent = readers.get('parent')
    this.notes = readers.get('notes')
    this.role = readers.get('role')
    this.bark = readers.get('bark')
    this.live = readers.get('live')
    this.diameter = readers.get('diameter')
    this.diameter2 = readers.get('diameter2')
    this.stem = readers.get('stem')
    this.stemBelow = readers.get('stemBelow')
    this.measured = readers.get('measured')
    this.origin = readers.get('origin')
    this.tip = readers.get('tip')
    this.flags = (['broken', 'rubbing', 'decay'] as const).flatMap((name) => {
      const reader = readers.get(name)
      return reader === undefined ? [] : [{ name, reader }]
    })
    this.optionals = optionalValues.flatMap(([field, name, read]) => {
      const reader = readers.get(field)
      return reader === undefined ? [] : [{ name, reader, read }]
    })
  }

  read(tree: Tree, row: number): Limb {
    const limb = this.begin(row)
    limb.role = this.role?.choice(row, 'role') ?? null
    limb.bark = this.bark?.choice(row, 'includedBark') ?? 'none'
    limb.dead = this.isDead(row)
    for (const { name, reader } of this.flags) limb[name] = reader.choice(row, 'flag') === 'yes'
    for (const { name, reader, read } of this.optionals)
      if (reader.raw(row) !== null) limb[name] = optional(this.inventory.problems, () => read(reader, row))
    this.readMeasurements(tree, limb, row)
    return limb
  }

  private begin(row: number): Limb {
    return {
      id: (this.id?.text(row) ?? '') || `row ${this.inventory.top + row + 1}`,
      row,
      diameter: null,
      stem: null,
      measured: 'above',
      origin: null,
      tip: null,
      parent: this.parent?.text(row) || null,
      role: null,
      bark: 'none',
      angle: null,
      bearing: null,
      dead: false,
      broken: false,
      rubbing: false,
      decay: false,
      length: null,
      lowestFoliage: null,
      lateralHeight: null,
      lateral: null,
      cut: null,
      lastCutShare: null,
      lastCutYear: null,
      foliageShare: null,
      notes: this.notes?.text(row) ?? '',
      unplannable: null
    }
  }

  /** Under a header "Dead", yes means dead. */
  private isDead(row: number): boolean {
    const reader = this.live
    if (reader === undefined) return false
    const asks = /^dead\b/i.test(reader.match.header) && !/live|alive/i.test(reader.match.header)
    if (asks && !/^\s*(live|dead|alive)/i.test(reader.text(row))) return reader.choice(row, 'flag') === 'yes'
    return reader.choice(row, 'live') === 'dead'
  }

  /** Diameter, stem, origin and tip. A leader needs none of them, dead wood only its diameter. */
  private readMeasurements(tree: Tree, limb: Limb, row: number): void {
    const needed = limb.role !== 'leader'
    limb.diameter = this.need(tree, limb, 'diameter', needed, this.readDiameter(row))
    this.readStem(tree, limb, row, needed && !limb.dead)
    limb.origin = this.need(tree, limb, 'origin', needed && !limb.dead, this.origin?.height(row) ?? null)
    limb.tip = this.need(tree, limb, 'tip', needed && !limb.dead, this.tip?.height(row) ?? null)
    if (limb.unplannable !== null) leaveUnplanned(this.inventory, tree.id, row, limb.unplannable)
  }

  /** The mean of two readings where there is a second one. */
  private readDiameter(row: number): number | null {
    const first = this.diameter?.diameter(row) ?? null
    const second = this.diameter2
    if (second === undefined || first === null || Number.isNaN(first)) return first
    const other = optional(this.inventory.problems, () => second.diameter(row))
    return other === null ? first : (first + other) / 2
  }

  private readStem(tree: Tree, limb: Limb, row: number, needed: boolean): void {
    const above = this.stem?.diameter(row) ?? null
    const below = this.stemBelow?.diameter(row) ?? null
    const flagged = this.measured?.choice(row, 'measured') ?? 'above'
    limb.measured = above !== null ? flagged : below !== null ? 'below' : 'above'
    limb.stem = this.need(tree, limb, 'stem', needed, above ?? below)
  }

  /** Null stands for absent: where the plan needs the value, the limb cannot be planned, and why is kept. */
  private need(
    tree: Tree,
    limb: Limb,
    field: 'diameter' | 'stem' | 'origin' | 'tip',
    needed: boolean,
    value: number | null
  ): number | null {
    if (value !== null && !Number.isNaN(value)) return value
    if (!needed) return null
    const found =
      value === null
        ? problem('missing-value', fieldAddress(this.inventory, limb.row, field), {
            column: names[field],
            limb: limb.id,
            tree: tree.id
          })
        : this.inventory.problems.at(-1)
    if (value === null && found !== undefined) this.inventory.problems.push(found)
    limb.unplannable ??= found?.message ?? null
    return null
  }
}
