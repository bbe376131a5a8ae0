import type { CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { readOwnName, type OwnName } from '../sheets/ownSheets'
import type { DocumentKind, SheetDescription } from '../sheets/sheet'
import { applySheets } from './applySheets'
import { inExcel, isProblem } from './failures'
import { readCells } from './readCells'

/** The sheets of a kind that hidden names point at, the first written first; whether they are still there is not looked at. */
async function namedSheets(context: Excel.RequestContext, kind: DocumentKind): Promise<OwnName[]> {
  const names = context.workbook.names
  names.load('items/name,items/formula')
  await context.sync()
  return names.items
    .flatMap((item) => readOwnName(item.name, String(item.formula)) ?? [])
    .filter((own) => own.kind === kind)
    .sort((a, b) => a.number - b.number)
}

async function read(
  context: Excel.RequestContext,
  kind: DocumentKind,
  which: 'first' | 'latest'
): Promise<CellBlock | null> {
  const named = await namedSheets(context, kind)
  for (const { sheetName } of which === 'first' ? named : named.reverse()) {
    const sheet = context.workbook.worksheets.getItemOrNullObject(sheetName)
    const used = sheet.getUsedRangeOrNullObject(true)
    used.load('rowIndex,columnIndex,rowCount,columnCount')
    sheet.load('name')
    await context.sync()
    if (sheet.isNullObject) continue
    const empty: CellBlock = { rows: [], sheet: sheet.name, top: 0, left: 0 }
    if (used.isNullObject) return empty
    const rows = used.rowIndex + used.rowCount
    const columns = used.columnIndex + used.columnCount
    const area = { row: 0, column: 0, rows, columns }
    return { ...empty, rows: await readCells(context, sheet, area) }
  }
  return null
}

/**
 * The sheet of a kind that we wrote once and a person now owns, from its first cell on; null where the workbook has
 * none. It is found by its hidden name, whatever it is called and whatever its cells say by now.
 */
export async function readUsersSheet(kind: DocumentKind): Promise<CellBlock | Problem | null> {
  return inExcel((context) => read(context, kind, 'first'), { wait: true })
}

/** The document of a kind that was written last, from its first cell on; null where the workbook has none. */
export async function readLatest(kind: DocumentKind): Promise<CellBlock | Problem | null> {
  return inExcel((context) => read(context, kind, 'latest'), { wait: true })
}

/** Writes such a sheet where there is none; one that stands there is never replaced. Gives its name. */
export async function writeUsersSheet(description: SheetDescription): Promise<string | Problem> {
  const found = await readUsersSheet(description.kind)
  if (isProblem(found)) return found
  if (found !== null) return problem('users-sheet-exists', '', { cell: found.sheet })
  const result = await applySheets([description], { replace: false })
  return isProblem(result) ? result : (result.written[0]?.sheetName ?? description.name)
}
