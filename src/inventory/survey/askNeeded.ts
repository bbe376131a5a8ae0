import { isBlank, quoted } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { listedChoices } from '../../../shared/words/lists'
import { columnValues } from '../headers/columnValues'
import { readHeaderText } from '../headers/headerText'
import type { AskedField, ColumnMatch } from '../inventory'
import { coupleOf } from './coupleOf'
import { bareCrowns, mayBeCrownBase } from './crownBaseByUse'
import { candidatesFor, type Needed as NeededField } from './neededCandidates'
import type { MatchedTable } from './matchTables'
import { cellIn } from './sheetCells'
import { kindOfTable } from './tableKind'

/** Sample values that a question names, candidates where none is likely, and rows looked at for them. */
const samples = 3
const candidates = 3
const looked = 200

/** Where nothing is likely: columns of numbers without a use, in their order. */
function othersIn({ table, matches }: MatchedTable): ColumnMatch[] {
  const others = matches.filter((match) => {
    if (match.field !== null || match.confidence === 'chosen' || match.header === '') return false
    const { filled, numeric } = columnValues(
      table.rows.slice(0, looked).map((row) => table.sheet.rows[row]?.[match.column])
    )
    return filled > 0 && numeric >= 0.8
  })
  return others.slice(0, candidates)
}

function valuesOf({ table }: MatchedTable, { column }: ColumnMatch): string {
  const filled = table.rows.map((row) => table.sheet.rows[row]?.[column]).filter((cell) => !isBlank(cell))
  return filled
    .slice(0, samples)
    .map((cell) => quoted(cell))
    .join('; ')
}

function addressOf({ table: { sheet, header } }: MatchedTable, { column }: ColumnMatch): string {
  return cellIn(sheet, header.names, column)
}

/** Whether any column, by its meaning or by its words, is about limbs; a list of trees alone lacks nothing of theirs. */
function speaksOfLimbs({ matches }: MatchedTable): boolean {
  return matches.some(
    ({ field, header }) =>
      (field !== null && columnOf(field).of === 'limb') || readHeaderText(header).notions.has('limb')
  )
}

function missing(each: MatchedTable): NeededField[] {
  const { table, matches } = each
  if (kindOfTable(table) === 'trees' || !speaksOfLimbs(each)) return []
  const has = (field: Field): boolean => matches.some((match) => match.field === field)
  const needed = (['diameter', 'stem', 'origin', 'tip'] as const).filter((field) => !has(field))
  return needed.filter((field) => field !== 'stem' || !has('stemBelow'))
}

/** What limbs need and no column gives, and the problems of what a column without a use may well hold. */
export interface Needed {
  readonly asked: readonly AskedField[]
  /** One a field, with sample values. */
  readonly problems: ReadonlyMap<Field, Problem>
}

/** Columns that hold two measurements in a cell, of which one at least is wanting. */
function ofTwo(each: MatchedTable, open: readonly NeededField[]): Map<NeededField, Problem> {
  const asked = new Map<NeededField, Problem>()
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

/** Columns without a use that may hold the crown base of the trees. */
function crownBases({ table, matches }: MatchedTable): ColumnMatch[] {
  if (matches.some(({ field }) => field === 'crownBase')) return []
  const columns = mayBeCrownBase(table.sheet, table.header, table.rows)
  return matches.filter(
    ({ column, field, confidence }) => field === null && confidence !== 'chosen' && columns.includes(column)
  )
}

/** A column of the crown that says no more, where the height of its base is not given: asked once. */
function crownAsked(each: MatchedTable): { columns: ColumnMatch[]; problem: Problem } | null {
  const { table, matches } = each
  if (matches.some(({ field }) => field === 'crownBase')) return null
  const bare = bareCrowns(table.sheet, table.header, table.rows)
  const columns = matches.filter(
    ({ column, field, confidence }) => field === null && confidence !== 'chosen' && bare.includes(column)
  )
  const [first] = columns
  if (first === undefined) return null
  const hasSpread = matches.some(({ field }) => field === 'spread')
  const facts = {
    text: quoted(first.header),
    values: valuesOf(each, first),
    others: hasSpread ? 'its depth' : 'its spread, its depth'
  }
  return { columns, problem: problem('crown-asked', addressOf(each, first), facts) }
}

/** Measurements that no column gives though a column without a use may hold them: asked once each, with sample values. */
export function askNeeded(matched: readonly MatchedTable[]): Needed {
  const asked = new Map<Field, AskedField>()
  const problems = new Map<Field, Problem>()
  for (const each of matched) {
    const wanting = missing(each)
    const inTwo = ofTwo(each, wanting)
    for (const [field, found] of inTwo) if (!problems.has(field)) problems.set(field, found)
    const open = wanting.filter((field) => !inTwo.has(field))
    for (const [field, found] of candidatesFor(each, open)) {
      const [best] = found
      if (best === undefined || problems.has(field)) continue
      asked.set(field, { field, columns: found })
      const choices = found.map(
        (match) => `${match.letters} “${quoted(match.header)}” (${valuesOf(each, match)})`
      )
      const { name } = columnOf(field)
      const facts = { column: `the ${name.toLowerCase()}`, name, choices: listedChoices(choices) }
      problems.set(field, problem('column-asked', addressOf(each, best), facts))
    }
    const bases = crownBases(each)
    const [base] = bases
    if (base !== undefined && !problems.has('crownBase')) {
      asked.set('crownBase', { field: 'crownBase', columns: bases })
      const choices = bases.map(
        (match) => `${match.letters} “${quoted(match.header)}” (${valuesOf(each, match)})`
      )
      problems.set(
        'crownBase',
        problem('crown-base-asked', addressOf(each, base), { choices: listedChoices(choices) })
      )
    }
    const crown = problems.has('crownBase') ? null : crownAsked(each)
    if (crown !== null) {
      asked.set('crownBase', { field: 'crownBase', columns: crown.columns })
      problems.set('crownBase', crown.problem)
    }
    for (const field of open) {
      const columns = asked.has(field) ? [] : othersIn(each)
      if (columns.length > 0) asked.set(field, { field, columns })
    }
  }
  return { asked: [...asked.values()], problems }
}
