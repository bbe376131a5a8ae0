import { convertLength, systems, type UnitSystem } from '../units'
import { tenth } from './figures'
import { rounded, type Limit } from './rounding'

/** A diameter in mm as the crew's tape has it: a number of inches or centimeters to a tenth. */
export function printedDiameter(millimeters: number, system: UnitSystem, limit?: Limit): number {
  return rounded(convertLength(millimeters, 'mm', systems[system].diameter), 1, limit)
}

/** A height in m: a number of feet or meters to a tenth. */
export function printedHeight(meters: number, system: UnitSystem, limit?: Limit): number {
  return rounded(convertLength(meters, 'm', systems[system].height), 1, limit)
}

/** A diameter with its unit: "2.5 in", or "6 cm". */
export function showDiameter(millimeters: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].diameter
  return `${tenth(convertLength(millimeters, 'mm', unit), limit)} ${unit}`
}

/** A height with its unit: "24 ft", or "7.3 m". */
export function showHeight(meters: number, system: UnitSystem, limit?: Limit): string {
  const unit = systems[system].height
  return `${tenth(convertLength(meters, 'm', unit), limit)} ${unit}`
}
