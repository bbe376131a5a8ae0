import type { Field } from '../../../shared/columns'
import { problem } from '../../../shared/problems'
import { optional, type CellReader } from './cellReader'
import { fieldAddress, leaveUnplanned, type Inventory, type Limb, type Tree } from './inventory'

const names = {
  diameter: 'The limb diameter',
  stem: 'The stem diameter at the union',
  origin: 'The origin height',
  tip: 'The tip height'
}

/** Reads the limb of one row. A limb that lacks a measurement the plan needs says so in `unplannable`. */
export class LimbReader {
  constructor(
    private readonly readers: Map<Field, CellReader>,
    private readonly inventory: Inventory
  ) {}

  read(tree: Tree, row: number): Limb {
    const limb = this.begin(tree, row)
    this.readWords(limb, row)
    this.readOptional(limb, row)
    this.readMeasurements(tree, limb, row)
    return limb
  }

  private begin(tree: Tree, row: number): Limb {
    return {
      id: this.text('limb', row) || `row ${this.inventory.top + row + 1}`,
      row,
      diameter: null,
      stem: null,
      measured: 'above',
      origin: null,
      tip: null,
      parent: this.text('parent', row) || null,
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
      notes: this.text('notes', row),
      unplannable: null
    }
  }

  private text(field: Field, row: number): string {
    return this.readers.get(field)?.text(row) ?? ''
  }

  private readWords(limb: Limb, row: number): void {
    limb.role = this.readers.get('role')?.choice(row, 'role') ?? null
    limb.bark = this.readers.get('bark')?.choice(row, 'includedBark') ?? 'none'
    limb.dead = this.isDead(row)
    limb.broken = this.flag('broken', row)
    limb.rubbing = this.flag('rubbing', row)
    limb.decay = this.flag('decay', row)
  }

  /** Under a header "Dead", yes means dead. */
  private isDead(row: number): boolean {
    const reader = this.readers.get('live')
    if (reader === undefined) return false
    const asks = /^dead\b/i.test(reader.match.header) && !/live|alive/i.test(reader.match.header)
    if (asks && !/^\s*(live|dead|alive)/i.test(reader.text(row))) return reader.choice(row, 'flag') === 'yes'
    return reader.choice(row, 'live') === 'dead'
  }

  private flag(field: Field, row: number): boolean {
    return this.readers.get(field)?.choice(row, 'flag') === 'yes'
  }

  private readOptional(limb: Limb, row: number): void {
    const read = (field: Field, how: (reader: CellReader) => number | null): number | null => {
      const reader = this.readers.get(field)
      if (reader === undefined || reader.raw(row) === null) return null
      return optional(this.inventory.problems, () => how(reader))
    }
    limb.angle = read('angle', (reader) => reader.degrees(row, 180))
    limb.bearing = read('bearing', (reader) => reader.degrees(row, 360))
    limb.length = read('length', (reader) => reader.height(row))
    limb.lowestFoliage = read('lowestFoliage', (reader) => reader.height(row))
    limb.lateralHeight = read('lateralHeight', (reader) => reader.height(row))
    limb.lateral = read('lateral', (reader) => reader.diameter(row))
    limb.cut = read('cut', (reader) => reader.diameter(row))
    limb.lastCutShare = read('lastCutShare', (reader) => reader.share(row))
    limb.lastCutYear = read('lastCutDate', (reader) => reader.year(row))
    limb.foliageShare = read('foliageShare', (reader) => reader.share(row))
  }

  /** Diameter, stem, origin and tip. A leader needs none of them, dead wood only its diameter. */
  private readMeasurements(tree: Tree, limb: Limb, row: number): void {
    const needed = limb.role !== 'leader'
    limb.diameter = this.need(tree, limb, 'diameter', needed, this.readDiameter(row))
    this.readStem(tree, limb, row, needed && !limb.dead)
    const height = (field: 'origin' | 'tip'): number | null => this.readers.get(field)?.height(row) ?? null
    limb.origin = this.need(tree, limb, 'origin', needed && !limb.dead, height('origin'))
    limb.tip = this.need(tree, limb, 'tip', needed && !limb.dead, height('tip'))
    if (limb.unplannable !== null) leaveUnplanned(this.inventory, tree.id, row, limb.unplannable)
  }

  /** The mean of two readings where there is a second one. */
  private readDiameter(row: number): number | null {
    const first = this.readers.get('diameter')?.diameter(row) ?? null
    const second = this.readers.get('diameter2')
    if (second === undefined || first === null || Number.isNaN(first)) return first
    const other = optional(this.inventory.problems, () => second.diameter(row))
    return other === null ? first : (first + other) / 2
  }

  private readStem(tree: Tree, limb: Limb, row: number, needed: boolean): void {
    const above = this.readers.get('stem')?.diameter(row) ?? null
    const below = this.readers.get('stemBelow')?.diameter(row) ?? null
    const flagged = this.readers.get('measured')?.choice(row, 'measured') ?? 'above'
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
