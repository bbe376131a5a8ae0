import type { Problem } from '../../shared/problems'
import {
  inventoryName,
  inventorySheetIn,
  readOwnName,
  titles,
  usersSheets,
  type OwnName
} from '../sheets/ownSheets'
import type { DocumentKind } from '../sheets/sheet'
import { inExcel, isProblem } from './failures'

/** A sheet that was written from a plan and is still there. */
export interface OwnSheet extends OwnName {
  name: string
  protected: boolean
  /** The sheet of the inventory that it was written for; null where that is not known. */
  of: string | null
}

/**
 * The sheets in this workbook that were written from a plan. A sheet counts as ours only where one of our names points
 * at its first cell and that cell still holds the document's title.
 */
export async function ownSheetsOf(context: Excel.RequestContext): Promise<OwnSheet[]> {
  const { own, missed } = await lookForOwn(context)
  // A sheet that was renamed between the two requests is found at the next look.
  return missed ? (await lookForOwn(context)).own : own
}

/** Own sheets, and whether one was not there any more under the name it had a request before. */
async function lookForOwn(context: Excel.RequestContext): Promise<{ own: OwnSheet[]; missed: boolean }> {
  const names = context.workbook.names
  names.load('items/name,items/formula')
  await context.sync()
  const formulas = new Map(names.items.map((item) => [item.name, String(item.formula)]))
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
  const missed = candidates.some(({ sheet }) => sheet.isNullObject)
  const found = candidates.flatMap(({ own, name, sheet, first }) =>
    sheet.isNullObject || String((first.values as unknown[][])[0]?.[0]) !== titles[own.kind]
      ? []
      : [
          {
            ...own,
            name,
            protected: sheet.protection.protected,
            of: inventorySheetIn(formulas.get(inventoryName(name)) ?? '')
          }
        ]
  )
  return { own: found, missed }
}

/** True of a sheet that was written for the inventory of these sheets, or for one that is not known any more. */
export function isOf({ of }: Pick<OwnSheet, 'of'>, inventory: readonly string[]): boolean {
  return of === null || inventory.length === 0 || inventory.includes(of)
}

/** The documents of an inventory that this workbook already holds and that may be replaced; of any where none is named. */
export async function findOwnSheets(
  inventory: readonly string[] = []
): Promise<{ kind: DocumentKind; sheetName: string }[] | Problem> {
  const found = await inExcel(ownSheetsOf, { wait: true })
  if (isProblem(found)) return found
  return found
    .filter((sheet) => !usersSheets.has(sheet.kind) && isOf(sheet, inventory))
    .map(({ kind, sheetName }) => ({ kind, sheetName }))
}
