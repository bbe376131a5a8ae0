import { areaRead } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { listed } from '../../shared/words/lists'
import type { DrawingPainter } from '../drawing/paint/painter'
import type { SheetCells } from '../inventory/survey/sheetCells'
import type { DocumentKind, SheetDescription } from '../sheets/sheet'
import { addressOf } from './sheetAddresses'
import { inExcel, isAbort, isProblem } from './failures'
import { finishDrafts, type FinishedSheet } from './finishDrafts'
import { cleanUp, cleanUpPauses, removeDrafts } from './leftDrafts'
import { addOrnaments, type Refused } from './ornaments'
import { missingFrom } from './refusedWords'
import { beginDraft, lookAround, settleDrafts, type Draft, type Surroundings } from './sheetDrafts'
import { changedSheet } from './sheetsUnchanged'
import { cellsAPicture, paintPictures, type PaintedPicture } from './writePictures'
import { writeCellsOf, writeFormulasOf } from './writeSheet'

export interface ApplyOptions {
  /** Put the new document in place of the last one of its kind that we wrote; otherwise it is added beside it. */
  replace: boolean
  /** The sheets of the inventory that the documents are of, the first one naming it; only what was written for it is replaced. */
  inventory?: readonly string[] | undefined
  /** The sheets the documents were made from, as they were read; if they have changed since, nothing is written. */
  source?: readonly SheetCells[] | undefined
  signal?: AbortSignal | undefined
  /** Turns drawings into pictures; needed where a document has any. */
  painter?: DrawingPainter | undefined
  /** Cells written and cells in all; a picture counts as many cells. */
  onProgress?: ((done: number, total: number) => void) | undefined
  /** Milliseconds before each try to take away what a failed writing began. */
  cleanUpPauses?: readonly number[] | undefined
}

export interface WrittenSheet {
  kind: DocumentKind
  sheetName: string
}

export interface AppliedSheets {
  written: WrittenSheet[]
  /** What the spreadsheet did not take, in one sentence; null where nothing is missing. */
  missing: Problem | null
}

/** How much there is to write, in cells. */
function workOf({ rows, widths, pictures = [] }: SheetDescription): number {
  return rows.length * widths.length + pictures.length * cellsAPicture
}

/** What a writing comes to, noted as it goes: whatever is thrown on the way, this is known. */
interface Course {
  readonly begun: Draft[]
  readonly pictures: Map<SheetDescription, PaintedPicture[]>
  readonly refused: Refused[]
  around: Surroundings | null
  finished: FinishedSheet[] | null
}

async function writeDrafts(
  context: Excel.RequestContext,
  descriptions: readonly SheetDescription[],
  { signal, painter, replace, inventory }: ApplyOptions,
  around: Surroundings,
  { begun, pictures }: Course,
  onStep: (cells: number) => void
): Promise<Problem | null> {
  const settled = settleDrafts(descriptions, around, { replace, inventory })
  if (isProblem(settled)) return settled
  for (const draft of settled) {
    signal?.throwIfAborted()
    begun.push(await beginDraft(context, draft, around))
  }
  const writing = { signal, onStep, dateShift: around.dateShift }
  for (const { sheet, description, oldNames } of begun)
    await writeCellsOf(context, sheet, description, oldNames, writing)
  // Formulas call names of other sheets: all names stand before any formula is written.
  for (const { sheet, description } of begun) await writeFormulasOf(context, sheet, description, writing)
  // Painting takes the longest and can be canceled: it comes before anything is seen.
  for (const { description } of begun) {
    const painted = await paintPictures(description, painter, () => {
      signal?.throwIfAborted()
      onStep(cellsAPicture)
    })
    pictures.set(description, painted)
  }
  return null
}

/** All up to the one request in which the documents come to stand. */
async function write(
  context: Excel.RequestContext,
  descriptions: readonly SheetDescription[],
  options: ApplyOptions,
  course: Course
): Promise<Problem | null> {
  const { source = [], signal, onProgress } = options
  const before = await changedSheet(context, source)
  if (before !== null) return changed(before)
  await removeDrafts(context)
  const around = await lookAround(context)
  if (isProblem(around)) return around
  course.around = around
  const total = descriptions.reduce((sum, description) => sum + workOf(description), 0)
  let done = 0
  const problem = await writeDrafts(context, descriptions, options, around, course, (cells) => {
    done += cells
    onProgress?.(done, total)
  })
  if (problem !== null) return problem
  signal?.throwIfAborted()
  const meanwhile = await changedSheet(context, source)
  if (meanwhile !== null) return changed(meanwhile)
  const finished = await finishDrafts(context, course.begun, around)
  if (isProblem(finished)) return finished
  course.finished = finished
  return null
}

function changed(sheet: SheetCells): Problem {
  const area = areaRead(sheet) ?? { row: sheet.top, column: sheet.left, rows: 1, columns: 1 }
  return problem('range-changed', addressOf(area, sheet.name))
}

/** The problem, with what could not be taken away again. */
function withLeft({ message }: Pick<Problem, 'message'>, begun: readonly Draft[]): Problem {
  const cell = begun.length === 0 ? 'a sheet' : listed(begun.map((draft) => draft.draftName))
  return problem('drafts-left', '', { text: message, cell })
}

async function ornament(
  { finished, around, pictures, refused }: Course,
  signal?: AbortSignal
): Promise<void> {
  if (finished === null || around === null) return
  await inExcel((context) => addOrnaments(context, finished, around, pictures, refused, signal), {
    wait: true
  })
}

/**
 * Writes documents, each on a sheet of its own. Never touches a sheet that is not ours: where one already has the wanted
 * name, the document is called "Cut plan (2)". All is written on hidden sheets first and comes to stand in one request, so
 * that a canceled or failed run leaves the workbook as it was; an earlier document of ours is refilled and stays the sheet
 * that it is. Tables, rules, looks, charts, pictures and the page come after that, each in a request of its own: one that is
 * refused is `missing` and costs nothing else. Rejects with the signal's AbortError when canceled.
 */
export async function applySheets(
  descriptions: readonly SheetDescription[],
  options: ApplyOptions
): Promise<AppliedSheets | Problem> {
  const { signal, cleanUpPauses: pauses = cleanUpPauses } = options
  signal?.throwIfAborted()
  const course: Course = { begun: [], pictures: new Map(), refused: [], around: null, finished: null }
  let result: Problem | null
  try {
    result = await inExcel((context) => write(context, descriptions, options, course), { wait: false })
  } catch (error) {
    const clean = course.around === null || (await cleanUp(pauses))
    if (clean || !isAbort(error)) throw error
    return withLeft({ message: 'Writing was canceled.' }, course.begun)
  }
  if (course.finished === null) {
    const failed = result ?? problem('spreadsheet-failed', '', { text: 'nothing was written' })
    return course.around === null || (await cleanUp(pauses)) ? failed : withLeft(failed, course.begun)
  }
  await ornament(course, signal)
  const written = course.finished.map(({ draft, sheetName }) => ({ kind: draft.description.kind, sheetName }))
  return { written, missing: missingFrom(course.refused) }
}
