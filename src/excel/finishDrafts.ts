import { absoluteAddress } from '../../shared/a1Notation'
import { problem, type Problem } from '../../shared/problems'
import { firstCellOf, inventoryName } from '../sheets/ownSheets'
import { ownSheetsOf } from './ownSheetsInBook'
import type { Draft, Surroundings } from './sheetDrafts'
import { sizeSteps } from './writeFormats'

/** A sheet that a document goes into, with what stands on it besides its cells. */
interface Receiving {
  readonly sheet: Excel.Worksheet
  readonly tables: Excel.TableCollection
  readonly charts: Excel.ChartCollection
  readonly shapes: Excel.ShapeCollection
  readonly used: Excel.Range
}

/** A document that is complete but for its looks and pictures. */
export interface FinishedSheet {
  readonly draft: Draft
  readonly sheetId: string
  readonly sheetName: string
}

/** The earlier sheets that are to be refilled, looked at once more; a problem where one is not as it was. */
async function lookAgain(
  context: Excel.RequestContext,
  drafts: readonly Draft[]
): Promise<Map<Draft, Receiving> | Problem> {
  const replacing = drafts.filter(({ replaced }) => replaced !== null)
  const found = new Map<Draft, Receiving>()
  if (replacing.length === 0) return found
  const now = await ownSheetsOf(context)
  for (const draft of replacing) {
    const { sheetName = '', name } = draft.replaced ?? {}
    const there = now.find((own) => own.name === name && own.sheetName === sheetName)
    if (there === undefined) return problem('document-changed', '', { cell: sheetName })
    if (there.protected) return problem('sheet-protected', '', { cell: sheetName })
    const sheet = context.workbook.worksheets.getItem(sheetName)
    sheet.load('id')
    const used = sheet.getUsedRangeOrNullObject()
    used.load('rowIndex,columnIndex,rowCount,columnCount')
    const { tables, charts, shapes } = sheet
    tables.load('items/id')
    charts.load('items/id')
    shapes.load('items/id')
    found.set(draft, { sheet, tables, charts, shapes, used })
  }
  await context.sync()
  return found
}

/** What of the earlier document lies beside or below the new one. */
function clearRest(sheet: Excel.Worksheet, used: Excel.Range, rows: number, columns: number): void {
  if (used.isNullObject) return
  const lastRow = used.rowIndex + used.rowCount
  const lastColumn = used.columnIndex + used.columnCount
  if (lastColumn > columns) sheet.getRangeByIndexes(0, columns, lastRow, lastColumn - columns).clear()
  if (lastRow > rows) sheet.getRangeByIndexes(rows, 0, lastRow - rows, columns).clear()
  sheet.getRangeByIndexes(0, 0, lastRow, 1).format.useStandardHeight = true
}

/**
 * Puts the document in the place of the earlier one. The copy comes first: where the spreadsheet refuses it, the earlier
 * sheet still has its cells.
 */
function refill(
  { description, sheet: from }: Draft,
  { sheet, tables, charts, shapes, used }: Receiving
): void {
  const rows = Math.max(1, description.rows.length)
  const columns = Math.max(1, description.widths.length)
  for (const table of tables.items) table.convertToRange()
  sheet.getRangeByIndexes(0, 0, rows, columns).copyFrom(from.getRangeByIndexes(0, 0, rows, columns), 'All')
  clearRest(sheet, used, rows, columns)
  const whole = sheet.getRange()
  whole.conditionalFormats.clearAll()
  whole.dataValidation.clear()
  for (const chart of charts.items) chart.delete()
  for (const shape of shapes.items) shape.delete()
  sheet.freezePanes.unfreeze()
  sheet.horizontalPageBreaks.removePageBreaks()
  for (const step of sizeSteps(sheet, description)) step()
}

function refillOne(
  context: Excel.RequestContext,
  draft: Draft,
  receiving: Receiving,
  around: Surroundings
): FinishedSheet {
  const { names } = context.workbook
  const { sheetName = '' } = draft.replaced ?? {}
  refill(draft, receiving)
  const now = draft.description.names ?? []
  for (const { name, area } of now) names.getItem(name).formula = `=${absoluteAddress(sheetName, area)}`
  const kept = new Set(now.map(({ name }) => name.toLowerCase()))
  for (const name of draft.oldNames) if (!kept.has(name)) names.getItem(name).delete()
  draft.sheet.delete()
  for (const [table, on] of around.tables) if (on === sheetName) around.tables.delete(table)
  return { draft, sheetId: receiving.sheet.id, sheetName }
}

function showOne(context: Excel.RequestContext, draft: Draft, around: Surroundings): FinishedSheet {
  const { names } = context.workbook
  if (around.names.has(draft.ownName.toLowerCase())) names.getItem(draft.ownName).delete()
  names.add(draft.ownName, draft.sheet.getCell(0, 0)).visible = false
  if (draft.description.hidden !== true) draft.sheet.visibility = 'Visible'
  return { draft, sheetId: draft.sheetId, sheetName: draft.draftName }
}

/** Makes all documents stand at once, in one request: before it the workbook is as it was, behind it they are complete. */
export async function finishDrafts(
  context: Excel.RequestContext,
  drafts: readonly Draft[],
  around: Surroundings
): Promise<FinishedSheet[] | Problem> {
  const receiving = await lookAgain(context, drafts)
  if ('code' in receiving) return receiving
  const { application, workbook } = context
  application.suspendScreenUpdatingUntilNextSync()
  const finished = drafts.map((draft) => {
    const into = receiving.get(draft)
    return into === undefined ? showOne(context, draft, around) : refillOne(context, draft, into, around)
  })
  for (const { draft } of finished) {
    const leading = inventoryName(draft.ownName)
    if (around.names.has(leading.toLowerCase())) workbook.names.getItem(leading).delete()
    if (draft.of !== null) workbook.names.add(leading, `=${firstCellOf(draft.of)}`).visible = false
    workbook.names.getItem(draft.mark).delete()
  }
  const first = finished.find(({ draft }) => draft.description.hidden !== true)
  if (first !== undefined) workbook.worksheets.getItem(first.sheetName).activate()
  await context.sync()
  return finished
}
