import { addressIn, isBlank, quoted, type Cell, type CellBlock } from '../../shared/cells'
import { columnOf, fieldFromWords, readHeader, type Field } from '../../shared/columns'
import { problem, type Problem } from '../../shared/problems'
import { systems, unitNames, type LengthUnit, type UnitSystem } from '../../shared/units'
import type { ColumnMatch, ReadingChoices } from './inventory'

/** Matches each header with a field of the inventory and its unit; what is uncertain becomes a problem. */
export function matchColumns(
  block: CellBlock,
  choices: ReadingChoices,
  problems: Problem[]
): { matches: ColumnMatch[]; system: UnitSystem } {
  const headers = block.rows[0] ?? []
  const found = headers.map((header, column) => matchHeader(header, column, choices))
  const system = choices.system ?? systemOf(found)
  const seen = new Set<Field>()
  const matches = found.map((match): ColumnMatch => {
    const { field, header, column } = match
    const cell = addressIn(block, 0, column)
    if (field === null) {
      if (header !== '') problems.push(problem('column-unknown', cell, { text: quoted(header) }))
      return match
    }
    if (seen.has(field)) {
      problems.push(problem('column-twice', cell, { column: columnOf(field).name }))
      return { ...match, field: null }
    }
    seen.add(field)
    return withUnit(match, field, system, cell, problems)
  })
  noteMixedDiameters(matches, block, problems)
  return { matches, system }
}

function matchHeader(header: Cell | undefined, column: number, choices: ReadingChoices): ColumnMatch {
  const text = isBlank(header) ? '' : String(header).trim()
  const read = readHeader(text)
  const chosen = choices.fields?.[column]
  const unit = choices.units?.[column] ?? read.unit
  return {
    column,
    header: text,
    field: chosen !== undefined ? chosen : text === '' ? null : fieldFromWords(read.words),
    unit,
    unitNamed: unit !== null,
    percent: read.percent
  }
}

/** Metric as soon as one header names a metric unit, otherwise inches and feet. */
function systemOf(matches: readonly ColumnMatch[]): UnitSystem {
  const named = matches.filter((match) => match.field !== null && match.unit !== null)
  const metric = named.filter((match) => match.unit === 'mm' || match.unit === 'cm' || match.unit === 'm')
  return metric.length > named.length - metric.length ? 'cm-m' : 'in-ft'
}

/** What the numbers of a field are measured in, or null where they are no lengths. */
export function lengthOf(field: Field): 'diameter' | 'height' | 'growth' | null {
  const { kind } = columnOf(field).reads
  if (kind === 'diameter' || kind === 'stems') return 'diameter'
  if (kind === 'height' || kind === 'positive height') return 'height'
  return kind === 'growth' ? 'growth' : null
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
