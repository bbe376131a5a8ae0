import { problem, type Problem } from '../../../shared/problems'
import { firstOf } from '../../../shared/words/some'
import type { IdentifiedRow } from './identity'
import { idCell } from './part'
import type { SurveyTable } from './surveyTable'
import { tableAddress } from './tableAddress'

/** Tables that a line names. */
const named = 4

/** Limbs of trees that the table of trees does not list, where there is one: a problem a tree. */
export function notListed(tables: readonly SurveyTable[], rows: readonly IdentifiedRow[]): Problem[] {
  const lists = tables.filter(({ of }) => of === 'trees')
  if (lists.length === 0 || lists.length === tables.length) return []
  const known = new Set(rows.filter(({ part }) => part.of === 'trees').map(({ key }) => key))
  const trees = firstOf(lists.map(tableAddress), named)
  const problems: Problem[] = []
  for (const { part, row, id, key } of rows) {
    if (known.has(key) || part.of !== 'limbs') continue
    known.add(key)
    problems.push(problem('tree-not-listed', idCell(part, row), { tree: id, trees }))
  }
  return problems
}
