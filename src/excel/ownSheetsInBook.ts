import type { Problem } from '../../shared/problems'
import { readOwnName, titles, usersSheets, type OwnName } from '../sheets/ownSheets'
import type { DocumentKind } from '../sheets/sheet'
import { inExcel, isProblem } from './failures'

/** A sheet that was written from a plan and is still there. */
export interface OwnSheet extends OwnName {
  name: string
  protected: boolean
}

/**
 * The sheets in this workbook that were written from a plan. A sheet counts as ours only where one of our names points
 * at its first cell and that cell still holds the document's title.
 */
export async function ownSheetsOf(context: Excel.RequestContext): Promise<OwnSheet[]> {
  const names = context.workbook.names
  names.load('items/name,items/formula')
  await context.sync()
  const candidates = names.items.flatMap((item) => {
    const own = readOwnName(item.name, String(item.formula))
    if (own === null) return []
    const sheet = context.workbook.worksheets.getItemOrNullObject(own.sheetName)
    const first = sheet.getCell(0, 0)
    first.load('values')
    sheet.load('name')
    sheet.protection.load('protected')
    return [{ own, name: item.name, sheet, first }]
  })
  await context.sync()
  return candidates.flatMap(({ own, name, sheet, first }) =>
    sheet.isNullObject || String((first.values as unknown[][])[0]?.[0]) !== titles[own.kind]
      ? []
      : [{ ...own, name, protected: sheet.protection.protected }]
  )
}

/** The documents that this workbook already holds and that may be replaced. */
export async function findOwnSheets(): Promise<{ kind: DocumentKind; sheetName: string }[] | Problem> {
  const found = await inExcel(ownSheetsOf, { wait: true })
  if (isProblem(found)) return found
  return found.flatMap(({ kind, sheetName }) => (usersSheets.has(kind) ? [] : [{ kind, sheetName }]))
}
