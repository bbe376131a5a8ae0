import { columnOf, type Field } from '../../../shared/columns'
import { convertLength, type LengthUnit } from '../../../shared/units'
import { columnValues, type ColumnValues } from '../headers/columnValues'
import { mayBeForeign, type Meaning } from '../headers/dictionary'
import { fitOf } from '../headers/fit'
import { readHeaderText, type HeaderText } from '../headers/headerText'
import { likelihoods } from '../headers/likelihood'
import { unitSuits } from '../headers/unitSuits'
import type { ColumnMatch } from '../inventory'
import type { MatchedTable } from './matchTables'

/** What no limb can be planned without. */
export type Needed = 'diameter' | 'stem' | 'origin' | 'tip'

/** Candidates that a question names, and rows looked at. */
const named = 3
const looked = 200

/** How well values and unit have to fit a field, and how numeric they have to be. House judgment. */
const fits = 0.8
const numeric = 0.8
/** From which score words say plainly what else a column is. House judgment. */
const plainly = 0.75
/** Share of the rows in which a column has to suit those that are known. House judgment. */
const mostly = 0.8

/** A word that names or dates a thing, and may mean nothing else. */
const naming = new Set<Meaning>(['id', 'tag', 'date', 'noise'])

interface Column {
  readonly match: ColumnMatch
  readonly values: ColumnValues
  /** It looked like a second reading of the limb, and is none. */
  readonly secondOfTwo: boolean
  /** What other columns give. */
  readonly taken: ReadonlySet<Field | null>
}

/** How a needed measurement goes with another: at least, and at most, so many times as much. House judgment. */
const against: readonly (readonly [Needed, Needed, least: number, most: number])[] = [
  ['tip', 'origin', 1, Infinity],
  ['origin', 'tip', 0, 1],
  ['stem', 'diameter', 0.7, Infinity],
  ['diameter', 'stem', 0, 1.4]
]

function suits(field: Needed, one: Column, known: ReadonlyMap<Needed, Column>): boolean {
  return against.every(([own, other, least, most]) => {
    const column = own === field ? known.get(other) : undefined
    if (column === undefined) return true
    const unit: LengthUnit = column.match.unit ?? 'mm'
    let both = 0
    let inside = 0
    one.values.numbers.forEach((number, row) => {
      const there = column.values.numbers[row] ?? null
      if (number === null || there === null) return
      const own = convertLength(number, one.match.unit ?? unit, unit)
      both++
      if (own >= there * least && own <= there * most) inside++
    })
    return inside >= both * mostly
  })
}

const moment = /\d:\d\d|\d{4}[-/.]\d|\d[-/.]\d{1,2}[-/.]\d/
const finePlace = /[.,]\d{4,}$/

/** Row numbers, time stamps, coordinates and a column of nothing but 1 measure nothing. */
function measuresNothing({ numbers, texts, filled, integers, low, high }: ColumnValues): boolean {
  if (filled > 1 && low === 1 && high === 1) return true
  const share = (pattern: RegExp): number => texts.filter((text) => pattern.test(text)).length / filled
  if (share(moment) > 0.5 || share(finePlace) > 0.5) return true
  const counted = numbers.filter((each) => each !== null)
  return (
    integers === 1 &&
    counted.length > 1 &&
    counted.every((each, at) => at === 0 || each === (counted[at - 1] ?? 0) + 1)
  )
}

/** Whether words say that a column is something else that no other column gives. */
function saysElse(text: HeaderText, field: Needed, { secondOfTwo, taken }: Column): boolean {
  const { words } = text
  if (words.some(mayBeForeign)) return true
  const names = words.filter(
    ({ meanings }) => meanings.length > 0 && meanings.every((each) => naming.has(each))
  )
  if (names.some(({ meanings }) => !meanings.includes('noise'))) return true
  if (secondOfTwo) return false
  const best = likelihoods(text)
  const own = best.find((each) => each.field === field)?.score ?? 0
  return best.some(
    (each) => each.field !== field && !taken.has(each.field) && each.score >= plainly && each.score > own
  )
}

function scoreOf(field: Needed, column: Column, known: ReadonlyMap<Needed, Column>): number {
  const { match, values } = column
  const text = readHeaderText(match.header)
  // A header that says plainly what else it is, is no candidate; one that says nothing is.
  if (saysElse(text, field, column) || measuresNothing(values) || !suits(field, column, known)) return 0
  const fit = fitOf(values, field, match.unit) * unitSuits(text, field)
  if (fit < fits) return 0
  const words = likelihoods(text).find((likely) => likely.field === field)?.score ?? 0
  return fit * (0.5 + words)
}

const partner = { diameter: 'stem', stem: 'diameter', origin: 'tip', tip: 'origin' } as const

/** Columns without a use that may hold what is wanting, best first; each for what it fits best. */
export function candidatesFor(
  { table, matches }: MatchedTable,
  open: readonly Needed[]
): Map<Needed, readonly ColumnMatch[]> {
  const rows = table.rows.slice(0, looked)
  const second = table.header.columns.find(({ meaning }) => meaning.unused === 'no second reading')
  const taken = new Set(matches.map(({ field }) => field))
  const read = (match: ColumnMatch): Column => ({
    match,
    taken,
    secondOfTwo: match.column === second?.column,
    values: columnValues(rows.map((row) => table.sheet.rows[row]?.[match.column]))
  })
  const known = new Map(
    (['diameter', 'stem', 'origin', 'tip'] as const).flatMap((field) => {
      const match = matches.find((each) => each.field === field)
      return match === undefined ? [] : [[field, read(match)] as const]
    })
  )
  const columns = (open.length === 0 ? [] : matches)
    .filter((match) => match.confidence !== 'chosen' && match.header !== '' && isFree(match, open))
    .map(read)
    .filter(({ values }) => values.filled > 0 && values.numeric >= numeric)
  const scored = columns.map((column): Scored => {
    const scores = open.map((field) => scoreOf(field, column, known))
    return { match: column.match, median: column.values.median ?? 0, scores, best: Math.max(...scores) }
  })
  return new Map(open.map((field, at) => [field, ranked(scored, field, at, open.includes(partner[field]))]))
}

/** A column without a use, or one of a limb that may as well be what is wanting. */
function isFree({ field, runnerUp }: ColumnMatch, open: readonly Needed[]): boolean {
  if (field === null) return true
  const isNeeded = (['diameter', 'stem', 'origin', 'tip'] as readonly Field[]).includes(field)
  return (
    runnerUp !== null && !isNeeded && columnOf(field).of === 'limb' && open.some((each) => each === runnerUp)
  )
}

interface Scored {
  readonly match: ColumnMatch
  readonly median: number
  readonly scores: readonly number[]
  readonly best: number
}

/** The candidates of one field, those that fit no other better. */
function ranked(scored: readonly Scored[], field: Needed, at: number, inPairs: boolean): ColumnMatch[] {
  const score = (each: Scored): number => each.scores[at] ?? 0
  const all = scored.filter((each) => score(each) > 0)
  const own = all.filter((each) => score(each) === each.best)
  // A tip is above its origin, and a stem mostly thicker than its limb: between equals the size tells.
  const sign = field === 'origin' || field === 'diameter' ? 1 : -1
  const list = [...(own.length > 0 ? own : all)].sort(
    (a, b) => score(b) - score(a) || sign * (a.median - b.median)
  )
  const [first] = list
  const equals = list.filter((each) => first !== undefined && score(each) === score(first))
  const wrongEnd = inPairs && equals.length > 1 ? equals.at(-1) : undefined
  return list
    .filter((each) => each !== wrongEnd)
    .slice(0, named)
    .map(({ match }) => match)
}
