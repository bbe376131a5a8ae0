import { areaRead } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import type { DrawingPainter } from '../drawing/paint/painter'
import type { SheetCells } from '../inventory/survey/sheetCells'
import { withFreeNames } from '../sheets/namedCells'
import type { DocumentKind, SheetDescription } from '../sheets/sheet'
import { addressOf } from './sheetAddresses'
import { inExcel, isProblem } from './failures'
import {
  beginDraft,
  discardDrafts,
  finishDraft,
  lookAround,
  type Draft,
  type Surroundings
} from './sheetDrafts'
import { changedSheet } from './sheetsUnchanged'
import { cellsAPicture } from './writePictures'
import { completeSheet, writeCellsOf } from './writeSheet'

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
}

export interface WrittenSheet {
  kind: DocumentKind
  sheetName: string
}

/** How much there is to write, in cells. */
function workOf({ rows, widths, pictures = [] }: SheetDescription): number {
  return rows.length * widths.length + pictures.length * cellsAPicture
}

async function writeDrafts(
  context: Excel.RequestContext,
  descriptions: readonly SheetDescription[],
  { signal, painter, onProgress, replace, inventory }: ApplyOptions,
  around: Surroundings,
  begun: Draft[]
): Promise<Problem | null> {
  const total = descriptions.reduce((sum, description) => sum + workOf(description), 0)
  let done = 0
  const onStep = (cells: number) => {
    done += cells
    onProgress?.(done, total)
  }
  const taken = new Set([...around.names, ...around.tables.keys()])
  for (const description of withFreeNames(descriptions, taken)) {
    signal?.throwIfAborted()
    const draft = beginDraft(context, description, around, { replace, inventory })
    if (isProblem(draft)) return draft
    begun.push(draft)
    await context.sync()
    await writeCellsOf(context, draft.sheet, draft.description, { signal, painter, onStep })
  }
  // Formulas call names of other sheets: all names stand before any formula is written.
  for (const { sheet, description } of begun)
    await completeSheet(context, sheet, description, { signal, painter, onStep })
  return null
}

async function write(
  context: Excel.RequestContext,
  descriptions: readonly SheetDescription[],
  options: ApplyOptions,
  begun: Draft[]
): Promise<WrittenSheet[] | Problem> {
  const { source = [], signal } = options
  const before = await changedSheet(context, source)
  if (before !== null) return changed(before)
  const around = await lookAround(context)
  if (isProblem(around)) return around
  const problem = await writeDrafts(context, descriptions, options, around, begun)
  if (problem !== null) return problem
  signal?.throwIfAborted()
  const meanwhile = await changedSheet(context, source)
  if (meanwhile !== null) return changed(meanwhile)

  const drafts = [...begun]
  for (const draft of drafts) finishDraft(context, draft, around)
  drafts.find(({ description }) => description.hidden !== true)?.sheet.activate()
  await context.sync()
  begun.length = 0
  return drafts.map(({ description, finalName }) => ({ kind: description.kind, sheetName: finalName }))
}

function changed(sheet: SheetCells): Problem {
  const area = areaRead(sheet) ?? { row: sheet.top, column: sheet.left, rows: 1, columns: 1 }
  return problem('range-changed', addressOf(area, sheet.name))
}

/**
 * Writes documents, each on a sheet of its own. Never touches a sheet that is not ours: where one already has the wanted
 * name, the document is called "Cut plan (2)". An earlier sheet is set aside under another name and taken away in one
 * last step; a canceled or failed run gives it its name back, so that the workbook is as it was. Rejects with the signal's AbortError when canceled.
 */
export async function applySheets(
  descriptions: readonly SheetDescription[],
  options: ApplyOptions
): Promise<{ written: WrittenSheet[] } | Problem> {
  options.signal?.throwIfAborted()
  const begun: Draft[] = []
  try {
    const result = await inExcel((context) => write(context, descriptions, options, begun), { wait: false })
    return isProblem(result) ? result : { written: result }
  } finally {
    if (begun.length > 0) await discardDrafts(begun)
  }
}
