import { addressIn, isBlank, quoted, type Cell, type CellBlock } from '../../shared/cells'
import { groupProblems } from '../../shared/groupProblems'
import { problem, type Problem } from '../../shared/problems'
import {
  detailEntry,
  detailHeaders,
  detailNames,
  inventoryRow,
  noDetails,
  type DetailName,
  type JobDetails
} from './detailsBook'
import { readDetail, wantedOf } from './readDetail'

/** What a Job details sheet says, where it says so, and what is wrong with it. */
export interface ReadDetails {
  /** Without the logo, which is a picture. */
  readonly details: JobDetails
  /** The name of the file of the logo, or an empty text. */
  readonly logoFile: string
  /** The address of each value that was read. */
  readonly cells: ReadonlyMap<DetailName, string>
  readonly problems: readonly Problem[]
}

const plain = (cell: Cell | undefined): string =>
  String(cell ?? '')
    .trim()
    .toLowerCase()

interface Found {
  readonly name: number
  readonly value: number
  readonly headerRow: number
}

function columnsOf({ rows }: CellBlock): Found | null {
  for (const [headerRow, row] of rows.entries()) {
    const name = row.findIndex((cell) => plain(cell) === detailHeaders.name.toLowerCase())
    const value = row.findIndex((cell) => plain(cell) === detailHeaders.value.toLowerCase())
    if (name >= 0 && value >= 0) return { name, value, headerRow }
  }
  return null
}

const byName = new Map<string, DetailName>(
  detailNames.map((name) => [detailEntry(name).name.toLowerCase(), name])
)

/** The sheets that the details are for, by their names as typed; empty where they are for every inventory. */
export function inventoriesOf(block: CellBlock): {
  readonly names: readonly string[]
  readonly cell: string
} {
  const columns = columnsOf(block)
  const at = (columns?.headerRow ?? 0) + 1
  const row = block.rows.findIndex(
    (cells, index) => index >= at && plain(cells[columns?.name ?? 0]) === inventoryRow.toLowerCase()
  )
  if (columns === null || row < 0) return { names: [], cell: addressIn(block, 0, 0) }
  const typed = String(block.rows[row]?.[columns.value] ?? '').trim()
  const cell = addressIn(block, row, columns.value)
  return { names: typed === '' ? [] : [typed, ...typed.split(';').map((name) => name.trim())], cell }
}

/** The rows of the details by their names; doubles and rows that are no detail are told. */
function rowsOf(block: CellBlock, { name: at, value, headerRow }: Found, problems: Problem[]) {
  const rows = new Map<DetailName, number>()
  block.rows.forEach((row, index) => {
    const called = plain(row[at])
    if (index <= headerRow || called === '' || called === inventoryRow.toLowerCase()) return
    const name = byName.get(called)
    const cell = addressIn(block, index, at)
    const first = name === undefined ? undefined : rows.get(name)
    if (name === undefined) {
      if (!isBlank(row[value])) problems.push(problem('detail-unknown', cell, { text: quoted(row[at]) }))
    } else if (first === undefined) rows.set(name, index)
    else {
      const other = addressIn(block, first, at)
      problems.push(problem('detail-twice', cell, { name: detailEntry(name).name, other }))
    }
  })
  return rows
}

/** The sheet with values in place of its own; a detail that it has no row for gets one. */
export function withDetails(block: CellBlock, values: ReadonlyMap<DetailName, Cell>): CellBlock {
  const columns = columnsOf(block)
  if (columns === null || values.size === 0) return block
  const rows = block.rows.map((row) => [...row])
  const known = rowsOf(block, columns, [])
  for (const [name, value] of values) {
    const row: Cell[] = rows[known.get(name) ?? -1] ?? []
    if (!known.has(name)) rows.push(row)
    row[columns.name] = detailEntry(name).name
    row[columns.value] = value
  }
  return { ...block, rows: rows.map((row) => Array.from(row, (cell) => cell ?? null)) }
}

/**
 * The details of a Job details sheet. Each is found by its name; what cannot be used is told with its address, and is blank:
 * the documents leave a line to fill by hand, or go by the plan.
 */
export function readDetails(block: CellBlock): ReadDetails {
  const columns = columnsOf(block)
  if (columns === null)
    return {
      details: noDetails,
      logoFile: '',
      cells: new Map(),
      problems: [problem('no-details', addressIn(block, 0, 0))]
    }
  const problems: Problem[] = []
  const details: Record<string, unknown> = { ...noDetails }
  const cells = new Map<DetailName, string>()
  let logoFile = ''
  for (const [name, row] of rowsOf(block, columns, problems)) {
    const typed = block.rows[row]?.[columns.value] ?? null
    if (isBlank(typed)) continue
    const cell = addressIn(block, row, columns.value)
    const value = readDetail(name, typed)
    const { name: said, kind } = detailEntry(name)
    cells.set(name, cell)
    if (value === null)
      problems.push(
        problem('detail-unusable', cell, { name: said, text: quoted(typed), wanted: wantedOf(kind) })
      )
    else if (name === 'logo') logoFile = String(value)
    else details[name] = value
  }
  return {
    details: details as unknown as JobDetails,
    logoFile,
    cells,
    problems: [...groupProblems(problems)]
  }
}
