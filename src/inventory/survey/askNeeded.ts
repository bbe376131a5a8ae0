import { cellAddress, isBlank, quoted } from '../../../shared/cells'
import { columnOf, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { listedChoices } from '../../../shared/words/lists'
import { columnValues } from '../headers/columnValues'
import type { Meaning } from '../headers/dictionary'
import { fitOf } from '../headers/fit'
import { likelihoods } from '../headers/likelihood'
import { readHeaderText } from '../headers/headerText'
import { foreignNotions } from '../headers/words/notion'
import type { AskedField, ColumnMatch } from '../inventory'
import type { MatchedTable } from './matchTables'
import { kindOfTable } from './tableKind'

/** Candidates and sample values that a question names. */
const candidates = 3
const samples = 3
const looked = 200

/** How well values have to fit a field for its column to be asked about (house judgment). */
const fits = 0.6

const alien = new Set<Meaning>(foreignNotions)

interface Candidate {
  readonly match: ColumnMatch
  readonly score: number
}

/** Columns without a use that may hold the field, best first. */
function candidatesFor({ table, matches }: MatchedTable, field: Field): Candidate[] {
  return matches
    .flatMap((match): Candidate[] => {
      if (match.field !== null || match.confidence === 'chosen' || match.header === '') return []
      const values = columnValues(
        table.rows.slice(0, looked).map((row) => table.sheet.rows[row]?.[match.column])
      )
      if (values.filled === 0 || values.numeric < 0.8) return []
      const fit = fitOf(values, field, match.unit)
      const text = readHeaderText(match.header)
      const words = likelihoods(text).find((likely) => likely.field === field)?.score ?? 0
      // A header that says plainly what else it is, is no candidate; one that says nothing is.
      const isOther = text.words.some(({ meanings }) => meanings.some((each) => alien.has(each)))
      if (fit < fits || isOther) return []
      return [{ match, score: fit * (0.5 + words) }]
    })
    .sort((a, b) => b.score - a.score)
    .slice(0, candidates)
}

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

function described({ table }: MatchedTable, { match }: Candidate): string {
  const values = table.rows
    .map((row) => table.sheet.rows[row]?.[match.column])
    .filter((cell) => !isBlank(cell))
    .slice(0, samples)
    .map((cell) => quoted(cell))
  return `${match.letters} “${quoted(match.header)}” (${values.join('; ')})`
}

function missing({ table, matches }: MatchedTable): Field[] {
  if (kindOfTable(table) === 'trees') return []
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

/** Measurements that no column gives though a column without a use may hold them: asked once each. */
export function askNeeded(matched: readonly MatchedTable[]): Needed {
  const asked = new Map<Field, AskedField>()
  const problems = new Map<Field, Problem>()
  for (const each of matched)
    for (const field of missing(each)) {
      const found = candidatesFor(each, field)
      const [best] = found
      if (best === undefined) {
        const columns = othersIn(each)
        if (columns.length > 0 && !asked.has(field)) asked.set(field, { field, columns })
        continue
      }
      if (problems.has(field)) continue
      asked.set(field, { field, columns: found.map(({ match }) => match) })
      const { sheet, header } = each.table
      const cell = cellAddress(sheet.top + header.names, sheet.left + best.match.column, sheet.name)
      const facts = {
        column: `the ${columnOf(field).name.toLowerCase()}`,
        name: columnOf(field).name,
        choices: listedChoices(found.map((candidate) => described(each, candidate)))
      }
      problems.set(field, problem('column-asked', cell, facts))
    }
  return { asked: [...asked.values()], problems }
}
