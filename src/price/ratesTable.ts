import { addressIn, isBlank, quoted, type Cell, type CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import type { UnitSystem } from '../../shared/units'
import { rateEntry, rateNames, type RateName } from './rateBook'

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
  readonly headerRow: number
  readonly name: number
  readonly value: number
  readonly unit: number
  readonly checked: number
}

/** Where the rates of a sheet stand: its columns, and the row of every rate that it has. */
export interface RatesTable {
  readonly block: CellBlock
  readonly columns: Columns
  readonly rows: ReadonlyMap<RateName, number>
}

/** A cell's text without the case of its letters. */
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

/** The rates of a sheet by their rows, or null where no headers are found; doubles and unknown rows become problems. */
export function ratesTable(block: CellBlock, problems: Problem[]): RatesTable | null {
  const columns = columnsOf(block)
  return columns === null ? null : { block, columns, rows: rowsOf(block, columns, problems) }
}

/** The cell of a rate's value, and its address; the header's where the sheet has no such row. */
export function valueCell({ block, columns, rows }: RatesTable, name: RateName): [Cell, address: string] {
  const row = rows.get(name)
  const cell = row === undefined ? null : (block.rows[row]?.[columns.value] ?? null)
  return [cell, addressIn(block, row ?? columns.headerRow, columns.value)]
}

/** Whether the sheet marks a rate as the user's own. */
export function isMarked({ block, columns, rows }: RatesTable, name: RateName): boolean {
  const mark = columns.checked < 0 ? null : block.rows[rows.get(name) ?? -1]?.[columns.checked]
  return /^(yes|y|x|true|✓|1)$/.test(plain(mark))
}

/** Rates whose unit tells the system, in inches and feet or in centimeters and meters. */
const measured = rateNames.filter((name) => {
  const { unit } = rateEntry(name)
  return unit['in-ft'] !== unit['cm-m']
})

/** The system that most of the units on the sheet are of; `assumed` where they tell nothing. */
export function systemOf({ block, rows, columns: { unit } }: RatesTable, assumed: UnitSystem): UnitSystem {
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

/** Says of each rate whose unit is of the other system which one is taken. */
export function checkUnits(
  { block, rows, columns: { unit } }: RatesTable,
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
