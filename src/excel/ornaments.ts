import type { SheetDescription, SheetTable } from '../sheets/sheet'
import { isAbort, isFromExcel } from './failures'
import type { FinishedSheet } from './finishDrafts'
import { addTable, repeatHeaders, setPageBreaks, setUpPage, setUpView } from './pageAndTables'
import type { Surroundings } from './sheetDrafts'
import { addCellRule } from './writeCellRules'
import { addChart } from './writeCharts'
import { addConditionalLook } from './writeConditionalLooks'
import { addPicture, roomsOf, type PaintedPicture } from './writePictures'

/** What stands on a sheet besides its cells, as a person would name it. */
export type OrnamentKind =
  'view' | 'page' | 'breaks' | 'headers' | 'table' | 'rule' | 'look' | 'chart' | 'picture'

/** Something on a sheet besides its cells: it goes in a request of its own, and its refusal costs nothing else. */
interface Ornament {
  readonly kind: OrnamentKind
  readonly add: (sheet: Excel.Worksheet) => void
}

/** What a sheet did not get. */
export interface Refused {
  readonly sheetName: string
  readonly kind: OrnamentKind
}

/** The first free name after the wanted one. Tables and names share their names. */
function freeTableName({ name }: SheetTable, sheetName: string, { tables, names }: Surroundings): string {
  let free = name
  const taken = (wanted: string): boolean =>
    tables.has(wanted.toLowerCase()) || names.has(wanted.toLowerCase())
  for (let number = 2; taken(free); number++) free = `${name}_${String(number)}`
  tables.set(free.toLowerCase(), sheetName)
  return free
}

function ornamentsOf(description: SheetDescription, sheetName: string, around: Surroundings): Ornament[] {
  const { tables, rules = [], conditionalLooks = [], charts = [], page } = description
  const all = <T>(
    kind: OrnamentKind,
    things: readonly T[],
    add: (sheet: Excel.Worksheet, thing: T) => void
  ) =>
    things.map((thing): Ornament => ({
      kind,
      add: (sheet) => {
        add(sheet, thing)
      }
    }))
  const whole = (kind: OrnamentKind, add: (sheet: Excel.Worksheet, thing: SheetDescription) => void) =>
    all(kind, [description], add)
  return [
    ...all('table', tables, (sheet, table) => {
      addTable(sheet, table, freeTableName(table, sheetName, around))
    }),
    ...all('rule', rules, addCellRule),
    ...all('look', conditionalLooks, addConditionalLook),
    ...all('chart', charts, addChart),
    ...whole('view', setUpView),
    ...whole('page', setUpPage),
    ...((page.breaks ?? []).length > 0 ? whole('breaks', setPageBreaks) : []),
    ...(page.titleRow === null ? [] : whole('headers', repeatHeaders))
  ]
}

/** Takes away what a refused request had made of a chart or a picture before it was refused. */
async function removeHalf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  kind: OrnamentKind,
  expected: number
): Promise<void> {
  const things = kind === 'chart' ? sheet.charts : kind === 'picture' ? sheet.shapes : null
  if (things === null) return
  try {
    things.load('items/id')
    await context.sync()
    for (const thing of things.items.slice(expected)) thing.delete()
    await context.sync()
  } catch {
    // What cannot be removed now is told of as refused all the same.
  }
}

/** Where what is refused is noted, and how the rest is canceled. */
interface Adding {
  readonly refused: Refused[]
  readonly signal: AbortSignal | undefined
}

/** Adds one after the other, each in a request of its own; what is refused, or not asked for any more, is noted. */
async function addAll(
  context: Excel.RequestContext,
  { sheetId, sheetName }: FinishedSheet,
  ornaments: readonly Ornament[],
  { refused, signal }: Adding
): Promise<void> {
  const made: Partial<Record<OrnamentKind, number>> = {}
  for (const { kind, add } of ornaments) {
    const sheet = context.workbook.worksheets.getItem(sheetId)
    try {
      signal?.throwIfAborted()
      add(sheet)
      await context.sync()
      made[kind] = (made[kind] ?? 0) + 1
    } catch (error) {
      if (!isFromExcel(error) && !isAbort(error)) throw error
      refused.push({ sheetName, kind })
      if (!isAbort(error)) await removeHalf(context, sheet, kind, made[kind] ?? 0)
    }
  }
}

async function addPictures(
  context: Excel.RequestContext,
  finished: FinishedSheet,
  pictures: readonly PaintedPicture[],
  adding: Adding
): Promise<void> {
  if (pictures.length === 0) return
  const sheet = context.workbook.worksheets.getItem(finished.sheetId)
  let rooms
  try {
    rooms = await roomsOf(context, sheet, pictures)
  } catch (error) {
    if (!isFromExcel(error)) throw error
    const { sheetName } = finished
    adding.refused.push(...pictures.map((): Refused => ({ sheetName, kind: 'picture' })))
    return
  }
  const ornaments = pictures.flatMap((picture, index): Ornament[] => {
    const room = rooms[index]
    if (room === undefined) return []
    return [
      {
        kind: 'picture',
        add: (on) => {
          addPicture(on, picture, room)
        }
      }
    ]
  })
  await addAll(context, finished, ornaments, adding)
}

/** Everything on the documents besides their cells. Whatever is refused here, the documents stand. */
export async function addOrnaments(
  context: Excel.RequestContext,
  finished: readonly FinishedSheet[],
  around: Surroundings,
  pictures: ReadonlyMap<SheetDescription, readonly PaintedPicture[]>,
  refused: Refused[],
  signal: AbortSignal | undefined
): Promise<void> {
  for (const sheet of finished) {
    const { description } = sheet.draft
    await addAll(context, sheet, ornamentsOf(description, sheet.sheetName, around), { refused, signal })
    await addPictures(context, sheet, pictures.get(description) ?? [], { refused, signal })
  }
}
