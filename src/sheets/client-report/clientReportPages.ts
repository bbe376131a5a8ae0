import type { JobDetails } from '../../details/detailsBook'
import type { Plan } from '../../plan/plan'
import type { ChosenOffer } from '../offered'
import { pageRoom, pointsBetween } from '../pageBreaks'
import { looks } from '../looks'
import type { PrintedDraft } from '../printedDraft'
import type { PageSetup } from '../sheet'
import { chosenTrees, packed } from './chosenTrees'
import type { TreePhotographs } from './photographs'
import type { ReportedTree } from './reportedTrees'
import { addTreeBlock } from './treeBlock'

/** Points between two trees on a page. */
const apart = 14

const howToRead =
  'Side views looking north, made from the measurements and no portraits: west is left, east is right. What comes off is dotted and ticked; a bar with a number is a cut of the list; the shaded band is the upper third of the crown. Bars: today, after the work, and left alone, against the goal.'

/** What the pages of the trees are; nothing where there are none. */
function aboutPages(draft: PrintedDraft, shown: number, offered: number): void {
  const which =
    shown === offered
      ? ''
      : ` Shown are ${String(shown)} of the ${String(offered)} trees that are offered, chosen by urgency and price; pages for the others are made on request.`
  draft.heading('The trees that need explaining')
  draft.prose(howToRead + which, { ...looks.lead, size: draft.size })
  draft.air()
}

interface TreePages {
  readonly page: Pick<PageSetup, 'paper' | 'orientation' | 'margins'>
  readonly details: Pick<JobDetails, 'treePages'>
  readonly photographs: TreePhotographs
}

/** Two small trees a page, or a large one: what each needs and why, before and after, and what is gained. */
export function addTreePages(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  trees: readonly ReportedTree[],
  { page, details, photographs }: TreePages
): void {
  const chosen = chosenTrees(trees, offer, details)
  if (chosen.length === 0) return
  const offered = trees.filter(({ lines }) => lines.length > 0).length
  const room = pageRoom(page, draft.widths)
  packed(chosen).forEach((onPage, index) => {
    const start = draft.next
    draft.newPage()
    if (index === 0) aboutPages(draft, chosen.length, offered)
    const left = room - pointsBetween(draft.heights, start, draft.next)
    const halves = onPage.every(({ large }) => !large)
    const each = halves ? (left - apart) / 2 : left
    onPage.forEach((tree, place) => {
      if (place > 0) draft.air(apart)
      draft.pictures.push(addTreeBlock(draft, plan, offer, tree, { room: each, photographs }))
    })
  })
}
