import type { Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { convertLength, systems, type LengthUnit, type UnitSystem } from '../../../shared/units'
import { columnValues } from '../headers/columnValues'
import { lengthOf } from '../lengthOf'
import { unitOfCells, type UnitsOf } from './cellUnits'

export const isMetric = (unit: LengthUnit | null): boolean => unit === 'mm' || unit === 'cm' || unit === 'm'

/** How many times as high as thick trees and stems are, at the least and the most (house judgment). */
const slender = { least: 15, most: 150 }

/** Heights against the diameters that belong to them. */
const pairs: readonly (readonly [height: Field, diameter: Field])[] = [
  ['height', 'trunk'],
  ['tip', 'stem'],
  ['tip', 'diameter']
]

function middle({ table, matches }: UnitsOf, field: Field): number | null {
  const column = matches.find((match) => match.field === field)?.column
  if (column === undefined) return null
  return columnValues(table.rows.map((row): Cell | undefined => table.sheet.rows[row]?.[column])).median
}

/** The system in which heights suit diameters where no header names a unit; inches and feet where both or neither do. */
function bySizes(tables: readonly UnitsOf[]): UnitSystem {
  for (const table of tables)
    for (const [high, thick] of pairs) {
      const [height, diameter] = [middle(table, high), middle(table, thick)]
      if (height === null || diameter === null || height <= 0 || diameter <= 0) continue
      const suits = (system: UnitSystem): boolean => {
        const units = systems[system]
        const ratio =
          convertLength(height, units.height, 'mm') / convertLength(diameter, units.diameter, 'mm')
        return ratio >= slender.least && ratio <= slender.most
      }
      return !suits('in-ft') && suits('cm-m') ? 'cm-m' : 'in-ft'
    }
  return 'in-ft'
}

/** Metric where more headers name a metric unit than another; where none names any, as more cells do, else what the sizes suit. */
export function systemOf(tables: readonly UnitsOf[]): UnitSystem {
  const used = tables.flatMap((table) =>
    [...table.matches, ...table.labeled].flatMap(({ field, unit, column }) =>
      field === null ? [] : [{ table, field, unit, column }]
    )
  )
  const byHeaders = used.flatMap(({ unit }) => unit ?? [])
  if (byHeaders.length > 0) return mostly(byHeaders)
  const byCells = used.flatMap(({ table, field, column }) =>
    lengthOf(field) === null ? [] : (unitOfCells(table, column) ?? [])
  )
  return byCells.length > 0 ? mostly(byCells) : bySizes(tables)
}

function mostly(units: readonly LengthUnit[]): UnitSystem {
  const metric = units.filter(isMetric)
  return metric.length > units.length - metric.length ? 'cm-m' : 'in-ft'
}
