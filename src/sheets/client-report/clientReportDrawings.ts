import { keepCompiled } from '../../../shared/keepCompiled'
import { byUrgency, type Plan, type TreePlan, type Visit } from '../../plan/plan'
import { chartsOf, courseCells, courseCharts, courseOf } from './clientReportCourse'
import { cutCells } from './clientReportCuts'
import { numberColumns, wordWidths } from './clientReportTrees'
import { treeTitle } from '../../plan/treeTitle'
import { cellFormats } from '../cellFormats'
import { drawBeforeAfter, notesRoom, widthOfEach } from '../../drawing/beforeAfter'
import { onPaperOf, prospect, type Prospect } from '../../drawing/prospect'
import { visitsIn, type ChosenOffer } from '../offered'
import { columnPoints, pageRoom, pointsBetween, standardRow } from '../pageBreaks'
import { looks } from '../looks'
import type { PrintedDraft } from '../printedDraft'
import type { Content, PageSetup, SheetChart, SheetPicture } from '../sheet'
import { foldText } from '../../../shared/folding'

/** Trees drawn at most: each takes a page and the time to paint its picture. */
export const mostDrawn = 60

/** Pixels that the two drawings are laid out in; they are printed as wide as their columns. */
const drawnWidth = 584

/** Where the charts and their figures stand; the drawings and the cuts stand before. */
const right = wordWidths.length
/** The figures leave a column free beside the cuts. */
const figuresFrom = right + 1
/** Rows of a chart at most, and where it stands alone. */
const chartRows = 12
const loneChartRows = 16
/** Characters of the sentence below the figures that fit on a line. */
const noteWidth = 54

const forecastNote =
  'Years after the first visit are a forecast by the growth rules of the plan. The tree is measured again before each of them.'

interface Drawn {
  tree: TreePlan
  visit: Visit
}

export interface DrawnPages {
  pictures: SheetPicture[]
  charts: SheetChart[]
}

/** Before and after as one picture over the columns of words. Nothing is laid out before somebody wants it. */
function picture(plan: Plan, { tree, visit }: Drawn, row: number, rows: number): SheetPicture {
  const width = columnPoints(...wordWidths)
  const height = rows * standardRow
  const most = Math.floor((height * drawnWidth) / width)
  const setting = { system: plan.system, rules: plan.rules }
  let known: Prospect | undefined
  const ahead = () =>
    (known ??= prospect(tree, visit, {
      ...setting,
      width: widthOfEach(drawnWidth),
      most: most - notesRoom,
      brief: true,
      tall: true
    }))
  return {
    area: { row, column: 0, rows, columns: wordWidths.length },
    width,
    height,
    get alt() {
      return `${ahead().alt.before} ${ahead().alt.after}`
    },
    draw: () => {
      const pair = {
        ...setting,
        width: drawnWidth,
        height: ahead().height + notesRoom,
        palette: 'color'
      } as const
      return onPaperOf(drawBeforeAfter(tree, visit, pair), width / height)
    }
  }
}

/** Cells of a page, put where they belong before the page is set row by row. */
class PageCells {
  readonly rows: Content[][]
  constructor(count: number, columns: number) {
    this.rows = Array.from({ length: count }, () => Array<Content>(columns).fill(null))
  }

  put(row: number, column: number, cells: readonly Content[]): void {
    cells.forEach((cell, index) => {
      const line = this.rows[row]
      if (line !== undefined) line[column + index] = cell
    })
  }
}

keepCompiled(new PageCells(1, 1))

/** Where the parts of a tree's page stand: the cuts at its foot, the figures below as many charts as there are. */
function layOut(count: number, cuts: number, charts: number, figures: number) {
  const most = charts === 1 ? loneChartRows : chartRows
  const room = count - figures - 1
  const chart = charts === 0 ? 0 : Math.min(most, Math.floor(room / charts))
  return { cutsAt: count - cuts, pictureRows: count - cuts - 1, chart, figuresAt: charts * chart + 1 }
}

/** One tree over the rows of a page: drawings and cuts on the left, charts and their figures on the right. */
function addTree(draft: PrintedDraft, plan: Plan, drawn: Drawn, count: number): DrawnPages {
  const course = courseOf(drawn.tree, plan)
  const cuts = cutCells(drawn.visit, plan.system)
  const figures = courseCells(course)
  const notes = foldText(forecastNote, noteWidth)
  const lines = [...figures.heads, ...figures.body, ...notes.map((line): Content[] => [line])]
  const { cutsAt, pictureRows, chart, figuresAt } = layOut(count, cuts.length, chartsOf(course), lines.length)
  const top = draft.next
  const cells = new PageCells(count, draft.widths.length)
  cuts.forEach((line, index) => {
    cells.put(cutsAt + index, 0, line)
  })
  lines.forEach((line, index) => {
    cells.put(figuresAt + index, figuresFrom, line)
  })
  for (const row of cells.rows) draft.line(row, draft.body)
  draft.height(top, count, standardRow)
  setLooks(draft, top + cutsAt, cuts.length, top + figuresAt, figures.body.length, notes.length)
  const first = { row: top + figuresAt + figures.heads.length, column: figuresFrom }
  return {
    pictures: [picture(plan, drawn, top, pictureRows)],
    charts: courseCharts(course, first, { row: top, column: right, rows: chart, columns: numberColumns })
  }
}

function setLooks(
  draft: PrintedDraft,
  cuts: number,
  cutRows: number,
  figures: number,
  years: number,
  notes: number
): void {
  const header = { bold: true, size: 9, fill: looks.header.fill }
  draft.format(cuts, 0, 1, right, { ...header, underline: looks.header.underline })
  draft.format(cuts + 1, 0, cutRows - 1, 1, { bold: true, align: 'left' })
  const at = figuresFrom
  draft.format(figures, at, 2, 5, header)
  draft.format(figures + 1, at, 1, 5, { underline: looks.header.underline, align: 'right' })
  draft.format(figures, at, 2, 1, { align: 'left' })
  draft.format(figures + 2, at, years, 1, { ...cellFormats.whole, align: 'left', bold: true })
  draft.format(figures + 2, at + 1, years, 2, cellFormats.share)
  draft.format(figures + 2, at + 3, years, 2, cellFormats.wholeShare)
  draft.format(figures + 2 + years, at, notes, 1, { ...looks.lead, size: 9 })
}

/** The first visit with cuts of each tree that is offered, the most urgent trees first. */
function offeredTrees(plan: Plan, offer: ChosenOffer): Drawn[] {
  const offered = visitsIn(offer)
  return byUrgency(plan).flatMap((tree): Drawn[] => {
    const visit = tree.visits.find(({ cuts }) => cuts.length > 0)
    return visit === undefined || !offered(tree.tree.id, visit.visit) ? [] : [{ tree, visit }]
  })
}

/** What the pages of the trees are, a sentence each; nothing where there are none. */
export function aboutDrawings(plan: Plan, offer: ChosenOffer): string[] {
  const count = offeredTrees(plan, offer).length
  if (count === 0) return []
  const what =
    'Each tree has a page: side views before and after its first visit, made from the measurements and no portraits, with its cuts numbered; and charts of what comes off at each visit and of the limb that needs it most.'
  if (count <= mostDrawn) return [what]
  return [
    what,
    `Drawn are the ${String(mostDrawn)} most urgent of the ${String(count)} trees with cuts; the table has them all.`
  ]
}

/** One page per tree that is offered: before and after its first visit, its cuts, and how it goes on. */
export function addDrawings(
  draft: PrintedDraft,
  plan: Plan,
  page: Pick<PageSetup, 'paper' | 'orientation'>,
  offer: ChosenOffer
): DrawnPages {
  const trees = offeredTrees(plan, offer)
  const pages: DrawnPages = { pictures: [], charts: [] }
  const room = pageRoom(page, draft.widths)
  for (const drawn of trees.slice(0, mostDrawn)) {
    const start = draft.next
    draft.newPage()
    draft.heading(treeTitle(drawn.tree.tree))
    const used = pointsBetween(draft.heights, start, draft.next)
    const { pictures, charts } = addTree(draft, plan, drawn, Math.floor((room - used) / standardRow))
    pages.pictures.push(...pictures)
    pages.charts.push(...charts)
  }
  return pages
}
