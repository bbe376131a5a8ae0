import { problem, type Problem } from '../../shared/problems'
import { listed } from '../../shared/words/lists'
import type { Inventory, OpenInventory, ReadingChoices } from './inventory'
import { inventoryParts, openParts, type OpenPart } from './openParts'
import { refuseRows, sortRows } from './readParts'
import type { SaidOfColumns } from './readLimb'
import { Plausibility, plausibility } from './plausible/plausible'
import { identifier, treesWithinLimbs } from './survey/identify'
import type { Identified, IdentifiedRow } from './survey/identity'
import { columnHeaded } from './survey/headerRows'
import { joinedRows, type JoinedRows } from './survey/joins'
import { otherList } from './survey/otherLists'
import { oneSurvey } from './survey/sameSurvey'
import { tellApart } from './survey/tellApart'
import { leaveNoTrees } from './survey/noTrees'
import { notListed } from './survey/notListed'
import { cellIn, type SheetCells } from './survey/sheetCells'
import { survey, type Survey } from './survey/survey'
import { haveNoMeasures } from './survey/tableKind'
import { tableAddress } from './survey/tableAddress'

/**
 * Reads the inventory that the sheets of a workbook hold: tables are found by their headers, joined and put together, and
 * every row is a limb, a tree, or reported. Nothing is dropped: what cannot be used stands in `problems` with its address,
 * and rows without a plan in `unplanned`.
 */
export function readSheets(sheets: readonly SheetCells[], choices: ReadingChoices = {}): Inventory {
  const read = beginReading(sheets, choices)
  if ('stop' in read) return read.stop
  const { inventory, parts, said, rows } = read
  sortRows(inventory, parts, said, rows)
  inventory.problems.push(...remarksOn(parts), ...plausibility(inventory))
  return inventory
}

/**
 * Reads sheets in parts of about that many rows, never parting a tree, for sheets too large to hold as one inventory.
 * Problems of the headers come with the first part. Where a tree's rows do not stand together, all is read in one part.
 */
export function* readSheetsInParts(
  sheets: readonly SheetCells[],
  rowsAPart: number,
  choices: ReadingChoices = {}
): Generator<Inventory, void> {
  const read = beginReading(sheets, choices)
  if ('stop' in read) {
    yield read.stop
    return
  }
  const { inventory, parts, said, rows } = read
  const starts = partStarts(rows, rowsAPart)
  const plausible = new Plausibility(inventory)
  for (let part = 0; part < starts.length; part++) {
    const open: OpenInventory = part === 0 ? inventory : { ...inventory, ...nothingRead() }
    sortRows(open, parts, said, rows.slice(starts[part], starts[part + 1] ?? rows.length))
    plausible.look(open.trees)
    if (part === starts.length - 1) open.problems.push(...remarksOn(parts), ...plausible.problems())
    yield open
  }
}

/** What is reported once of whole columns, when their cells were read. */
function remarksOn(parts: readonly OpenPart[]): Problem[] {
  return parts.flatMap(({ readers }) => [...readers.values()].flatMap((reader) => reader.remarks()))
}

function nothingRead(): Pick<OpenInventory, 'trees' | 'limbCount' | 'unplanned' | 'problems'> {
  return { trees: [], limbCount: 0, unplanned: [], problems: [] }
}

interface Begun {
  readonly inventory: OpenInventory
  readonly parts: readonly OpenPart[]
  readonly said: SaidOfColumns
  readonly rows: readonly IdentifiedRow[]
}

function beginReading(
  sheets: readonly SheetCells[],
  choices: ReadingChoices
): Begun | { readonly stop: Inventory } {
  const problems: Problem[] = []
  const found = survey(sheets, choices, problems)
  const parts = openParts(found.parts)
  const inventory: OpenInventory = {
    sheet: parts[0]?.part.block.sheet ?? sheets[0]?.name ?? '',
    address: listed(found.tables.map(tableAddress)),
    parts: inventoryParts(parts),
    matches: found.matches,
    asked: found.needed.asked,
    system: found.system,
    trees: [],
    limbCount: 0,
    unplanned: [],
    problems
  }
  const stop = whyUnusable(found)
  if (stop !== null) return { stop: { ...inventory, problems: [stop] } }
  const { rows, refused } = identify(found, parts, problems)
  const said: SaidOfColumns = new Map(found.needed.problems)
  const kept = oneSurvey(leaveNoTrees(rows, choices.noTrees ?? [], problems), problems)
  problems.push(...notListed(found.tables, kept))
  const readersOf = new Map(parts.map(({ part, readers }) => [part, readers]))
  const told = tellApart(kept, readersOf, problems)
  refuseRows(inventory, parts, [...refused, ...told.refused, ...shiftedRows(found)])
  return { inventory, parts, said, rows: told.rows }
}

function identify(found: Survey, parts: readonly OpenPart[], problems: Problem[]): Identified {
  const ids = identifier(problems)
  const nameless = found.tables.filter(({ header }) => columnHeaded(header, 'tree') < 0)
  const sheetsOfTrees = new Set(nameless.map(({ sheet }) => sheet.name)).size > 1
  // Trees before their limbs, so that the trees keep the order of their own table.
  const order = found.tables.map((_table, at) => at)
  order.sort((a, b) => Number(found.tables[a]?.of !== 'trees') - Number(found.tables[b]?.of !== 'trees'))
  const joined = joinedRows(found.tables, problems)
  for (const at of order) {
    const table = found.tables[at]
    const own = parts.filter(({ part }) => part.table === at)
    ids.addTable(
      own.map(({ part, readers }) => ({ part, ids: readers.get('tree') ?? null })),
      sheetsOfTrees,
      table === undefined ? undefined : inBlock(joined.get(table), table.header.names)
    )
  }
  return ids.finish()
}

/** Rows whose values stand under the wrong headers. */
function shiftedRows({ tables, parts }: Survey): Identified['refused'] {
  return tables.flatMap(({ sheet, shifted, header }, at) => {
    const part = parts.find((each) => each.table === at && !each.isForm)
    return [...shifted].flatMap(([row, column]) => {
      const cell = cellIn(sheet, row, column)
      const why = problem('row-shifted', cell)
      return part === undefined ? [] : [{ part, row: row - header.names, why }]
    })
  })
}

/** The trees of rows, by the row of the block whose headers stand there. */
function inBlock(rows: JoinedRows | undefined, names: number): JoinedRows | undefined {
  return rows && new Map([...rows].map(([row, id]) => [row - names, id]))
}

/** Where parts begin, each with a new tree; one part where the rows of some tree do not stand together. */
function partStarts(rows: readonly IdentifiedRow[], rowsAPart: number): number[] {
  const seen = new Set<string>()
  const starts = [0]
  let last: string | null = null
  for (const [at, { key }] of rows.entries()) {
    if (key === last) continue
    if (seen.has(key)) return [0]
    seen.add(key)
    last = key
    if (at - (starts.at(-1) ?? 0) >= rowsAPart) starts.push(at)
  }
  return starts
}

/** Why nothing can be read, or null. */
function whyUnusable({ tables, parts, matches }: Survey): Problem | null {
  const [first] = tables
  if (first === undefined) return problem('empty-selection', '')
  const corner = tableAddress(first).split(':')[0] ?? ''
  const known = matches.flatMap(({ field }) => field ?? [])
  const other = matches.some(({ confidence }) => confidence === 'chosen') ? null : otherList(first)
  if (other !== null && tables.every((table) => otherList(table) !== null))
    return problem('no-trees-here', corner, { list: other })
  if (
    known.length < 2 ||
    (!known.some((field) => ['tree', 'diameter', 'trunk'].includes(field)) &&
      !(known.includes('species') && known.includes('height')) &&
      known.filter((field) => ['stem', 'origin', 'tip'].includes(field)).length < 2)
  )
    return problem('no-headers', corner)
  if (tables.every(({ rows }) => rows.length === 0) && parts.every(({ rows }) => rows.length === 0))
    return problem('headers-only', corner)
  if (haveNoMeasures(tables)) return problem('no-measures', corner)
  const nameless = tables.filter(({ labeled, header }) =>
    [...header.columns.map(({ meaning }) => meaning.field), ...labeled.map(({ field }) => field)].every(
      (field) => field !== 'tree'
    )
  )
  const lost = nameless.filter(
    (table) =>
      table.of !== 'trees' &&
      table.labeled.length === 0 &&
      table.sections.length === 0 &&
      parts.every((part) => tables[part.table] !== table || treesWithinLimbs(part) === null)
  )
  if (lost.length === tables.length && new Set(lost.map(({ sheet }) => sheet.name)).size === 1)
    return problem('missing-column', corner, { column: 'the tree', example: 'Tree' })
  return null
}
