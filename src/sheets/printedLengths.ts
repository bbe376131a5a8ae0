import { convertLength, systems, type UnitSystem } from '../../shared/units'

const tenth = (value: number): number => Math.round(value * 10) / 10

/** A diameter in mm as the crew's tape has it, in inches or centimetres to a tenth. */
export function printedDiameter(millimetres: number, system: UnitSystem): number {
  return tenth(convertLength(millimetres, 'mm', systems[system].diameter))
}

/** The least diameter of a lateral: never rounded below what the cut asks for. */
export function printedLateral(millimetres: number, system: UnitSystem): number {
  return Math.ceil(convertLength(millimetres, 'mm', systems[system].diameter) * 10 - 1e-9) / 10
}

/** A height in m, in feet or metres to a tenth. */
export function printedHeight(metres: number, system: UnitSystem): number {
  return tenth(convertLength(metres, 'm', systems[system].height))
}
