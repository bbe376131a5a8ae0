import { isBlank, quoted } from '../../../shared/cells'
import { readChoice } from '../../../shared/choices'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import type { UnitSystem } from '../../../shared/units'
import type { Confidence } from '../headers/assign'
import { readHeaderText } from '../headers/headerText'
import { likelyFields } from '../headers/likelihood'
import { unitSuits } from '../headers/unitSuits'
import type { ColumnMatch, ReadingChoices } from '../inventory'
import { lengthOf } from '../lengthOf'
import { answersOf, type AnswerFor } from './answers'
import { hasBareNumbers } from './cellUnits'
import { linesBeside } from './clearanceAside'
import { ColumnUnits, mixedUnits } from './columnUnits'
import type { TableColumn } from './headerRows'
import type { LabeledValue } from './formRows'
import { cellIn, lettersOf, ownLetters } from './sheetCells'
import type { SheetTable } from './sheetTables'
import { systemOf } from './systemOf'

/** A table with what each of its columns gives, and what the labels above it give. */
export interface MatchedTable {
  readonly table: SheetTable
  readonly matches: readonly ColumnMatch[]
  /** In the order of the labels; each takes its value from the column where that stands. */
  readonly labeled: readonly ColumnMatch[]
}

/** What the columns of all tables give, in which unit; what is uncertain becomes a problem at the header. */
export function matchTables(
  tables: readonly SheetTable[],
  choices: ReadingChoices,
  problems: Problem[]
): { matched: MatchedTable[]; system: UnitSystem } {
  const answerFor = answersOf(choices)
  const open = tables.map((table) => ({
    table,
    matches: columnsOf(table, answerFor),
    labeled: table.labeled.map((label) => labelOf(table, label))
  }))
  const system = choices.system ?? systemOf(open)
  const units = new ColumnUnits(open, system, choices.system !== undefined)
  const asked = new Set<string>()
  const matched = open.map(({ table, matches, labeled }): MatchedTable => {
    const { names } = table.header
    const given = new Set(matches.map(({ field }) => field))
    const address = ({ column }: ColumnMatch): string => cellIn(table.sheet, names, column)
    const all = { table, matches, labeled }
    const measured = matches.map((match) => {
      if (match.field === null) return match
      // The same header on every sheet, and in every group, is asked about once.
      const key = `${match.field} ${match.confidence} ${quoted(match.header).replace(/\d+/g, '')}`
      const first = !asked.has(key) && !isRepeated(table, match.column)
      asked.add(key)
      if (first && match.confidence === 'likely')
        problems.push(question(match, match.field, given, address(match)))
      const unit = units.of(all, match)
      // Only a length without a unit is told; the cells of all others need not be looked at.
      if (
        first &&
        match.unit === null &&
        unit !== null &&
        isTold(match.field) &&
        hasBareNumbers(all, match.column)
      )
        problems.push(units.told(all, match, unit, address(match)))
      return { ...match, unit }
    })
    problems.push(...mixedUnits(measured, address), ...clearancesAside(table, measured, address))
    const forms = labeled.map((match) => ({ ...match, unit: units.of(all, match) }))
    return { table, matches: measured, labeled: forms }
  })
  return { matched, system }
}

/** The column belongs to a group after the first. */
function isRepeated({ header }: SheetTable, column: number): boolean {
  return header.groups?.groups.slice(1).some(({ columns }) => columns.includes(column)) === true
}

/** What every column means: as a person chose it, or as its header and the cells below it say together. */
function columnsOf(table: SheetTable, answerFor: AnswerFor): ColumnMatch[] {
  const { columns } = table.header
  const taken = new Set(columns.map(({ meaning }) => meaning.field))
  return columns.map((column) => matchOf(table, column, taken, answerFor))
}

/**
 * A choice that holds up its rows where a word is unknown, in a column that is only likely it: where none of its words is known,
 * the column is another one.
 */
function isOtherChoice({ sheet, rows }: SheetTable, { column, meaning }: TableColumn): boolean {
  const { field, confidence } = meaning
  if (field === null || confidence !== 'likely') return false
  const { kind, choice, unread } = columnOf(field).reads
  if (kind !== 'choice' || choice === undefined || unread !== 'row') return false
  const texts = rows.flatMap((row) => {
    const cell = sheet.rows[row]?.[column]
    return typeof cell === 'string' && !isBlank(cell) ? [cell] : []
  })
  return texts.length > 0 && texts.every((text) => readChoice(choice, text) === null)
}

function matchOf(
  table: SheetTable,
  { column, name, group, meaning: meant }: TableColumn,
  taken: ReadonlySet<Field | null>,
  answerFor: AnswerFor
): ColumnMatch {
  const { sheet } = table
  const { names } = table.header
  const own = { column, name, group, title: '', meaning: meant }
  const isOther =
    isOtherChoice(table, own) || (meant.field === 'clearance' && linesBeside(table.header, own) !== null)
  const meaning = isOther ? { ...meant, field: null, runnerUp: meant.field } : meant
  const letters = lettersOf(sheet, names, column)
  const header = group === '' || name === '' ? group + name : `${group} ${name}`
  const answer = answerFor(sheet.name, ownLetters(sheet, letters), name, header)
  const chosen = answer?.field
  const answered = chosen !== undefined
  // Surely nothing: its cells cannot be what its header says.
  const isNothing = meaning.unused !== null || (meaning.field === null && meaning.confidence === 'sure')
  const mayBePlain = meaning.field === null && !answered && !isNothing && !isOther && group === ''
  const plain = mayBePlain ? plainField(name) : null
  const read = plain === null || taken.has(plain) ? meaning.field : plain
  const unit = answer?.unit ?? meaning.unit
  return {
    sheet: sheet.name,
    letters,
    column,
    header,
    field: answered ? chosen : read,
    unit,
    unitNamed: unit !== null,
    percent: meaning.text.percent,
    girth: meaning.girth,
    confidence: answered ? 'chosen' : confidenceOf(meaning.confidence, meaning.field, read),
    runnerUp: meaning.runnerUp === read ? null : meaning.runnerUp
  }
}

/**
 * The field that a header names in the dictionary's own words, even where the cells below it cannot be used: they are to be
 * reported, not passed over. Bare words of many meanings (type, status, side) name none.
 */
function plainField(header: string): Field | null {
  const field = header === '' ? null : fieldFromWords(readHeader(header).words)
  if (field === null || likelyFields(header)[0]?.standing === 'asked') return null
  return unitSuits(readHeaderText(header), field) < 0.5 ? null : field
}

function confidenceOf(known: Confidence, meant: Field | null, field: Field | null): Confidence {
  return meant === field ? known : 'sure'
}

function labelOf({ sheet }: SheetTable, { field, label, row, column }: LabeledValue): ColumnMatch {
  const text = readHeaderText(label)
  return {
    ...{ sheet: sheet.name, letters: lettersOf(sheet, row, column), column },
    ...{ header: label, field, unit: text.unit, unitNamed: text.unit !== null, percent: text.percent },
    ...{ girth: text.notions.has('girth') || text.notions.has('gbh'), confidence: 'sure', runnerUp: null }
  }
}

/** A column that is used, and asked about once. */
function question(
  { header, runnerUp }: ColumnMatch,
  field: Field,
  given: ReadonlySet<Field | null>,
  cell: string
): Problem {
  const isOpen = runnerUp !== null && !given.has(runnerUp)
  const other = isOpen ? columnOf(runnerUp).name : 'nothing the plan uses'
  const text = header === '' ? 'without a header' : quoted(header)
  return problem('column-likely', cell, { text, column: columnOf(field).name, other })
}

/** Whether the unit of a field is told: that of a growth is in its words, or a measured rate's. */
function isTold(field: Field): boolean {
  return lengthOf(field) !== 'growth'
}

/** A clearance beside columns about lines may be a distance from them: it is not used, and asked about. */
function clearancesAside(
  { header }: SheetTable,
  matches: readonly ColumnMatch[],
  address: (match: ColumnMatch) => string
): Problem[] {
  return header.columns.flatMap((column) => {
    const match = matches.find((each) => each.column === column.column)
    if (column.meaning.field !== 'clearance' || match?.field !== null || match.confidence === 'chosen')
      return []
    const beside = linesBeside(header, column)
    if (beside === null) return []
    const facts = { text: quoted(match.header), other: quoted(beside.name) }
    return [problem('clearance-aside', address(match), facts)]
  })
}
