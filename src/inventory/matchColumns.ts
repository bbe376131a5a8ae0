import { addressIn, isBlank, quoted, type CellBlock } from '../../shared/cells'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../shared/columns'
import { problem, type Problem } from '../../shared/problems'
import { systems, unitNames, type LengthUnit, type UnitSystem } from '../../shared/units'
import { assignColumns, type ColumnMeaning, type Confidence } from './headers/assign'
import { columnValues } from './headers/columnValues'
import { likelyFields } from './headers/likelihood'
import type { ColumnMatch, ReadingChoices } from './inventory'
import { lengthOf } from './lengthOf'

/** Rows below a header that are looked at to tell what a column means. */
const lookedAt = 200

/** Matches each header with a field of the inventory and its unit; what is uncertain becomes a problem. */
export function matchColumns(
  block: CellBlock,
  choices: ReadingChoices,
  problems: Problem[]
): { matches: ColumnMatch[]; system: UnitSystem } {
  const found = meaningsOf(block, choices)
  const system = choices.system ?? systemOf(found)
  const matches = found.map((match): ColumnMatch => {
    const { field, header, column } = match
    const cell = addressIn(block, 0, column)
    if (field === null) {
      if (header !== '') problems.push(whyUnused(match, found, cell))
      return match
    }
    if (match.confidence === 'likely') problems.push(question(match, field, cell))
    return withUnit(match, field, system, cell, problems)
  })
  noteMixedDiameters(matches, block, problems)
  return { matches, system }
}

/** What every column means: as a person chose it, or as its header and the cells below it say together. */
function meaningsOf(block: CellBlock, choices: ReadingChoices): ColumnMatch[] {
  const headers = (block.rows[0] ?? []).map((header) => (isBlank(header) ? '' : String(header).trim()))
  const below = block.rows.slice(1, lookedAt + 1)
  const meanings = assignColumns(
    headers.map((header, column) => ({
      header,
      unit: choices.units?.[column] ?? null,
      values: columnValues(below.map((row) => row[column]))
    }))
  )
  const taken = new Set(meanings.map(({ field }) => field))
  return headers.map((header, column) => {
    const meaning = meanings[column]
    const chosen = choices.fields?.[column]
    const plain = plainField(header)
    const read = meaning?.field ?? (plain === null || taken.has(plain) ? null : plain)
    const unit = choices.units?.[column] ?? meaning?.unit ?? null
    return {
      column,
      header,
      field: chosen === undefined ? read : chosen,
      unit,
      unitNamed: unit !== null,
      percent: meaning?.text.percent ?? false,
      girth: meaning?.girth ?? false,
      confidence: chosen === undefined ? confidenceOf(meaning, read) : 'chosen',
      runnerUp: meaning?.runnerUp ?? null
    }
  })
}

/**
 * The field that a header names in the dictionary's own words, even where the cells below it cannot be used: they are to be
 * reported, not passed over. Bare words of many meanings (type, status, side) name none.
 */
function plainField(header: string): Field | null {
  const field = header === '' ? null : fieldFromWords(readHeader(header).words)
  return field === null || likelyFields(header)[0]?.standing === 'asked' ? null : field
}

function confidenceOf(meaning: ColumnMeaning | undefined, field: Field | null): Confidence {
  return meaning === undefined || meaning.field === field ? (meaning?.confidence ?? 'unsure') : 'sure'
}

/** Why a column is not used: another gives the same, or nothing here means what it says. */
function whyUnused({ header }: ColumnMatch, all: readonly ColumnMatch[], cell: string): Problem {
  const words = fieldFromWords(readHeader(header).words)
  if (words !== null && all.some(({ field }) => field === words))
    return problem('column-twice', cell, { column: columnOf(words).name })
  return problem('column-unknown', cell, { text: quoted(header) })
}

/** A column that is used, and asked about once. */
function question({ header, runnerUp }: ColumnMatch, field: Field, cell: string): Problem {
  const other = runnerUp === null ? 'nothing the plan uses' : columnOf(runnerUp).name
  return problem('column-likely', cell, { text: quoted(header), column: columnOf(field).name, other })
}

/** Metric as soon as one header names a metric unit, otherwise inches and feet. */
function systemOf(matches: readonly ColumnMatch[]): UnitSystem {
  const named = matches.filter((match) => match.field !== null && match.unit !== null)
  const metric = named.filter((match) => match.unit === 'mm' || match.unit === 'cm' || match.unit === 'm')
  return metric.length > named.length - metric.length ? 'cm-m' : 'in-ft'
}

function withUnit(
  match: ColumnMatch,
  field: Field,
  system: UnitSystem,
  cell: string,
  problems: Problem[]
): ColumnMatch {
  const kind = lengthOf(field)
  if (kind === null) return { ...match, unit: null }
  if (match.unit !== null) return match
  const unit = kind === 'height' ? systems[system].height : systems[system].diameter
  if (kind !== 'growth')
    problems.push(problem('no-unit', cell, { text: quoted(match.header), unit: unitNames[unit] }))
  return { ...match, unit }
}

/** Inches beside centimeters among the diameters is more often a slip than a wish. */
function noteMixedDiameters(matches: readonly ColumnMatch[], block: CellBlock, problems: Problem[]): void {
  const diameters = matches.filter((match) => match.field !== null && lengthOf(match.field) === 'diameter')
  const metric = (unit: LengthUnit | null): boolean => unit === 'mm' || unit === 'cm' || unit === 'm'
  const first = diameters[0]
  if (first === undefined) return
  for (const match of diameters.slice(1)) {
    if (metric(match.unit) === metric(first.unit)) continue
    const facts = {
      column: quoted(match.header),
      unit: unitNames[match.unit ?? 'mm'],
      other: unitNames[first.unit ?? 'mm']
    }
    problems.push(problem('mixed-diameter-units', addressIn(block, 0, match.column), facts))
  }
}
