import { quotedPrefix } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { isNameOf } from '../sheets/namedCells'
import { firstCellOf, freeSheetName, inventoryName, ownName, usersSheets } from '../sheets/ownSheets'
import type { SheetDescription } from '../sheets/sheet'
import { inExcel } from './failures'
import { isOf, ownSheetsOf, type OwnSheet } from './ownSheetsInBook'

/** One document on its way: the sheet it is written on, and what becomes of that sheet at the end. */
export interface Draft {
  description: SheetDescription
  sheet: Excel.Worksheet
  /** Name of the sheet, which it has from the start: a formula may not outlive a renaming everywhere. */
  finalName: string
  ownName: string
  replaced: OwnSheet | null
  /** What the replaced sheet is called until it is taken away, or given its name back. */
  setAside: string
  /** The sheet of the inventory that it is written for, where that is known. */
  of: string | null
  /** Names of cells on the replaced sheet, in lower case, which go with it. */
  oldNames: string[]
}

/** What already stands in the workbook. */
export interface Surroundings {
  own: OwnSheet[]
  sheetNames: string[]
  /** Names of tables in lower case, with the sheet each stands on. */
  tables: Map<string, string>
  names: Set<string>
  /** Names in lower case, with the formula of each. */
  formulas: Map<string, string>
}

/** What already stands in the workbook; a problem where no sheet may be added. */
export async function lookAround(context: Excel.RequestContext): Promise<Surroundings | Problem> {
  const { workbook } = context
  workbook.protection.load('protected')
  workbook.worksheets.load('items/name')
  workbook.tables.load('items/name,items/worksheet/name')
  workbook.names.load('items/name,items/formula')
  await context.sync()
  if (workbook.protection.protected) return problem('sheet-protected', '', { cell: 'to be written' })
  return {
    own: await ownSheetsOf(context),
    sheetNames: workbook.worksheets.items.map((sheet) => sheet.name),
    tables: new Map(workbook.tables.items.map((table) => [table.name.toLowerCase(), table.worksheet.name])),
    names: new Set(workbook.names.items.map((item) => item.name.toLowerCase())),
    formulas: new Map(workbook.names.items.map((item) => [item.name.toLowerCase(), String(item.formula)]))
  }
}

/** The names of cells that an earlier sheet of this document has, in lower case. */
function namesOn(sheet: OwnSheet | null, description: SheetDescription, around: Surroundings): string[] {
  if (sheet === null) return []
  const starts = [`=${quotedPrefix(sheet.sheetName)}`, `=${sheet.sheetName}!`]
  return [...around.formulas]
    .filter(
      ([name, formula]) => isNameOf(description, name) && starts.some((start) => formula.startsWith(start))
    )
    .map(([name]) => name)
}

/**
 * Adds an empty sheet for a document and settles what it and its cells are called; a sheet that it replaces is set aside.
 */
export function beginDraft(
  context: Excel.RequestContext,
  description: SheetDescription,
  around: Surroundings,
  { replace, inventory = [] }: { replace: boolean; inventory?: readonly string[] | undefined }
): Draft | Problem {
  const earlier = around.own
    .filter((sheet) => sheet.kind === description.kind)
    .sort((a, b) => a.number - b.number)
  const ofThis = earlier.filter((sheet) => isOf(sheet, inventory))
  if (description.kind === 'rates' && earlier.length > 0)
    return problem('users-sheet', '', { cell: earlier[0]?.sheetName ?? '' })
  const replaceable = replace && !usersSheets.has(description.kind)
  const replaced = replaceable ? (ofThis.at(-1) ?? null) : null
  if (replaced?.protected === true) return problem('sheet-protected', '', { cell: replaced.sheetName })
  const finalName = replaced?.sheetName ?? freeSheetName(description.name, around.sheetNames)
  const setAside = freeSheetName(`${finalName.slice(0, 17)} (earlier)`, around.sheetNames)
  around.sheetNames.push(finalName, setAside)
  const number = (earlier.at(-1)?.number ?? 0) + 1
  const oldNames = namesOn(replaced, description, around)
  for (const { name } of description.names ?? []) around.names.add(name.toLowerCase())
  const { worksheets } = context.workbook
  if (replaced !== null) worksheets.getItem(finalName).name = setAside
  return {
    description,
    sheet: worksheets.add(finalName),
    finalName,
    setAside,
    ownName: replaced?.name ?? ownName(description.kind, number),
    replaced,
    oldNames,
    of: inventory[0] ?? null
  }
}

/** Gives each table its wanted name, or the first free one after it. Tables and names share their names. */
function nameTables(draft: Draft, around: Surroundings): void {
  draft.description.tables.forEach(({ name }, index) => {
    let free = name
    const taken = (wanted: string) =>
      around.tables.has(wanted.toLowerCase()) || around.names.has(wanted.toLowerCase())
    for (let number = 2; taken(free); number++) free = `${name}_${String(number)}`
    around.tables.set(free.toLowerCase(), draft.finalName)
    draft.sheet.tables.getItemAt(index).name = free
  })
}

/** Takes the replaced sheet away, gives the new one its tables and the name it is found again by. */
export function finishDraft(context: Excel.RequestContext, draft: Draft, around: Surroundings): void {
  const { workbook } = context
  if (draft.replaced !== null) {
    const { sheetName } = draft.replaced
    workbook.worksheets.getItem(draft.setAside).delete()
    for (const [table, sheet] of around.tables) if (sheet === sheetName) around.tables.delete(table)
  }
  for (const name of draft.oldNames) workbook.names.getItem(name).delete()
  nameTables(draft, around)
  if (around.names.has(draft.ownName.toLowerCase())) workbook.names.getItem(draft.ownName).delete()
  const item = workbook.names.add(draft.ownName, draft.sheet.getCell(0, 0))
  item.visible = false
  const leading = inventoryName(draft.ownName)
  if (around.names.has(leading.toLowerCase())) workbook.names.getItem(leading).delete()
  if (draft.of !== null) workbook.names.add(leading, `=${firstCellOf(draft.of)}`).visible = false
  if (draft.description.hidden === true) draft.sheet.visibility = 'Hidden'
}

/**
 * Removes what was begun, once nobody is typing in a cell any more, and gives a sheet that was set aside its name back. Where
 * no sheet is set aside for a document that replaces one, either nothing was begun or it is complete: both stay.
 */
export async function discardDrafts(drafts: readonly Draft[]): Promise<void> {
  await inExcel(
    async (context) => {
      const { worksheets, names } = context.workbook
      const found = drafts.map((draft) => ({
        draft,
        sheet: worksheets.getItemOrNullObject(draft.finalName),
        earlier: draft.replaced && worksheets.getItemOrNullObject(draft.setAside),
        name: names.getItemOrNullObject(draft.ownName),
        cells: (draft.description.names ?? []).map((cell) => names.getItemOrNullObject(cell.name))
      }))
      await context.sync()
      for (const { draft, sheet, earlier, name, cells } of found) {
        if (earlier?.isNullObject === true || (earlier === null && sheet.isNullObject)) continue
        for (const cell of cells) if (!cell.isNullObject) cell.delete()
        if (!sheet.isNullObject) sheet.delete()
        if (earlier !== null) earlier.name = draft.finalName
        else if (!name.isNullObject) name.delete()
      }
      await context.sync()
    },
    { wait: true }
  )
}
