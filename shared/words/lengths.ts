import { convertLength, systems, type LengthUnit, type UnitSystem } from '../units'
import { Figure, tenth } from './figures'
import { rounded, type Limit } from './rounding'

/** A diameter in mm as the crew's tape has it: a number of inches or centimeters to a tenth. */
export function printedDiameter(millimeters: number, system: UnitSystem, limit?: Limit): number {
  return rounded(convertLength(millimeters, 'mm', systems[system].diameter), 1, limit)
}

/** A height in m: a number of feet or meters to a tenth. */
export function printedHeight(meters: number, system: UnitSystem, limit?: Limit): number {
  return rounded(convertLength(meters, 'm', systems[system].height), 1, limit)
}

const measures: Partial<Record<LengthUnit, Figure>> = {}

function withUnit(value: number, unit: LengthUnit, limit?: Limit): string {
  return (measures[unit] ??= new Figure(0, 1, false, ` ${unit}`)).of(value, limit)
}

/** A diameter with its unit: "2.5 in", or "6 cm". */
export function showDiameter(millimeters: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].diameter
  return withUnit(convertLength(millimeters, 'mm', unit), unit, limit)
}

/** A height with its unit: "24 ft", or "7.3 m". */
export function showHeight(meters: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].height
  return withUnit(convertLength(meters, 'm', unit), unit, limit)
}

/** The marks of feet and inches, as lists for a crew have them where room is short; other units as they are. */
const marks: Partial<Record<LengthUnit, string>> = { ft: "'", in: '"' }

function marked(value: number, unit: LengthUnit, limit?: Limit): string {
  return `${tenth(value, limit)}${marks[unit] ?? ` ${unit}`}`
}

/** A diameter with the mark of its unit: 2.5" (inches), or "6 cm". */
export function markDiameter(millimeters: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].diameter
  return marked(convertLength(millimeters, 'mm', unit), unit, limit)
}

/** A height with the mark of its unit: 24', or "7.3 m". */
export function markHeight(meters: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].height
  return marked(convertLength(meters, 'm', unit), unit, limit)
}
