import { quoted } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { unitNames, type LengthUnit } from '../../../shared/units'
import { grouped, tenth, whole } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { listedChoices } from '../../../shared/words/lists'
import { wholePercent } from '../../../shared/words/percent'
import { fieldAddress, headerAddress, type ColumnMatch, type Inventory, type Tree } from '../inventory'
import { inOtherUnits, type InOtherUnit } from './otherUnit'
import { look, noEvidence, overTrunk, type Evidence } from './evidence'
import { isUnusual, likelyUnits, median, usual, type OtherUnits } from './units'

/** Fewer limbs or trees than these say nothing of a whole column. */
const enough = 3
const enoughTrees = 2

/** The share of the tree's height that the highest listed tip reaches, where feet and meters are not mistaken (house judgment). */
const reachesLeast = 0.36
const reachesMost = 1.3
/** A tree so many times as high as a typical one is asked about, where it is higher than almost any (house judgment). */
const timesTypical = 4
const feetPerMeter = 1 / 0.3048

/**
 * Asks about what can hardly be so: columns that are swapped or in another unit, trees of an odd shape, limbs entered
 * twice. Nothing is changed. What one limb contradicts (its tip above the tree, its origin above its tip, thicker than
 * its stem) is reported when the tree is planned.
 */
export class Plausibility {
  private readonly evidence: Evidence

  constructor(private readonly inventory: Inventory) {
    this.evidence = noEvidence(this.columnOf('trunk') !== undefined)
  }

  look(trees: readonly Tree[]): void {
    for (const tree of trees) look(this.evidence, tree)
  }

  problems(): Problem[] {
    const swapped = this.swapped()
    const sizes = this.sizes(swapped.length > 0)
    const other = sizes.length > 0 ? [] : this.otherUnits()
    const asked = new Set(other.map(({ shape }) => shape.row))
    const odd = this.evidence.oddShapes.filter(({ row }) => !asked.has(row))
    const areSwapped = swapped.some(({ code }) => code === 'heights-swapped')
    return [
      ...swapped,
      ...sizes,
      ...(areSwapped ? [] : this.tips()),
      ...other.map((found) => this.otherUnit(found)),
      ...(sizes.length > 0 ? [] : odd.map((tree) => this.oddShape(tree))),
      ...this.tall(),
      ...(sizes.length > 0 ? [] : this.thinTrunks()),
      ...(areSwapped ? [] : this.evidence.highCrowns.map(({ tree, lowest }) => this.highCrown(tree, lowest))),
      ...this.alike()
    ]
  }

  private columnOf(field: Field): ColumnMatch | undefined {
    return this.inventory.matches.find((match) => match.field === field)
  }

  /** The address of a header as text. */
  private header(field: Field): string {
    return headerAddress(this.inventory, field)
  }

  /** Columns of which each stands in the other's place in most rows. */
  private swapped(): Problem[] {
    const stem = this.columnOf('stem') === undefined ? 'stemBelow' : 'stem'
    const pairs = [
      ['limbs-thicker', this.evidence.thicker, 'diameter', stem],
      ['heights-swapped', this.evidence.drooping, 'tip', 'origin']
    ] as const
    return pairs.flatMap(([code, { found, of }, field, otherField]) => {
      const [column, other] = [this.columnOf(field), this.columnOf(otherField)]
      if (of < enough || found * 2 <= of || column === undefined || other === undefined) return []
      const facts = {
        count: grouped(found),
        total: grouped(of),
        text: quoted(column.header),
        other: quoted(other.header),
        place: this.header(otherField)
      }
      return [problem(code, this.header(field), facts)]
    })
  }

  /** Heights against diameters: by the trunk where there is one, else by the stems at the unions. */
  private sizes(areSwapped: boolean): Problem[] {
    const { slenderness, trunks, aboveUnions } = this.evidence
    const byTrunk = this.columnOf('trunk') !== undefined
    const field = byTrunk ? 'trunk' : this.columnOf('stem') === undefined ? 'stemBelow' : 'stem'
    const [tall, thick] = [this.columnOf('height'), this.columnOf(field)]
    const values = byTrunk ? slenderness : aboveUnions
    if (values.length < (byTrunk ? enoughTrees : enough) || !tall?.unit || !thick?.unit) return []
    if (areSwapped && !byTrunk) return []
    const times = median(values)
    if (!isUnusual(times, byTrunk ? median(trunks) : null)) return []
    const others = likelyUnits(times, tall.unit, thick.unit)
    if (others.length === 0) return []
    const typical = times < 10 ? tenth(times) : whole(times)
    const facts = {
      text: quoted(tall.header),
      unit: unitNames[tall.unit],
      other: quoted(thick.header),
      otherUnit: unitNames[thick.unit],
      place: this.header(field),
      what: byTrunk
        ? `a typical tree is ${typical} times as high as its trunk is thick`
        : `what stands above a typical union is ${typical} times as high as the stem there is thick`,
      low: usual.low,
      high: usual.high,
      question: unitQuestion(others)
    }
    return [problem('sizes-unlikely', this.header('height'), facts)]
  }

  /** Tips against the height of the tree. */
  private tips(): Problem[] {
    const { reaches } = this.evidence
    const column = this.columnOf('tip')
    if (reaches.length < enoughTrees || !column?.unit) return []
    const typical = median(reaches)
    const isLow = column.unit === 'ft' && largest(reaches) < reachesLeast
    const isHigh = column.unit === 'm' && typical > reachesMost && typical / feetPerMeter <= 1
    if (!isLow && !isHigh) return []
    const facts = {
      text: quoted(column.header),
      unit: unitNames[column.unit],
      value: wholePercent(typical),
      question: unitNames[isLow ? 'm' : 'ft']
    }
    return [problem('tips-unlikely', this.header('tip'), facts)]
  }

  /** Single trees of which a size was likely typed in another unit. */
  private otherUnits(): readonly InOtherUnit[] {
    const [tall, thick] = [this.columnOf('height'), this.columnOf('trunk')]
    return !tall?.unit || !thick?.unit ? [] : inOtherUnits(this.evidence.shapes, tall.unit, thick.unit)
  }

  private otherUnit({ shape, field, unit, size, times, typical }: InOtherUnit): Problem {
    const { system } = this.inventory
    const { id, row, height, trunk } = shape
    const isHeight = field === 'height'
    return problem('tree-unit', fieldAddress(this.inventory, row, field), {
      tree: id,
      what: isHeight ? 'height' : 'trunk diameter',
      value: isHeight ? showHeight(height, system) : showDiameter(trunk, system),
      beside: isHeight
        ? `a trunk of ${showDiameter(trunk, system)}`
        : `a height of ${showHeight(height, system)}`,
      times: times < 10 ? tenth(times) : whole(times),
      typical: whole(typical),
      unit: nameOfUnit(unit),
      other: isHeight ? showHeight(size, system) : showDiameter(size, system)
    })
  }

  private oddShape({ id, row, height, trunk }: Tree): Problem {
    const { system } = this.inventory
    const times = ((height ?? NaN) * 1000) / (trunk ?? NaN)
    return problem('tree-shape', fieldAddress(this.inventory, row, 'height'), {
      tree: id,
      height: showHeight(height ?? NaN, system),
      diameter: showDiameter(trunk ?? NaN, system),
      value: times < 10 ? tenth(times) : whole(times)
    })
  }

  /** Trees far higher than the others. */
  private tall(): Problem[] {
    const { heights, tall } = this.evidence
    const sorted = [...heights].sort((a, b) => a - b)
    const typical = sorted[Math.floor((sorted.length - 1) / 2)] ?? Infinity
    const { system } = this.inventory
    const unit = unitNames[this.columnOf('height')?.unit ?? 'm']
    return tall
      .filter(({ height }) => (height ?? 0) > typical * timesTypical)
      .map(({ id, row, height }) =>
        problem('tree-tall', fieldAddress(this.inventory, row, 'height'), {
          tree: id,
          height: showHeight(height ?? NaN, system),
          unit
        })
      )
  }

  /** Limbs thicker than the trunk: a question about the columns where most are, else one about each. */
  private thinTrunks(): Problem[] {
    const { overTrunk: found, besideTrunks: of } = this.evidence
    const [limbs, trunks] = [this.columnOf('diameter'), this.columnOf('trunk')]
    if (found.length < enough || found.length * 2 <= of || !limbs?.unit || !trunks?.unit)
      return found.map((each) => this.overTrunk(each))
    const facts = {
      count: grouped(found.length),
      total: grouped(of),
      unit: unitNames[limbs.unit],
      otherUnit: unitNames[trunks.unit],
      place: this.header('trunk')
    }
    return [problem('trunks-thinner', this.header('diameter'), facts)]
  }

  private overTrunk({ tree, limb }: Evidence['overTrunk'][number]): Problem {
    const { system } = this.inventory
    const byStem = (limb.diameter ?? 0) <= (tree.trunk ?? 0) * overTrunk
    const field = byStem ? (limb.measured === 'below' ? 'stemBelow' : 'stem') : 'diameter'
    return problem('thicker-than-trunk', fieldAddress(this.inventory, limb.row, field), {
      tree: tree.id,
      limb: limb.id,
      what: byStem ? 'a stem at its union of' : 'a diameter of',
      value: showDiameter((byStem ? limb.stem : limb.diameter) ?? 0, system),
      diameter: showDiameter(tree.trunk ?? 0, system)
    })
  }

  private highCrown({ id, row, crownBase }: Tree, lowest: number): Problem {
    const { system } = this.inventory
    return problem('crown-base-above-limbs', fieldAddress(this.inventory, row, 'crownBase'), {
      tree: id,
      value: showHeight(crownBase ?? NaN, system),
      other: showHeight(lowest, system)
    })
  }

  private alike(): Problem[] {
    return this.evidence.alike.map(([tree, first, second]) =>
      problem('limbs-alike', fieldAddress(this.inventory, second.row, 'diameter'), {
        tree: tree.id,
        limb: first.id,
        other: second.id
      })
    )
  }
}

/** Of lists too long to be spread out as arguments. */
function largest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), -Infinity)
}

const nameOfUnit = (unit: LengthUnit): string =>
  unit === 'cm' ? 'centimeters' : unit === 'mm' ? 'millimeters' : unitNames[unit]

function unitQuestion(others: readonly OtherUnits[]): string {
  const parts = others.map(({ height, diameter }) =>
    height !== null && diameter !== null
      ? `the heights in ${nameOfUnit(height)} and the diameters in ${nameOfUnit(diameter)}`
      : height !== null
        ? `the heights in ${nameOfUnit(height)}`
        : `the diameters in ${nameOfUnit(diameter ?? 'mm')}`
  )
  return `are ${listedChoices(parts)}`
}

/** The questions that an inventory raises once it is read. */
export function plausibility(inventory: Inventory): Problem[] {
  const asked = new Plausibility(inventory)
  asked.look(inventory.trees)
  return asked.problems()
}
