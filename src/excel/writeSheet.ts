import type { Area } from '../../shared/cells'
import type { Content, Format, SheetDescription } from '../sheets/sheet'
import { columnPoints } from '../sheets/pageBreaks'
import { typedText } from '../sheets/typedText'
import type { DrawingPainter } from '../drawing/paint/painter'
import { addTables, setUpPage } from './pageAndTables'
import { addCellRules } from './writeCellRules'
import { addConditionalLooks } from './writeConditionalLooks'
import { addCharts } from './writeCharts'
import { writeFormulas } from './writeFormulas'
import { cellsAPicture, writePictures } from './writePictures'

/** Rough size of one request in characters; Excel on the web takes at most 5 MB. */
const requestCharacters = 1_000_000
/** Operations in one request. */
const requestSteps = 400

export interface Writing {
  signal?: AbortSignal | undefined
  /** Needed where a sheet has pictures. */
  painter?: DrawingPainter | undefined
  /** Told after each request how many of its share of steps are done. */
  onStep?: ((cells: number) => void) | undefined
}

/** Sends what has been asked for so far, without the screen following every step. */
async function send(context: Excel.RequestContext, signal: AbortSignal | undefined): Promise<void> {
  signal?.throwIfAborted()
  context.application.suspendScreenUpdatingUntilNextSync()
  await context.sync()
}

function typed(content: Content): string | number | boolean | null {
  if (content === null || content === '') return null
  if (typeof content === 'string') return typedText(content)
  if (typeof content === 'number') return Number.isFinite(content) ? content : null
  if (typeof content === 'boolean') return content
  return 'date' in content ? content.date : null
}

/** Text, numbers and dates in bands of rows. A blank is left alone: the sheet is new. */
async function writeCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { rows, widths }: SheetDescription,
  { signal, onStep }: Writing
): Promise<void> {
  for (let start = 0; start < rows.length;) {
    const band: ReturnType<typeof typed>[][] = []
    for (let size = 0; start + band.length < rows.length && size < requestCharacters;) {
      const cells = rows[start + band.length] ?? []
      const row = widths.map((_, column) => typed(cells[column] ?? null))
      for (const cell of row) size += typeof cell === 'string' ? cell.length + 3 : 12
      band.push(row)
    }
    sheet.getRangeByIndexes(start, 0, band.length, widths.length).values = band
    await send(context, signal)
    onStep?.(band.length * widths.length)
    start += band.length
  }
}

const horizontal = { left: 'Left', center: 'Center', right: 'Right' } as const
const vertical = { top: 'Top', middle: 'Center', bottom: 'Bottom' } as const

function applyFormat(sheet: Excel.Worksheet, area: Area, format: Format): void {
  const range = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns)
  const { font, fill } = range.format
  if (format.bold !== undefined) font.bold = format.bold
  if (format.italic !== undefined) font.italic = format.italic
  if (format.size !== undefined) font.size = format.size
  if (format.color !== undefined) font.color = format.color
  if (format.fill !== undefined) fill.color = format.fill
  if (format.align !== undefined) range.format.horizontalAlignment = horizontal[format.align]
  if (format.vertical !== undefined) range.format.verticalAlignment = vertical[format.vertical]
  if (format.wrap !== undefined) range.format.wrapText = format.wrap
  // One value alone stands for every cell of the range.
  if (format.numberFormat !== undefined) range.numberFormat = format.numberFormat as never
  if (format.underline === undefined) return
  const last = sheet.getRangeByIndexes(area.row + area.rows - 1, area.column, 1, area.columns)
  const edge = last.format.borders.getItem('EdgeBottom')
  edge.style = 'Continuous'
  edge.color = format.underline
}

async function writeFormats(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { formats, widths, heights }: SheetDescription,
  { signal }: Writing
): Promise<void> {
  const steps = [
    ...formats.map(({ area, format }) => () => {
      applyFormat(sheet, area, format)
    }),
    ...widths.map((width, column) => () => {
      sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = columnPoints(width)
    }),
    ...heights.map(({ row, rows, points }) => () => {
      sheet.getRangeByIndexes(row, 0, rows, 1).format.rowHeight = points
    })
  ]
  for (let start = 0; start < steps.length; start += requestSteps) {
    for (const step of steps.slice(start, start + requestSteps)) step()
    await send(context, signal)
  }
}

/** Names the cells that formulas call; they come before the formulas, so that no formula ever misses its names. */
function nameCells(
  { workbook }: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { names = [] }: SheetDescription
): void {
  for (const { name, area } of names)
    workbook.names.add(name, sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns))
}

/** Writes the looks, the cells and the names of a description onto a new, empty sheet. */
export async function writeCellsOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  description: SheetDescription,
  writing: Writing
): Promise<void> {
  await writeFormats(context, sheet, description, writing)
  await writeCells(context, sheet, description, writing)
  nameCells(context, sheet, description)
}

/** Writes the formulas and all that goes by cells. Its tables get their names later, when these are free. */
export async function completeSheet(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  description: SheetDescription,
  writing: Writing
): Promise<void> {
  await writeFormulas(sheet, description, () => send(context, writing.signal))
  addTables(sheet, description)
  addCellRules(sheet, description)
  addConditionalLooks(sheet, description)
  addCharts(sheet, description)
  setUpPage(sheet, description)
  await send(context, writing.signal)
  await writePictures(sheet, description, writing.painter, requestCharacters, async (written) => {
    await send(context, writing.signal)
    writing.onStep?.(written * cellsAPicture)
  })
}
