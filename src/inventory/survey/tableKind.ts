import type { Field } from '../../../shared/columns'
import type { RowsOf } from './part'
import type { SheetTable } from './sheetTables'

const measured: readonly Field[] = ['diameter', 'stem', 'stemBelow', 'origin', 'tip']
const ofTrees: readonly Field[] = ['trunk', 'height', 'crownBase', 'caliper', 'spread']
const alsoOfTrees: readonly Field[] = [...ofTrees, 'species', 'stage', 'vigor']

/**
 * What the rows of a table tell of; null where it is no part of an inventory, such as a list of choices or prices. Limbs are
 * told by two of their measurements (or an id and one), trees by an id or a species with a size.
 */
export function kindOfTable({ header }: Pick<SheetTable, 'header'>): RowsOf | null {
  const fields = new Set(header.columns.map(({ meaning }) => meaning.field))
  const count = (list: readonly Field[]): number => list.filter((field) => fields.has(field)).length
  const limbs = count(measured) + (fields.has('limb') ? 1 : 0) >= 2 && count(measured) >= 1
  if (limbs) return count(alsoOfTrees) > 0 ? 'both' : 'limbs'
  if (fields.has('tree')) return count(ofTrees) > 0 ? 'trees' : null
  return fields.has('species') && count(ofTrees) - (fields.has('spread') ? 1 : 0) > 0 ? 'trees' : null
}
