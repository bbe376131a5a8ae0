import type { Cell } from '../../../shared/cells'
import type { Field } from '../../../shared/columns'
import { convertLength, systems, type LengthUnit, type UnitSystem } from '../../../shared/units'
import { columnValues } from '../headers/columnValues'
import type { ColumnMatch } from '../inventory'
import type { SheetTable } from './sheetTables'

/** Columns with what stands in them. */
export interface UnitsOf {
  readonly table: Pick<SheetTable, 'sheet' | 'rows'>
  readonly matches: readonly ColumnMatch[]
  readonly labeled: readonly ColumnMatch[]
}

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

/** Metric where more headers name a metric unit than another; where none names any, what the sizes suit. */
export function systemOf(tables: readonly UnitsOf[]): UnitSystem {
  const named = tables
    .flatMap(({ matches, labeled }) => [...matches, ...labeled])
    .filter(({ field, unit }) => field !== null && unit !== null)
  if (named.length === 0) return bySizes(tables)
  const metric = named.filter(({ unit }) => isMetric(unit))
  return metric.length > named.length - metric.length ? 'cm-m' : 'in-ft'
}
