import { addressIn, isBlank, quoted, type Cell, type CellBlock } from '../../shared/cells'
import { styleOf } from '../../shared/numbers'
import { problem, type Problem } from '../../shared/problems'
import type { UnitSystem } from '../../shared/units'
import { rateEntry, rateNames, startValues, type RateName, type RateValues } from './rateBook'
import { rateKinds } from './rateKinds'
import { readRate, shownRate } from './readRate'
import { ratesFrom, type Rates } from './rates'

/** The headers under which the rates stand, wherever their columns are. */
export const rateHeaders = {
  name: 'Rate',
  value: 'Value',
  unit: 'Unit',
  range: 'Allowed',
  checked: 'Mine',
  note: 'Note'
} as const

interface Columns {
  headerRow: number
  name: number
  value: number
  unit: number
  checked: number
}

const plain = (cell: Cell | undefined) =>
  String(cell ?? '')
    .trim()
    .toLowerCase()

function columnsOf(block: CellBlock): Columns | null {
  for (const [headerRow, row] of block.rows.entries()) {
    const at = (header: string) => row.findIndex((cell) => plain(cell) === header.toLowerCase())
    const [name, value, unit] = [at(rateHeaders.name), at(rateHeaders.value), at(rateHeaders.unit)]
    if (name >= 0 && value >= 0 && unit >= 0)
      return { headerRow, name, value, unit, checked: at(rateHeaders.checked) }
  }
  return null
}

const byName = new Map<string, RateName>(rateNames.map((name) => [rateEntry(name).name.toLowerCase(), name]))

const groups = new Set(rateNames.map((name) => rateEntry(name).group.toLowerCase()))

/** The row of every rate within the block; doubles and unknown rows become problems. */
function rowsOf(block: CellBlock, columns: Columns, problems: Problem[]): Map<RateName, number> {
  const rows = new Map<RateName, number>()
  block.rows.forEach((row, index) => {
    if (index <= columns.headerRow || isBlank(row[columns.name])) return
    const rate = byName.get(plain(row[columns.name]))
    const cell = addressIn(block, index, columns.name)
    if (rate === undefined) {
      const heading = groups.has(plain(row[columns.name])) || isBlank(row[columns.value])
      if (!heading) problems.push(problem('rate-unknown', cell, { text: quoted(row[columns.name]) }))
      return
    }
    const first = rows.get(rate)
    if (first === undefined) rows.set(rate, index)
    else {
      const other = addressIn(block, first, columns.name)
      problems.push(problem('rate-twice', cell, { name: rateEntry(rate).name, other }))
    }
  })
  return rows
}

/** Rates whose unit tells the system, in inches and feet or in centimeters and meters. */
const measured = rateNames.filter((name) => {
  const { unit } = rateEntry(name)
  return unit['in-ft'] !== unit['cm-m']
})

/** The system that most of the units on the sheet are of; `assumed` where they tell nothing. */
function systemOf(
  block: CellBlock,
  rows: Map<RateName, number>,
  { unit }: Columns,
  assumed: UnitSystem
): UnitSystem {
  let lead = 0
  for (const name of measured) {
    const text = plain(block.rows[rows.get(name) ?? -1]?.[unit])
    const units = rateEntry(name).unit
    if (text === units['in-ft'].toLowerCase()) lead += 1
    if (text === units['cm-m'].toLowerCase()) lead -= 1
  }
  if (lead === 0) return assumed
  return lead > 0 ? 'in-ft' : 'cm-m'
}

function checkUnits(
  block: CellBlock,
  rows: Map<RateName, number>,
  { unit }: Columns,
  system: UnitSystem,
  problems: Problem[]
): void {
  for (const name of measured) {
    const row = rows.get(name)
    const { unit: units, name: said } = rateEntry(name)
    const text = plain(block.rows[row ?? -1]?.[unit])
    if (row === undefined || text === units[system].toLowerCase()) continue
    const facts = { name: said, text: quoted(block.rows[row]?.[unit]), value: units[system] }
    problems.push(problem('rate-unit', addressIn(block, row, unit), facts))
  }
}

/** The limits of the classes of cut and of the height bands, each in the order in which they have to rise. */
const ladders: readonly (readonly RateName[])[] = (['upToMillimeters', 'upToMeters'] as const).map((limit) =>
  rateNames.filter((name) => rateEntry(name).place?.[2] === limit)
)

/** Limits that do not rise all return to their start values, as nothing tells which of them is wrong. */
function checkOrder(
  block: CellBlock,
  rows: Map<RateName, number>,
  { value }: Columns,
  values: RateValues,
  start: RateValues,
  problems: Problem[]
): void {
  for (const ladder of ladders) {
    const wrong = ladder.find(
      (name, at) => at > 0 && Number(values[name]) <= Number(values[ladder[at - 1] ?? name])
    )
    if (wrong === undefined) continue
    const cell = addressIn(block, rows.get(wrong) ?? 0, value)
    const facts = {
      name: rateEntry(wrong).name,
      text: values[wrong],
      value: ladder.map((name) => start[name]).join(', ')
    }
    problems.push(problem('rate-order', cell, facts))
    for (const name of ladder) values[name] = start[name]
  }
}

/** A margin is a share of the price and stays below 1; a markup has no such limit. */
function checkMargin(
  block: CellBlock,
  rows: Map<RateName, number>,
  { value }: Columns,
  values: RateValues,
  start: RateValues,
  problems: Problem[]
): void {
  if (values.profitKind !== 'margin' || Number(values.profitRate) < 1) return
  const row = rows.get('profitRate')
  const cell = row === undefined ? '' : addressIn(block, row, value)
  const text = shownRate('profitRate', values.profitRate)
  problems.push(
    problem('rate-margin-whole', cell, { text, value: shownRate('profitRate', start.profitRate) })
  )
  values.profitRate = start.profitRate
}

/**
 * The rates of a Rates sheet. Each is found by its name; a value that cannot be used becomes a problem with its address
 * and a remedy, and the invented start value stands in for that one alone. A rate counts as the user's own where it
 * differs from the start value or is marked as theirs. `assumed` is the unit system where no unit on the sheet tells it.
 */
export function readRates(
  block: CellBlock,
  assumed: UnitSystem = 'in-ft'
): { rates: Rates; problems: Problem[] } {
  const problems: Problem[] = []
  const columns = columnsOf(block)
  if (columns === null) {
    const rates = ratesFrom(startValues(assumed), assumed, rateNames)
    return { rates, problems: [problem('no-rates', addressIn(block, 0, 0))] }
  }
  const rows = rowsOf(block, columns, problems)
  const system = systemOf(block, rows, columns, assumed)
  checkUnits(block, rows, columns, system, problems)
  const start = startValues(system)
  const values = { ...start }
  const confirmed = new Set<RateName>()
  const style = styleOf(block.rows.map((row) => row[columns.value]))
  for (const name of rateNames) {
    const row = rows.get(name)
    const at = row ?? columns.headerRow
    const address = addressIn(block, at, columns.value)
    const cell = row === undefined ? null : (block.rows[row]?.[columns.value] ?? null)
    const read = readRate(name, cell, address, start[name], style)
    if (typeof read === 'string') values[name] = read
    else problems.push(read)
    const mark = columns.checked < 0 ? null : block.rows[row ?? -1]?.[columns.checked]
    if (typeof read === 'string' && /^(yes|y|x|true|✓|1)$/.test(plain(mark))) confirmed.add(name)
  }
  const typed = { ...values }
  checkOrder(block, rows, columns, values, start, problems)
  checkMargin(block, rows, columns, values, start, problems)
  const own = (name: RateName) => confirmed.has(name) && values[name] === typed[name]
  const invented = rateNames.filter((name) => isStart(name, values, start) && !own(name))
  return { rates: ratesFrom(values, system, invented), problems }
}

function isStart(name: RateName, values: RateValues, start: RateValues): boolean {
  if (rateKinds[rateEntry(name).kind].holds === 'word') return values[name] === start[name]
  return Number(values[name]) === Number(start[name])
}
