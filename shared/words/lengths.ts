import { convertLength, systems, type UnitSystem } from '../units'
import { tenth } from './figures'
import { rounded, type Limit } from './rounding'

/** A diameter in mm as the crew's tape has it: a number of inches or centimetres to a tenth. */
export function printedDiameter(millimetres: number, system: UnitSystem, limit?: Limit): number {
  return rounded(convertLength(millimetres, 'mm', systems[system].diameter), 1, limit)
}

/** A height in m: a number of feet or metres to a tenth. */
export function printedHeight(metres: number, system: UnitSystem, limit?: Limit): number {
  return rounded(convertLength(metres, 'm', systems[system].height), 1, limit)
}

/** A diameter with its unit: "2.5 in", or "6 cm". */
export function showDiameter(millimetres: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].diameter
  return `${tenth(convertLength(millimetres, 'mm', unit), limit)} ${unit}`
}

/** A height with its unit: "24 ft", or "7.3 m". */
export function showHeight(metres: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].height
  return `${tenth(convertLength(metres, 'm', unit), limit)} ${unit}`
}
