/** The logo of a job and the photographs of trees, as they stand on the sheets of a workbook. */
import { groupProblems } from '../../shared/groupProblems'
import { fromBase64 } from '../../shared/pictures/base64'
import { faultWords, pictureOf, type StoredPicture } from '../../shared/pictures/storedPicture'
import { problem, type Problem } from '../../shared/problems'
import { cellAddress, type CellBlock } from '../../shared/cells'
import { readDetails } from '../details/readDetails'
import { namedPhotographs, treeInRows } from '../inventory/photographs'
import type { SheetCells } from '../inventory/survey/sheetCells'
import type { JobDetails } from '../details/detailsBook'
import type { Plan } from '../plan/plan'
import type { ChosenOffer } from '../price/offers'
import { photographed, type TreePhotographs } from '../sheets/client-report/photographs'
import { inExcel, isProblem } from './failures'

export interface PicturesRead {
  readonly logo: StoredPicture | null
  readonly photographs: TreePhotographs
  readonly problems: readonly Problem[]
}

export interface PicturesWanted {
  readonly plan: Plan
  readonly offer: ChosenOffer
  readonly details: JobDetails
  /** The Job details sheet, or null where there is none. */
  readonly detailsSheet: CellBlock | null
  /** The sheets of the inventory as they were read. */
  readonly sheets: readonly SheetCells[]
  /** Whether the client report is among the documents, which alone has photographs. */
  readonly report: boolean
}

interface Placed {
  readonly shape: Excel.Shape
  readonly sheet: string
}

/** Pictures asked for in one request: each comes as text, and a response may have 5 MB on the web. */
const atOnce = 5

/** The pictures on sheets, on each from the top down; sheets that are gone have none. */
async function picturesOn(context: Excel.RequestContext, names: readonly string[]): Promise<Placed[]> {
  const sheets = names.map((name) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name)
    return { name, sheet: sheet.load('name') }
  })
  await context.sync()
  const there = sheets.filter(({ sheet }) => !sheet.isNullObject)
  for (const { sheet } of there)
    sheet.shapes.load('items/type,items/visible,items/left,items/top,items/height')
  await context.sync()
  return there.flatMap(({ name, sheet }) =>
    sheet.shapes.items
      .filter(({ type, visible }) => type === 'Image' && visible)
      .sort((a, b) => a.top - b.top || a.left - b.left)
      .map((shape) => ({ shape, sheet: name }))
  )
}

/** The pictures of shapes, or why each cannot be used. */
async function imagesOf(
  context: Excel.RequestContext,
  shapes: readonly Excel.Shape[]
): Promise<(StoredPicture | string)[]> {
  const found: (StoredPicture | string)[] = []
  for (let start = 0; start < shapes.length; start += atOnce) {
    const images = shapes.slice(start, start + atOnce).map((shape) => shape.getAsImage('PNG'))
    await context.sync()
    for (const { value } of images) {
      const picture = pictureOf(fromBase64(value))
      found.push(typeof picture === 'string' ? faultWords[picture] : picture)
    }
  }
  return found
}

/** The row, from 0, in which each place stands, so many points below the top of its sheet. */
async function rowsAt(
  context: Excel.RequestContext,
  places: readonly { readonly sheet: string; readonly points: number; readonly rows: number }[]
): Promise<number[]> {
  const bounds = places.map(({ rows }) => ({ low: 0, high: Math.max(0, rows - 1) }))
  while (bounds.some(({ low, high }) => low < high)) {
    const middles = bounds.map(({ low, high }, at) => {
      const middle = Math.ceil((low + high) / 2)
      const sheet = context.workbook.worksheets.getItem(places[at]?.sheet ?? '')
      return { middle, range: sheet.getRangeByIndexes(middle, 0, 1, 1).load('top') }
    })
    await context.sync()
    middles.forEach(({ middle, range }, at) => {
      const bound = bounds[at]
      if (bound === undefined || bound.low >= bound.high) return
      if (range.top <= (places[at]?.points ?? 0)) bound.low = middle
      else bound.high = middle - 1
    })
  }
  return bounds.map(({ low }) => low)
}

/** A picture that was put a hair too high is still in the row below that it covers. */
const nearly = 3

async function photographsOf(
  context: Excel.RequestContext,
  { plan, offer, details, sheets, report }: PicturesWanted
): Promise<Pick<PicturesRead, 'photographs' | 'problems'>> {
  const { inventory } = plan
  const trees = report ? photographed(plan, offer, details) : new Set<string>()
  const photographs = new Map<string, StoredPicture>()
  const problems: Problem[] = []
  if (trees.size === 0) return { photographs, problems }
  const placed = await picturesOn(context, [...new Set(inventory.parts.map(({ sheet }) => sheet))])
  const last = new Map(sheets.map(({ name, top, rows }) => [name, top + rows.length]))
  const rows = await rowsAt(
    context,
    placed.flatMap(({ shape, sheet }) =>
      [shape.top + nearly, shape.top + shape.height - nearly].map((points) => ({
        sheet,
        points,
        rows: last.get(sheet) ?? 0
      }))
    )
  )
  const treeOf = treeInRows(inventory)
  const shapes = new Map<string, Placed & { readonly row: number }>()
  placed.forEach((each, at) => {
    const tree = treeOf(each.sheet, rows[2 * at] ?? 0, rows[2 * at + 1] ?? 0)
    if (tree !== null && trees.has(tree) && !shapes.has(tree))
      shapes.set(tree, { ...each, row: rows[2 * at] ?? 0 })
  })
  const images = await imagesOf(
    context,
    [...shapes.values()].map(({ shape }) => shape)
  )
  for (const [at, [tree, { sheet, row }]] of [...shapes].entries()) {
    const image = images[at] ?? faultWords.damaged
    if (typeof image !== 'string') photographs.set(tree, image)
    else
      problems.push(
        problem('photo-unusable', cellAddress(row, 0, sheet), {
          text: `on the sheet ${sheet}`,
          tree,
          why: image
        })
      )
  }
  const [named] = namedPhotographs(inventory, sheets, trees).filter(({ tree }) => !shapes.has(tree))
  if (named !== undefined) problems.push(problem('photo-files', named.cell, { text: named.file }))
  return { photographs, problems: [...groupProblems(problems)] }
}

async function logoOn(
  context: Excel.RequestContext,
  block: CellBlock | null
): Promise<Pick<PicturesRead, 'logo' | 'problems'>> {
  if (block === null) return { logo: null, problems: [] }
  const { sheet } = block
  const placed = await picturesOn(context, [sheet])
  const { logoFile, cells } = readDetails(block)
  if (placed.length === 0 && logoFile !== '')
    return {
      logo: null,
      problems: [problem('logo-unusable', cells.get('logo') ?? '', { text: logoFile, why: unopened })]
    }
  const [logo = null] = await imagesOf(
    context,
    placed.slice(0, 1).map(({ shape }) => shape)
  )
  const problems: Problem[] = []
  if (typeof logo === 'string')
    problems.push(problem('logo-unusable', '', { text: `on the sheet ${sheet}`, why: logo }))
  if (placed.length > 1) problems.push(problem('logo-several', '', { sheet, count: placed.length }))
  return { logo: typeof logo === 'string' ? null : logo, problems }
}

const unopened = 'is a file, which this pane cannot open'

/**
 * The picture on the Job details sheet and those in the rows of trees, as Excel gives them. What cannot be read is told, and
 * is no reason not to write: so is an Excel that gives no pictures (before ExcelApi 1.9), or refuses one.
 */
export async function readPictures(wanted: PicturesWanted): Promise<PicturesRead> {
  const none = { logo: null, photographs: new Map<string, StoredPicture>() }
  if (!Office.context.requirements.isSetSupported('ExcelApi', '1.9')) return { ...none, problems: [] }
  const logo = await inExcel((context) => logoOn(context, wanted.detailsSheet), { wait: true })
  const photographs = await inExcel((context) => photographsOf(context, wanted), { wait: true })
  const problems = [logo, photographs].flatMap((read) =>
    isProblem(read) ? [problem('pictures-unread', '', { text: read.message })] : read.problems
  )
  return {
    logo: isProblem(logo) ? null : logo.logo,
    photographs: isProblem(photographs) ? none.photographs : photographs.photographs,
    problems
  }
}
