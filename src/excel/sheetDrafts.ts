import { problem, type Problem } from '../../shared/problems'
import { isNameOf, withFreeNames } from '../sheets/namedCells'
import { draftName, draftText, freeSheetName, ownName, usersSheets } from '../sheets/ownSheets'
import type { SheetDescription } from '../sheets/sheet'
import { dateShiftOf } from './dateShift'
import { isProblem } from './failures'
import { startsOn } from './leftDrafts'
import { isOf, ownSheetsOf, type OwnSheet } from './ownSheetsInBook'

/**
 * One document on its way. It is written on a hidden sheet of its own. Where it replaces an earlier sheet, its cells are
 * copied into that one at the end, which so remains the sheet that formulas of the user's point at; otherwise the hidden
 * sheet is shown and is the document.
 */
export interface Draft {
  description: SheetDescription
  sheet: Excel.Worksheet
  sheetId: string
  /** What the hidden sheet is called: where nothing is replaced, by its name from the start. */
  draftName: string
  /** The workbook name that marks it until it is complete. */
  mark: string
  ownName: string
  replaced: OwnSheet | null
  /** The sheet of the inventory that it is written for, where that is known. */
  of: string | null
  /** Names of cells on the replaced sheet, in lower case: those that the new document has as well are kept for it. */
  oldNames: ReadonlySet<string>
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
  /** Days by which the dates of this workbook are less than those of most: 1462 where they count from 1904. */
  dateShift: number
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
    formulas: new Map(workbook.names.items.map((item) => [item.name.toLowerCase(), String(item.formula)])),
    dateShift: await dateShiftOf(context)
  }
}

/** The names of cells that an earlier sheet of this document has, in lower case. */
function namesOn(
  sheet: OwnSheet | null,
  description: SheetDescription,
  { formulas }: Surroundings
): ReadonlySet<string> {
  if (sheet === null) return new Set()
  const isOn = startsOn(sheet.sheetName)
  const found = [...formulas].filter(([name, formula]) => isNameOf(description, name) && isOn(formula))
  return new Set(found.map(([name]) => name))
}

/** A document before its sheet is begun. */
export type SettledDraft = Omit<Draft, 'sheet' | 'sheetId' | 'draftName'>

interface Settling {
  replace: boolean
  inventory?: readonly string[] | undefined
}

/** Settles what a document replaces and is found again by; a problem where it may not be replaced. */
function settle(
  description: SheetDescription,
  around: Surroundings,
  { replace, inventory = [] }: Settling,
  mark: string
): SettledDraft | Problem {
  const earlier = around.own
    .filter((sheet) => sheet.kind === description.kind)
    .sort((a, b) => a.number - b.number)
  const ofThis = earlier.filter((sheet) => isOf(sheet, inventory))
  if (description.kind === 'rates' && earlier.length > 0)
    return problem('users-sheet', '', { cell: earlier[0]?.sheetName ?? '' })
  const replaceable = replace && !usersSheets.has(description.kind)
  const replaced = replaceable ? (ofThis.at(-1) ?? null) : null
  if (replaced?.protected === true) return problem('sheet-protected', '', { cell: replaced.sheetName })
  return {
    description,
    mark,
    ownName: replaced?.name ?? ownName(description.kind, (earlier.at(-1)?.number ?? 0) + 1),
    replaced,
    oldNames: namesOn(replaced, description, around),
    of: inventory[0] ?? null
  }
}

/**
 * Settles all documents. Cells keep the names that they have on the sheets to be replaced, so that formulas of the user's
 * that call them go on.
 */
export function settleDrafts(
  descriptions: readonly SheetDescription[],
  around: Surroundings,
  settling: Settling
): SettledDraft[] | Problem {
  const settled: SettledDraft[] = []
  const writing = Math.random().toString(36).slice(2, 10)
  for (const [index, description] of descriptions.entries()) {
    const one = settle(description, around, settling, draftName(writing, index + 1))
    if (isProblem(one)) return one
    settled.push(one)
  }
  const own = new Set(settled.flatMap(({ oldNames }) => [...oldNames]))
  const taken = new Set([...around.names, ...around.tables.keys()].filter((name) => !own.has(name)))
  const named = withFreeNames(descriptions, taken)
  return settled.map((draft, index) => {
    const description = named[index] ?? draft.description
    for (const { name } of description.names ?? []) around.names.add(name.toLowerCase())
    return { ...draft, description }
  })
}

function isTaken(error: unknown): boolean {
  return (error as { code?: unknown }).code === 'ItemAlreadyExists'
}

/** Sheets that are no worksheets, such as charts on a sheet of their own, are not listed and take names all the same. */
const mostUnlisted = 20

/** Adds the hidden sheet of a document, marked from its first moment. */
export async function beginDraft(
  context: Excel.RequestContext,
  settled: SettledDraft,
  around: Surroundings
): Promise<Draft> {
  const { description, replaced, mark } = settled
  const wanted = replaced === null ? description.name : `${replaced.sheetName.slice(0, 23)} (draft)`
  const { workbook } = context
  for (let left = mostUnlisted; ; left--) {
    const free = freeSheetName(wanted, around.sheetNames)
    around.sheetNames.push(free)
    const sheet = workbook.worksheets.add(free)
    const first = sheet.getCell(0, 0)
    workbook.names.add(mark, first).visible = false
    sheet.visibility = 'Hidden'
    first.values = [[draftText]]
    sheet.load('id')
    try {
      await context.sync()
      return { ...settled, sheet: workbook.worksheets.getItem(sheet.id), sheetId: sheet.id, draftName: free }
    } catch (error) {
      if (left === 0 || !isTaken(error)) throw error
    }
  }
}
