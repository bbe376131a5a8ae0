import type { UnitSystem } from '../../../shared/units'
import { hours as hoursText } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { percent } from '../../../shared/words/percent'
import { closed } from '../../../shared/words/sentences'
import type { CutRow } from '../../plan/cutColumns'
import { heightOfCut } from '../../plan/cutWords'
import { judgedWords, notJudgedLimbs } from '../../plan/judged'
import { scaffoldSentence } from '../../plan/scaffold/scaffoldWords'
import type { Cut } from '../../plan/plan'
import { shownDoses } from '../../plan/shownDoses'
import { treeTitle } from '../../plan/treeTitle'
import { cellFormats } from '../cellFormats'
import { cellsOf, headersOf, widthsOf, type Column } from '../columns'
import { columnsOfCuts, type CutLayout } from '../cutTable'
import type { TableColumn } from '../draft'
import { palette } from '../../../shared/palette'
import type { PrintedDraft } from '../printedDraft'
import { inOrder } from '../inOrder'
import type { Stop } from './workOrderDays'

/** The crew's table: at one to one it fills a portrait page of either paper. */
const layout = [
  ['limb', 7],
  ['must', 8.7],
  ['shortInstruction', 24],
  ['height', 6.1],
  ['bearing', 6],
  ['diameter', 6.1],
  ['lateral', 6.1],
  ['tip', 6.1, 'bold'],
  ['dose', 6.1]
] as const satisfies CutLayout

/** A cut with its place in the sequence, from 1. */
interface Step extends CutRow {
  step: number
}

function columnsOf(system: UnitSystem): Column<Step>[] {
  return [
    { header: 'Done', width: 5, format: { align: 'center' }, of: () => '☐' },
    { header: 'Step', width: 5, format: cellFormats.centered, of: ({ step }) => step },
    ...columnsOfCuts(layout, system, 'order')
  ]
}

const columns: Record<UnitSystem, Column<Step>[]> = {
  'in-ft': columnsOf('in-ft'),
  'cm-m': columnsOf('cm-m')
}

/** The same columns stand below every tree. */
const headers: Record<UnitSystem, TableColumn[]> = {
  'in-ft': headersOf(columns['in-ft']),
  'cm-m': headersOf(columns['cm-m'])
}

/** Width of each column in characters. */
export const orderWidths = widthsOf(columns['in-ft'])

/** Where sentences start that have a label before them. */
const said = 3

const bold = { bold: true } as const
const plain = {} as const
const treeHeading = { bold: true, size: 14 } as const
const ruledOff = { underline: palette.ink } as const

const clears = (cut: Cut): number => (!cut.live || cut.obligation === 'broken' ? 0 : cut.must ? 1 : 2)
const reached = (cut: Cut): number => heightOfCut(cut) ?? cut.work.height ?? 0

/** Dead and broken wood first, then what must be done, then the rest if time allows; each from the top down. */
export function inSequence(cuts: readonly Cut[]): readonly Cut[] {
  return inOrder(cuts, (a, b) => clears(a) - clears(b) || reached(b) - reached(a) || a.limb.row - b.limb.row)
}

function about({ tree, visit, hours }: Stop, system: UnitSystem): string {
  const { height, access, clearance, clearanceSide } = tree.tree
  const side = clearanceSide === null ? '' : ` on the side ${clearanceSide.text}`
  return [
    `Visit ${String(visit.visit)}`,
    `${hoursText(hours)} crew-hours`,
    ...(height === null ? [] : [`${showHeight(height, system)} high`]),
    `access ${access ?? 'open'}`,
    ...(clearance === null ? [] : [`clearance ${showHeight(clearance, system, 'at least')}${side}`])
  ].join(', ')
}

/** The ceiling, and what the cuts are computed to take. */
function foliage({ visit }: Stop): string {
  if (!visit.cuts.some(({ live }) => live)) return 'Dead wood only. No live wood is cut at this visit.'
  const { allowed, visit: taken } = shownDoses(visit)
  return `Not to exceed ${percent(allowed)} of live foliage; these cuts take ${percent(taken)}.`
}

function notes({ tree, visit }: Stop): string {
  return [
    tree.tree.notes,
    ...visit.cuts.map(({ limb }) => (limb.notes.trim() === '' ? '' : `Limb ${limb.id}: ${limb.notes}`))
  ]
    .filter((text) => text.trim() !== '')
    .map(closed)
    .join(' ')
}

function addFacts(draft: PrintedDraft, stop: Stop, system: UnitSystem): void {
  const { leader } = stop.tree
  const name = leader.limb === null ? 'The trunk' : `Limb ${leader.limb.id}`
  const confirm = leader.confirm ? ' Confirm it on site before the first cut.' : ''
  draft.prose(`${name}: ${closed(leader.reason)}${confirm}`, bold, said, 'Leader, not cut')
  draft.prose(foliage(stop), bold, said, 'Foliage')
  draft.prose(`${about(stop, system)}.`, plain, said, 'Tree')
  const scaffold = scaffoldSentence(stop.tree)
  if (scaffold !== '') draft.prose(scaffold, plain, said, 'Scaffold')
  if (stop.tree.notJudged.length > 0)
    draft.prose(
      `${judgedWords(stop.tree)}: leave ${notJudgedLimbs(stop.tree)} and survey again.`,
      plain,
      said,
      'Not judged'
    )
  const held = stop.visit.limbs.filter(({ decision }) => decision === 'hold')
  for (const { limb, reason } of held)
    draft.prose(`Limb ${limb.id}: ${closed(reason)} The arborist decides.`, plain, said, 'On site')
  const noted = notes(stop)
  if (noted !== '') draft.prose(noted, plain, said, 'Notes')
}

/** The largest cuts are not made before somebody has written down why. */
function addReasons(draft: PrintedDraft, cuts: readonly Cut[], system: UnitSystem): void {
  for (const cut of cuts) {
    if (!cut.needsReason) continue
    const label = `Limb ${cut.limb.id} (${showDiameter(cut.cutDiameter ?? 0, system)}), reason before the cut`
    draft.toFill([{ label, at: 0, from: 4, columns: 6 }])
  }
}

/** One tree of the round: what it is, what bounds the work, its cuts in order. */
export function addStop(draft: PrintedDraft, stop: Stop, system: UnitSystem): void {
  const { tree, visit } = stop
  draft.keepTogether()
  draft.blank()
  draft.prose(treeTitle(tree.tree), treeHeading)
  draft.format(draft.next - 1, 0, 1, draft.widths.length, ruledOff)
  addFacts(draft, stop, system)
  const cuts = inSequence(visit.cuts)
  const rows = cuts.map((cut, index) =>
    cellsOf(columns[system], { tree: tree.tree, visit, cut, step: index + 1 })
  )
  draft.grid(headers[system], rows, 3)
  addReasons(draft, cuts, system)
  draft.toFill([{ label: 'Done otherwise', at: 0, from: 3, columns: 7 }])
}
