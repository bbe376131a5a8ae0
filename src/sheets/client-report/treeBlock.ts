import type { UnitSystem } from '../../../shared/units'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { showMoney } from '../../../shared/words/money'
import { treeTitle } from '../../plan/treeTitle'
import type { Plan } from '../../plan/plan'
import { numberedCuts } from '../../drawing/form/limbsAtVisit'
import { drawGain, gainWords } from '../../drawing/gain'
import { placesExplained } from '../../drawing/labels/letters'
import { columnPoints, pointsBetween, standardRow } from '../pageBreaks'
import { looks } from '../looks'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import type { SheetPicture } from '../sheet'
import type { ExplainedTree } from './chosenTrees'
import { whatItNeeds, whyItNeeds } from './clientReportWords'
import { priceOf } from './clientReportYears'
import { cutLine } from './cutWordsForClient'

/** Points of a page that a pixel of a drawing takes: its smallest letters, 9.5 pixels, are printed in 8 points. */
const pointsPerPixel = 0.85

/** Cuts listed below a drawing at most; the cut plan has them all. */
const mostListed = 12

/** Points of a drawing at least, so that it can still be read. */
const leastDrawn = 120

function facts({ tree, urgency, lines }: ExplainedTree, system: UnitSystem, offer: ChosenOffer): string {
  const { trunk, height } = tree.tree
  const price = `${showMoney(priceOf(lines, offer.minorDigits), offer.minorDigits)} ${offer.currency} before tax`
  return [
    urgency === null ? '' : `urgency ${urgency}`,
    trunk === null ? '' : `trunk ${showDiameter(trunk, system)}`,
    height === null ? '' : `height ${showHeight(height, system)}`,
    price
  ]
    .filter((fact) => fact !== '')
    .join(', ')
}

function picture(
  plan: Plan,
  { tree, visit }: ExplainedTree,
  draft: PrintedDraft,
  row: number,
  rows: number
): SheetPicture {
  const width = columnPoints(...draft.widths)
  const height = rows * standardRow
  const size = { width: width / pointsPerPixel, height: height / pointsPerPixel }
  const setting = { ...size, system: plan.system, palette: 'color' } as const
  const options = plan.rules === undefined ? setting : { ...setting, rules: plan.rules }
  return {
    area: { row, column: 0, rows, columns: draft.widths.length },
    width,
    height,
    get alt() {
      return gainWords(tree, visit, options)
    },
    draw: () => drawGain(tree, visit, options)
  }
}

function addCuts(draft: PrintedDraft, { visit }: ExplainedTree, system: UnitSystem): void {
  const numbered = numberedCuts(visit)
  for (const { number, cut } of numbered.slice(0, mostListed))
    draft.prose(cutLine(cut, system), {}, 1, String(number))
  const more = numbered.length - mostListed
  if (more > 0) draft.prose(`and ${String(more)} more, which the crew has in its order.`, {}, 1, null)
}

/**
 * One tree in a room of so many points: what it is, what it needs and why, its cuts as the drawing numbers them, and drawings
 * before and after with what is gained. The drawings take what is left of the room.
 */
export function addTreeBlock(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  explained: ExplainedTree,
  room: number
): SheetPicture {
  const { tree, visit } = explained
  const start = draft.next
  draft.prose(treeTitle(tree.tree), { ...looks.section, size: 12 })
  draft.prose(facts(explained, plan.system, offer), { ...looks.lead, size: draft.size })
  draft.prose(`${whatItNeeds(tree, plan.system, visit)} ${whyItNeeds(tree, visit)}`.trim())
  addCuts(draft, explained, plan.system)
  const names = placesExplained(tree)
  if (names !== '') draft.prose(`In the drawing ${names}.`, { ...looks.lead, size: draft.size })
  const left = room - pointsBetween(draft.heights, start, draft.next)
  const rows = Math.floor(Math.max(leastDrawn, left) / standardRow)
  const row = draft.next
  for (let count = 0; count < rows; count++) draft.blank()
  draft.height(row, rows, standardRow)
  return picture(plan, explained, draft, row, rows)
}
