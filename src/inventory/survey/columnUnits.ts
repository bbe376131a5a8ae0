import { quoted } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { millimetersPer, systems, unitNames, type LengthUnit, type UnitSystem } from '../../../shared/units'
import { isOrdinary } from '../headers/fit'
import type { ColumnMatch } from '../inventory'
import { lengthOf } from '../lengthOf'
import { medianOf, unitOfCells, type UnitsOf } from './cellUnits'
import { isMetric } from './systemOf'

type Kind = 'diameter' | 'height'

/** A column of lengths whose unit its header or its cells name. */
interface Named {
  readonly match: ColumnMatch
  readonly unit: LengthUnit
}

const heightOrDiameter = ({ field }: ColumnMatch): Kind | null => {
  const kind = field === null ? null : lengthOf(field)
  return kind === 'growth' ? null : kind
}

/**
 * The units of columns of lengths whose headers name none: as their own cells say, else as the other columns of their kind
 * in the table have them (the heights, or the diameters), else those of the other tables, else as the system says.
 */
export class ColumnUnits {
  private readonly namedIn = new Map<UnitsOf, readonly Named[]>()

  constructor(
    private readonly tables: readonly UnitsOf[],
    private readonly system: UnitSystem,
    /** A person chose the system, which goes before what other columns have. */
    private readonly isChosen: boolean
  ) {}

  /** The unit of a column of lengths. */
  of(table: UnitsOf, match: ColumnMatch): LengthUnit | null {
    if (match.field === null || lengthOf(match.field) === null) return null
    if (match.unit !== null) return match.unit
    const { height, diameter } = systems[this.system]
    const kind = heightOrDiameter(match)
    if (kind === null) return diameter
    // Beside a label stands one value, and below it something else.
    const isLabel = table.labeled.includes(match)
    const own = isLabel ? null : unitOfCells(table, match.column)
    if (own !== null) return own
    const likes = this.isChosen ? [] : this.ofKind(table, kind)
    const median = isLabel ? null : medianOf(table, match.column)
    return followed(likes, this.system, match.field, median) ?? (kind === 'height' ? height : diameter)
  }

  /** What is stated of a column that has numbers whose unit nothing names. */
  told(table: UnitsOf, match: ColumnMatch, unit: LengthUnit, cell: string): Problem {
    const facts = { text: quoted(match.header), unit: unitNames[unit] }
    const kind = heightOrDiameter(match)
    const other = (list: readonly Named[]): Named | undefined =>
      list.find((each) => isMetric(each.unit) !== isMetric(unit))
    const likes = kind === null ? [] : this.ofKind(table, kind)
    const against =
      other(likes) ??
      (likes.length > 0 ? other(this.ofKind(table, kind === 'height' ? 'diameter' : 'height')) : undefined)
    if (against === undefined || unitOfCells(table, match.column) !== null)
      return problem('no-unit', cell, facts)
    const like = likes.find((each) => each.unit === unit && each.match !== against.match)
    const from = like === undefined ? '' : `, as “${quoted(like.match.header)}” has them`
    return problem('unit-contested', cell, {
      ...facts,
      from,
      other: quoted(against.match.header),
      otherUnit: unitNames[against.unit]
    })
  }

  /** The columns of a kind that name their unit: those of the table, or, where it has none, of all tables. */
  private ofKind(table: UnitsOf, kind: Kind): readonly Named[] {
    const own = this.named(table).filter(({ match }) => heightOrDiameter(match) === kind)
    if (own.length > 0) return own
    return this.tables.flatMap((other) =>
      other === table ? [] : this.named(other).filter(({ match }) => heightOrDiameter(match) === kind)
    )
  }

  private named(table: UnitsOf): readonly Named[] {
    let found = this.namedIn.get(table)
    if (found === undefined) {
      const labeled = new Set(table.labeled)
      found = [...table.labeled, ...table.matches].flatMap((match): Named[] => {
        if (heightOrDiameter(match) === null) return []
        const unit = match.unit ?? (labeled.has(match) ? null : unitOfCells(table, match.column))
        return unit === null ? [] : [{ match, unit }]
      })
      this.namedIn.set(table, found)
    }
    return found
  }
}

/**
 * The unit that most of the others have, of the system's where they are as many; where the numbers of the field would hardly be
 * in it, the one of the same system that they may be in.
 */
function followed(
  others: readonly Named[],
  system: UnitSystem,
  field: Field,
  median: number | null
): LengthUnit | null {
  const metric = others.filter(({ unit }) => isMetric(unit))
  const balance = 2 * metric.length - others.length
  if (others.length === 0) return null
  const takesMetric = balance === 0 ? system === 'cm-m' : balance > 0
  const count = (unit: LengthUnit): number => others.filter((each) => each.unit === unit).length
  const units = [...new Set(others.map(({ unit }) => unit))]
    .filter((unit) => isMetric(unit) === takesMetric)
    .sort((a, b) => count(b) - count(a))
  const { height, diameter } = systems[takesMetric ? 'cm-m' : 'in-ft']
  const isHeight = lengthOf(field) === 'height'
  const usual = isHeight ? height : diameter
  // Of heights, inches and centimeters are those of small things; of diameters, feet and meters are those of girths.
  const ofKind = units.filter((unit) => (isHeight ? unit === usual : unit !== 'ft' && unit !== 'm'))
  const fits = (unit: LengthUnit): boolean =>
    median === null || isOrdinary(field, median * millimetersPer[unit]) !== false
  return [...ofKind, usual, ...units].find(fits) ?? usual
}

const mixed = { diameter: 'mixed-diameter-units', height: 'mixed-height-units' } as const

/** Inches beside centimeters among the diameters, or feet beside meters among the heights, are more often a slip than a wish. */
export function mixedUnits(
  matches: readonly ColumnMatch[],
  address: (match: ColumnMatch) => string
): Problem[] {
  return (['diameter', 'height'] as const).flatMap((kind) => {
    const [first, ...others] = matches.filter((match) => heightOrDiameter(match) === kind)
    if (first === undefined) return []
    return others.flatMap((match) => {
      if (isMetric(match.unit) === isMetric(first.unit)) return []
      const facts = {
        column: quoted(match.header),
        unit: unitNames[match.unit ?? 'mm'],
        other: unitNames[first.unit ?? 'mm']
      }
      return [problem(mixed[kind], address(match), facts)]
    })
  })
}
