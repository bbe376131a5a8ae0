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
  const matches = headers.map((header, column) => matchHeader(header, column, choices))
  const system = choices.system ?? systemOf(matches)
  const seen = new Map<Field, ColumnMatch>()
  for (const match of matches) {
    if (match.field === null) {
      if (match.header !== '')
        problems.push(
          problem('column-unknown', addressIn(block, 0, match.column), { text: quoted(match.header) })
        )
      continue
    }
    if (seen.has(match.field)) {
      const column = columnOf(match.field).name
      problems.push(problem('column-twice', addressIn(block, 0, match.column), { column }))
      match.field = null
      continue
    }
    seen.set(match.field, match)
    assumeUnit(match, match.field, system, block, problems)
  }
  noteMixedDiameters([...seen.values()], block, problems)
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

function assumeUnit(
  match: ColumnMatch,
  field: Field,
  system: UnitSystem,
  block: CellBlock,
  problems: Problem[]
): void {
  const kind = columnOf(field).measure.kind
  const length = kind === 'diameter' || kind === 'height' || kind === 'growth'
  if (!length) {
    match.unit = null
    return
  }
  if (match.unit !== null) return
  match.unit = kind === 'height' ? systems[system].height : systems[system].diameter
  if (kind === 'growth') return
  const facts = { text: quoted(match.header), unit: unitNames[match.unit] }
  problems.push(problem('no-unit', addressIn(block, 0, match.column), facts))
}

/** Inches beside centimetres among the diameters is more often a slip than a wish. */
function noteMixedDiameters(matches: readonly ColumnMatch[], block: CellBlock, problems: Problem[]): void {
  const diameters = matches.filter(
    (match) => match.field !== null && columnOf(match.field).measure.kind === 'diameter'
  )
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
