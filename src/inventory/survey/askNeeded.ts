import { cellAddress, isBlank, quoted } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { listedChoices } from '../../../shared/words/lists'
import type { ColumnMatch } from '../inventory'
import { coupleOf } from './coupleOf'
import { candidatesFor, type Needed } from './neededCandidates'
import type { MatchedTable } from './matchTables'
import { kindOfTable } from './tableKind'

/** Sample values that a question names. */
const samples = 3

function valuesOf({ table }: MatchedTable, { column }: ColumnMatch): string {
  const filled = table.rows.map((row) => table.sheet.rows[row]?.[column]).filter((cell) => !isBlank(cell))
  return filled
    .slice(0, samples)
    .map((cell) => quoted(cell))
    .join('; ')
}

function addressOf({ table: { sheet, header } }: MatchedTable, { column }: ColumnMatch): string {
  return cellAddress(sheet.top + header.names, sheet.left + column, sheet.name)
}

function missing({ table, matches }: MatchedTable): Needed[] {
  if (kindOfTable(table) === 'trees') return []
  const has = (field: Field): boolean => matches.some((match) => match.field === field)
  const needed = (['diameter', 'stem', 'origin', 'tip'] as const).filter((field) => !has(field))
  return needed.filter((field) => field !== 'stem' || !has('stemBelow'))
}

/** Columns that hold two measurements in a cell, of which one at least is wanting. */
function ofTwo(each: MatchedTable, open: readonly Needed[]): Map<Needed, Problem> {
  const asked = new Map<Needed, Problem>()
  for (const match of each.matches) {
    const meaning = each.table.header.columns.find(({ column }) => column === match.column)?.meaning
    const fields = coupleOf(match)
    if (match.field !== null || meaning?.unused !== 'two things') continue
    if (!fields.some((field) => open.includes(field))) continue
    const columns = fields.map((field) => `the ${columnOf(field).name.toLowerCase()}`).join(' and ')
    const facts = { text: quoted(match.header), values: valuesOf(each, match), columns }
    const found = problem('column-of-two', addressOf(each, match), facts)
    for (const field of fields) if (open.includes(field) && !asked.has(field)) asked.set(field, found)
  }
  return asked
}

/** Measurements that no column gives though a column without a use may hold them: asked once each, with sample values. */
export function askNeeded(matched: readonly MatchedTable[]): Map<Field, Problem> {
  const asked = new Map<Field, Problem>()
  for (const each of matched) {
    const wanting = missing(each)
    const inTwo = ofTwo(each, wanting)
    for (const [field, found] of inTwo) if (!asked.has(field)) asked.set(field, found)
    const open = wanting.filter((field) => !inTwo.has(field))
    for (const [field, found] of candidatesFor(each, open)) {
      const [best] = found
      if (best === undefined || asked.has(field)) continue
      const choices = found.map(
        (match) => `${match.letters} “${quoted(match.header)}” (${valuesOf(each, match)})`
      )
      const { name } = columnOf(field)
      const facts = { column: `the ${name.toLowerCase()}`, name, choices: listedChoices(choices) }
      asked.set(field, problem('column-asked', addressOf(each, best), facts))
    }
  }
  return asked
}
