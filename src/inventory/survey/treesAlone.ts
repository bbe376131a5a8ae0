import { columnOf, type Field } from '../../../shared/columns'
import type { HeaderRows, TableColumn } from './headerRows'

/** What a table has at least where its rows tell of limbs. */
const openLimbs: readonly Field[] = [
  ...(['limb', 'diameter', 'stem', 'stemBelow', 'origin', 'tip', 'length', 'parent', 'role'] as const)
]

/**
 * The headers of a list of trees without what else is told of limbs: where no column measures or names a limb, "Lean" or
 * "Decay" is the tree's, which the plan has no use for, and makes no limb of it. A form above the table may tell of one.
 */
export function treesAlone(header: HeaderRows, hasForm: boolean): HeaderRows {
  const { columns, groups } = header
  const fields = columns.flatMap(({ meaning }) => meaning.field ?? [])
  const isList = fields.includes('tree') && (fields.includes('height') || fields.includes('trunk'))
  const tellsOfLimbs = openLimbs.some((field) => fields.includes(field))
  if (groups !== null || hasForm || !isList || tellsOfLimbs) return header
  const isOfLimbs = ({ meaning: { field } }: TableColumn): boolean =>
    field !== null && field !== 'notes' && columnOf(field).of === 'limb'
  if (!columns.some(isOfLimbs)) return header
  return {
    ...header,
    columns: columns.map((column): TableColumn => {
      if (!isOfLimbs(column)) return column
      return {
        ...column,
        meaning: { ...column.meaning, field: null, score: 0, confidence: 'sure', runnerUp: null }
      }
    })
  }
}
