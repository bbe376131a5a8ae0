import { byUrgency, type Plan, type TreePlan, type Visit } from '../arbor/plan/plan'
import { drawTree } from './drawing/drawTree'
import { onPaperOf, prospect, type Prospect } from './drawing/prospect'
import { pageRoom } from './pageBreaks'
import type { PrintedDraft } from './printedDraft'
import type { Area, PageSetup, SheetPicture } from './sheet'

/** Trees drawn at most: each takes a page and the time to paint two pictures. */
export const mostDrawn = 60

/** Pixels that a drawing is laid out in; it is then printed larger, so that its small print can be read. */
const drawnWidth = 370
const rowPoints = 15
/** Columns of the left picture; a narrow column keeps it apart from the right one. */
const leftColumns = 4

/** Points of so many columns: 7 pixels a character and 5 a column, 96 to 72. */
function pointsOf(widths: readonly number[]): number {
  return widths.reduce((sum, width) => sum + (width * 7 + 5) * 0.75, 0)
}

/** The columns of the right picture: as many as come nearest to the width of the left one. */
function rightColumns(widths: readonly number[]): number {
  const rest = widths.slice(leftColumns + 1)
  const wanted = pointsOf(widths.slice(0, leftColumns))
  const gap = (count: number) => Math.abs(pointsOf(rest.slice(0, count)) - wanted)
  return rest.reduce((best, _, index) => (gap(index + 1) < gap(best) ? index + 1 : best), 1)
}

interface Pair {
  tree: TreePlan
  visit: Visit
}

/** Each pair fills a page, so that nothing has to be laid out before somebody wants the pictures. */
function pictures(draft: PrintedDraft, plan: Plan, { tree, visit }: Pair, most: number): SheetPicture[] {
  const right = rightColumns(draft.widths)
  const sides = [
    { when: 'before', column: 0, columns: leftColumns },
    { when: 'after', column: leftColumns + 1, columns: right }
  ] as const
  const wide = sides.map(({ column, columns }) => pointsOf(draft.widths.slice(column, column + columns)))
  const pointsPerPixel = Math.min(...wide) / drawnWidth
  const rows = Math.floor(most / rowPoints)
  const height = rows * rowPoints
  const setting = { width: drawnWidth, system: plan.system, rules: plan.rules }
  let known: Prospect | undefined
  const ahead = () =>
    (known ??= prospect(tree, visit, { ...setting, most: Math.floor(height / pointsPerPixel) }))
  const row = draft.next
  for (let index = 0; index < rows; index++) draft.blank()
  draft.height(row, rows, rowPoints)
  return sides.map(({ when, column, columns }, index): SheetPicture => {
    const area: Area = { row, column, rows, columns }
    const width = wide[index] ?? 0
    const drawn = () => drawTree(tree, visit, { ...setting, height: ahead().height, when, palette: 'color' })
    return {
      area,
      width,
      height,
      get alt() {
        return ahead().alt[when]
      },
      draw: () => onPaperOf(drawn(), width / height)
    }
  })
}

/** Two drawings a tree side by side, before and after its first visit with cuts; the most urgent trees first. */
export function addDrawings(
  draft: PrintedDraft,
  plan: Plan,
  page: Pick<PageSetup, 'paper' | 'orientation'>
): SheetPicture[] {
  const pairs = byUrgency(plan).flatMap((tree): Pair[] => {
    const visit = tree.visits.find(({ cuts }) => cuts.length > 0)
    return visit === undefined ? [] : [{ tree, visit }]
  })
  if (pairs.length === 0) return []
  const start = draft.next
  draft.newPage()
  draft.heading('The trees before and after their first visit')
  draft.prose(
    'Side views made from the measurements, not portraits. On the left the cuts are marked and numbered, on the right is what should be left after them.'
  )
  if (pairs.length > mostDrawn)
    draft.prose(
      `Drawn are the ${String(mostDrawn)} most urgent of the ${String(pairs.length)} trees with cuts; the table has them all.`
    )
  const heading = (draft.next - start) * 20
  const most = pageRoom(page, draft.widths) - heading
  return pairs.slice(0, mostDrawn).flatMap((pair) => {
    draft.keepTogether()
    return pictures(draft, plan, pair, most)
  })
}
