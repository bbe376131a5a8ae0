import type { Content, SheetDescription } from '../sheets/sheet'
import { typedText } from '../sheets/typedText'
import { formatSteps, sizeSteps } from './writeFormats'
import { writeFormulas } from './writeFormulas'

/** Rough size of one request in characters; Excel on the web takes at most 5 MB. */
const requestCharacters = 1_000_000
/** Operations in one request. */
const requestSteps = 400

export interface Writing {
  signal?: AbortSignal | undefined
  /** Days to take from each date, as the workbook counts them. */
  dateShift: number
  /** Told after each request how many of its share of steps are done. */
  onStep?: ((cells: number) => void) | undefined
}

async function send(context: Excel.RequestContext, signal: AbortSignal | undefined): Promise<void> {
  signal?.throwIfAborted()
  await context.sync()
}

function typed(content: Content, dateShift: number): string | number | boolean | null {
  if (content === null || content === '') return null
  if (typeof content === 'string') return typedText(content)
  if (typeof content === 'number') return Number.isFinite(content) ? content : null
  if (typeof content === 'boolean') return content
  return 'date' in content ? content.date - dateShift : null
}

/** Text, numbers and dates in bands of rows. A blank is left alone: the sheet is new. */
async function writeCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { rows, widths }: SheetDescription,
  { signal, onStep, dateShift }: Writing
): Promise<void> {
  for (let start = 0; start < rows.length;) {
    const band: ReturnType<typeof typed>[][] = []
    for (let size = 0; start + band.length < rows.length && size < requestCharacters;) {
      const cells = rows[start + band.length] ?? []
      const row = widths.map((_, column) => typed(cells[column] ?? null, dateShift))
      for (const cell of row) size += typeof cell === 'string' ? cell.length + 3 : 12
      band.push(row)
    }
    sheet.getRangeByIndexes(start, 0, band.length, widths.length).values = band
    await send(context, signal)
    onStep?.(band.length * widths.length)
    start += band.length
  }
}

/**
 * Names the cells that formulas call; they come before the formulas, so that no formula ever misses its names. A name that
 * an earlier sheet has points there until that sheet is refilled.
 */
function nameCells(
  { workbook }: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { names = [] }: SheetDescription,
  there: ReadonlySet<string>
): void {
  for (const { name, area } of names)
    if (!there.has(name.toLowerCase()))
      workbook.names.add(name, sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns))
}

/** Writes the looks, the cells and the names of a description onto a new, empty sheet. */
export async function writeCellsOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  description: SheetDescription,
  namesThere: ReadonlySet<string>,
  writing: Writing
): Promise<void> {
  const steps = [...formatSteps(sheet, description), ...sizeSteps(sheet, description)]
  for (let start = 0; start < steps.length; start += requestSteps) {
    for (const step of steps.slice(start, start + requestSteps)) step()
    await send(context, writing.signal)
  }
  await writeCells(context, sheet, description, writing)
  nameCells(context, sheet, description, namesThere)
}

/** Writes the formulas, which call the names of all the documents. */
export async function writeFormulasOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  description: SheetDescription,
  writing: Writing
): Promise<void> {
  await writeFormulas(sheet, description, () => send(context, writing.signal))
}
