import type { CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { detailsFor, type ChosenDetails } from '../details/detailsFor'
import { inventoryName, inventorySheetIn, readOwnName, type OwnName } from '../sheets/ownSheets'
import type { DocumentKind, SheetDescription } from '../sheets/sheet'
import { applySheets } from './applySheets'
import { inExcel, isProblem } from './failures'
import { isOf } from './ownSheetsInBook'
import { readCells } from './readCells'

/** The sheets of a kind that hidden names point at, the first written first; whether they are still there is not looked at. */
async function namedSheets(
  context: Excel.RequestContext,
  kind: DocumentKind
): Promise<{ own: OwnName; of: string | null }[]> {
  const names = context.workbook.names
  names.load('items/name,items/formula')
  await context.sync()
  const formulas = new Map(names.items.map((item) => [item.name, String(item.formula)]))
  return names.items
    .flatMap((item) => {
      const own = readOwnName(item.name, String(item.formula))
      if (own?.kind !== kind) return []
      return [{ own, of: inventorySheetIn(formulas.get(inventoryName(item.name)) ?? '') }]
    })
    .sort((a, b) => a.own.number - b.own.number)
}

/** A sheet of the user's own, and the sheet of the inventory that it was written for, where that is known. */
interface UsersSheet {
  readonly block: CellBlock
  readonly of: string | null
}

async function readOne(context: Excel.RequestContext, { sheetName }: OwnName): Promise<CellBlock | null> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(sheetName)
  const used = sheet.getUsedRangeOrNullObject(true)
  used.load('rowIndex,columnIndex,rowCount,columnCount')
  sheet.load('name')
  await context.sync()
  if (sheet.isNullObject) return null
  const empty: CellBlock = { rows: [], sheet: sheet.name, top: 0, left: 0 }
  if (used.isNullObject) return empty
  const rows = used.rowIndex + used.rowCount
  const columns = used.columnIndex + used.columnCount
  const area = { row: 0, column: 0, rows, columns }
  return { ...empty, rows: await readCells(context, sheet, area) }
}

async function read(
  context: Excel.RequestContext,
  kind: DocumentKind,
  which: 'first' | 'latest',
  inventory: readonly string[] = []
): Promise<CellBlock | null> {
  const named = await namedSheets(context, kind)
  for (const { own, of } of which === 'first' ? named : named.reverse()) {
    const block = isOf({ of }, inventory) ? await readOne(context, own) : null
    if (block !== null) return block
  }
  return null
}

async function readAll(
  context: Excel.RequestContext,
  kind: DocumentKind
): Promise<{ found: UsersSheet[]; sheets: string[] }> {
  const found: UsersSheet[] = []
  for (const { own, of } of await namedSheets(context, kind)) {
    const block = await readOne(context, own)
    if (block !== null) found.push({ block, of })
  }
  const { worksheets } = context.workbook
  worksheets.load('items/name')
  await context.sync()
  return { found, sheets: worksheets.items.map(({ name }) => name) }
}

/**
 * The sheet of a kind that we wrote once and a person now owns, from its first cell on; null where the workbook has
 * none. It is found by its hidden name, whatever it is called and whatever its cells say by now.
 */
export async function readUsersSheet(kind: DocumentKind): Promise<CellBlock | Problem | null> {
  return inExcel((context) => read(context, kind, 'first'), { wait: true })
}

/** The document of a kind that was written last for an inventory, or for any where none is named, from its first cell on; null where the workbook has none. */
export async function readLatest(
  kind: DocumentKind,
  inventory: readonly string[] = []
): Promise<CellBlock | Problem | null> {
  return inExcel((context) => read(context, kind, 'latest', inventory), { wait: true })
}

/** The Job details sheet of the inventory of these sheets, found in the same way; a workbook may have one for each. */
export async function readDetailsSheet(inventory: readonly string[]): Promise<ChosenDetails | Problem> {
  const read = await inExcel((context) => readAll(context, 'job-details'), { wait: true })
  return isProblem(read) ? read : detailsFor(read.found, inventory, read.sheets)
}

async function write(
  description: SheetDescription,
  found: CellBlock | null,
  inventory: readonly string[]
): Promise<string | Problem> {
  if (found !== null) return problem('users-sheet-exists', '', { cell: found.sheet })
  const result = await applySheets([description], { replace: false, inventory })
  if (isProblem(result)) return result
  const name = result.written[0]?.sheetName ?? description.name
  return result.missing === null ? name : `${name}. ${result.missing.message.replace(/\.$/, '')}`
}

/** Writes such a sheet where there is none; one that stands there is never replaced. Gives its name. */
export async function writeUsersSheet(description: SheetDescription): Promise<string | Problem> {
  const found = await readUsersSheet(description.kind)
  return isProblem(found) ? found : write(description, found, [])
}

/** The same for the Job details sheet of an inventory; that of another inventory stays beside it. */
export async function writeDetailsSheet(
  description: SheetDescription,
  inventory: readonly string[]
): Promise<string | Problem> {
  const found = await readDetailsSheet(inventory)
  return isProblem(found) ? found : write(description, found.block, inventory)
}
