import type { UnitSystem } from '../../../shared/units'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { showMoney } from '../../../shared/words/money'
import { fitted, type StoredPicture } from '../../../shared/pictures/storedPicture'
import { treeTitle } from '../../plan/treeTitle'
import type { Plan } from '../../plan/plan'
import { drawPicture } from '../../drawing/drawPicture'
import { numberedCuts } from '../../drawing/form/limbsAtVisit'
import { drawGain, gainWords } from '../../drawing/gain'
import { placesExplained } from '../../drawing/labels/letters'
import { columns } from './reportGrid'
import { columnPoints, pointsBetween, standardRow } from '../pageBreaks'
import { looks } from '../looks'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import type { SheetPicture } from '../sheet'
import type { ExplainedTree } from './chosenTrees'
import { whatItNeeds, whyItNeeds } from './clientReportWords'
import type { TreePhotographs } from './photographs'
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

interface Place {
  readonly row: number
  readonly rows: number
  readonly photograph: StoredPicture | undefined
}

function picture(
  plan: Plan,
  explained: ExplainedTree,
  draft: PrintedDraft,
  { row, rows, photograph }: Place
): SheetPicture {
  const { tree, visit } = explained
  const width = columnPoints(...draft.widths)
  const height = rows * standardRow
  const size = { width: width / pointsPerPixel, height: height / pointsPerPixel }
  const setting = { ...size, system: plan.system, palette: 'color' } as const
  const options = {
    ...setting,
    ...(plan.rules === undefined ? {} : { rules: plan.rules }),
    ...(photograph === undefined ? {} : { photograph })
  }
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

interface BlockSetting {
  /** Points of the block. */
  readonly room: number
  readonly photographs: TreePhotographs
}

/** Points between the words and the photograph beside them, and of it down at least. */
const [besideWords, leastDown] = [8, 84]

/** What the tree is, what it needs and why. */
function addWords(draft: PrintedDraft, plan: Plan, offer: ChosenOffer, explained: ExplainedTree): void {
  const { tree, visit } = explained
  draft.prose(facts(explained, plan.system, offer), { ...looks.lead, size: draft.size })
  draft.prose(`${whatItNeeds(tree, plan.system, visit)} ${whyItNeeds(tree, visit)}`.trim())
}

/** Its cuts as the drawing numbers them, and what else the drawing says. */
function addLists(draft: PrintedDraft, plan: Plan, explained: ExplainedTree): void {
  const { tree } = explained
  addCuts(draft, explained, plan.system)
  const names = placesExplained(tree)
  if (names !== '') draft.prose(`In the drawing ${names}.`, { ...looks.lead, size: draft.size })
}

/** The same in fewer columns, with the photograph at their right: on half a page the drawing needs the whole width. */
function addWordsBeside(photograph: StoredPicture, draft: PrintedDraft, add: () => void, alt: string): void {
  const all = draft.measure
  const row = draft.next
  draft.measure = columns.urgency
  add()
  draft.measure = all
  const lacking = leastDown - pointsBetween(draft.heights, row, draft.next)
  if (lacking > 0) draft.air(Math.ceil(lacking))
  const across = columnPoints(...draft.widths.slice(columns.urgency))
  const size = fitted(photograph, {
    width: across - besideWords,
    height: pointsBetween(draft.heights, row, draft.next) - 4
  })
  draft.pictures.push({
    area: { row, column: columns.urgency, rows: draft.next - row, columns: all - columns.urgency },
    inset: across - size.width,
    ...size,
    alt,
    draw: () => drawPicture(photograph, { width: size.width * sharp, height: size.height * sharp }, alt)
  })
}

/** Pixels of a photograph in a point. */
const sharp = 1.5

/**
 * One tree in a room of so many points: what it is, what it needs and why, its cuts as the drawing numbers them, its photograph,
 * and drawings before and after with what is gained. The drawings take what is left of the room.
 */
export function addTreeBlock(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  explained: ExplainedTree,
  { room, photographs }: BlockSetting
): SheetPicture {
  const { tree, large } = explained
  const photograph = photographs.get(tree.tree.id)
  const start = draft.next
  draft.prose(treeTitle(tree.tree), { ...looks.section, size: 12 })
  const add = (): void => {
    addWords(draft, plan, offer, explained)
  }
  if (photograph === undefined || large) add()
  else addWordsBeside(photograph, draft, add, `Photograph of tree ${tree.tree.id}.`)
  addLists(draft, plan, explained)
  const left = room - pointsBetween(draft.heights, start, draft.next)
  const rows = Math.floor(Math.max(leastDrawn, left) / standardRow)
  const row = draft.next
  for (let count = 0; count < rows; count++) draft.blank()
  draft.height(row, rows, standardRow)
  return picture(plan, explained, draft, { row, rows, photograph: large ? photograph : undefined })
}
