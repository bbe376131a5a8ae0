import { quoted } from '../../../shared/cells'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../../shared/columns'
import { problem, type Problem } from '../../../shared/problems'
import { systems, unitNames, type UnitSystem } from '../../../shared/units'
import type { Confidence } from '../headers/assign'
import { namesUnit } from '../headers/columnValues'
import { readHeaderText } from '../headers/headerText'
import { likelyFields } from '../headers/likelihood'
import { unitSuits } from '../headers/unitSuits'
import type { ColumnMatch, ReadingChoices } from '../inventory'
import { lengthOf } from '../lengthOf'
import { answersOf, type AnswerFor } from './answers'
import type { TableColumn } from './headerRows'
import type { LabeledValue } from './formRows'
import { cellIn, lettersOf, ownLetters } from './sheetCells'
import type { SheetTable } from './sheetTables'
import { isMetric, systemOf } from './systemOf'

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
  const asked = new Set<string>()
  const matched = open.map(({ table, matches, labeled }): MatchedTable => {
    const { names } = table.header
    const given = new Set(matches.map(({ field }) => field))
    const address = ({ column }: ColumnMatch): string => cellIn(table.sheet, names, column)
    // Only a length without a unit is told; the cells of all others need not be looked at.
    const isBare = ({ column, unit }: ColumnMatch, field: Field): boolean =>
      unit === null && isLength(field) && hasBareNumbers(table, column)
    const units = matches.map((match) => {
      if (match.field === null) return match
      // The same header on every sheet, and in every group, is asked about once.
      const key = `${match.field} ${match.confidence} ${quoted(match.header).replace(/\d+/g, '')}`
      const first = !asked.has(key) && !isRepeated(table, match.column)
      asked.add(key)
      if (first && match.confidence === 'likely')
        problems.push(question(match, match.field, given, address(match)))
      return withUnit(
        match,
        match.field,
        system,
        first && isBare(match, match.field) ? address(match) : null,
        problems
      )
    })
    noteMixedDiameters(units, address, problems)
    const forms = labeled.map((match) =>
      match.field === null ? match : withUnit(match, match.field, system, null, problems)
    )
    return { table, matches: units, labeled: forms }
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

function matchOf(
  { sheet, header: { names } }: SheetTable,
  { column, name, group, meaning }: TableColumn,
  taken: ReadonlySet<Field | null>,
  answerFor: AnswerFor
): ColumnMatch {
  const letters = lettersOf(sheet, names, column)
  const header = group === '' || name === '' ? group + name : `${group} ${name}`
  const answer = answerFor(sheet.name, ownLetters(sheet, letters), name, header)
  const chosen = answer?.field
  const answered = chosen !== undefined
  // Surely nothing: its cells cannot be what its header says.
  const isNothing = meaning.unused !== null || (meaning.field === null && meaning.confidence === 'sure')
  const mayBePlain = meaning.field === null && !answered && !isNothing && group === ''
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
function isLength(field: Field): boolean {
  const kind = lengthOf(field)
  return kind === 'diameter' || kind === 'height'
}

/** Whether a column holds numbers whose cells do not name their unit themselves; a column without numbers counts as one. */
function hasBareNumbers({ sheet, rows }: SheetTable, column: number): boolean {
  let named = 0
  for (const row of rows) {
    const cell = sheet.rows[row]?.[column]
    if (typeof cell === 'number') return true
    if (namesUnit(cell)) named++
    else if (typeof cell === 'string' && /\d/.test(cell)) return true
  }
  return named === 0
}

/** A length without a unit is read in that of the system, which is reported where there is a cell to report it at. */
function withUnit(
  match: ColumnMatch,
  field: Field,
  system: UnitSystem,
  cell: string | null,
  problems: Problem[]
): ColumnMatch {
  const kind = lengthOf(field)
  if (kind === null) return { ...match, unit: null }
  if (match.unit !== null) return match
  const unit = kind === 'height' ? systems[system].height : systems[system].diameter
  if (kind !== 'growth' && cell !== null)
    problems.push(problem('no-unit', cell, { text: quoted(match.header), unit: unitNames[unit] }))
  return { ...match, unit }
}

/** Inches beside centimeters among the diameters is more often a slip than a wish. */
function noteMixedDiameters(
  matches: readonly ColumnMatch[],
  address: (match: ColumnMatch) => string,
  problems: Problem[]
): void {
  const diameters = matches.filter((match) => match.field !== null && lengthOf(match.field) === 'diameter')
  const first = diameters[0]
  if (first === undefined) return
  for (const match of diameters.slice(1)) {
    if (isMetric(match.unit) === isMetric(first.unit)) continue
    const facts = {
      column: quoted(match.header),
      unit: unitNames[match.unit ?? 'mm'],
      other: unitNames[first.unit ?? 'mm']
    }
    problems.push(problem('mixed-diameter-units', address(match), facts))
  }
}
