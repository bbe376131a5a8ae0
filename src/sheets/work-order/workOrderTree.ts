import { showDiameter, showHeight, systems, type UnitSystem } from '../../../shared/units'
import type { Cut } from '../../plan/plan'
import { treeTitle } from '../cutTable'
import { heightOfCut } from '../cutWords'
import type { TableColumn } from '../draft'
import { palette } from '../../../shared/palette'
import type { PrintedDraft } from '../printedDraft'
import { printedDiameter, printedHeight, printedLateral } from '../printedLengths'
import { ceilingPercent, sentence } from '../sentences'
import { inOrder } from '../inOrder'
import type { Content } from '../sheet'
import type { Stop } from './workOrderDays'

/** Width of each column in characters; at one to one they fill a portrait page of either paper. */
export const orderWidths = [5, 5, 7, 24, 7.6, 7.6, 7.6, 7.6, 7.6, 7.6]

/** Where sentences start that have a label before them. */
const said = 3

const bold = { bold: true } as const
const plain = {} as const
const treeHeading = { bold: true, size: 14 } as const
const ruledOff = { underline: palette.ink } as const

const share = { numberFormat: '[=0]0%;[<0.0095]0.0%;0%', align: 'right' } as const
const tenth = { numberFormat: '0.0', align: 'right' } as const

function columnsOf(system: UnitSystem): TableColumn[] {
  const { diameter, height } = systems[system]
  return [
    { header: 'Done', format: { align: 'center' } },
    { header: 'Step', format: { numberFormat: '0', align: 'center' } },
    { header: 'Limb', format: { bold: true, wrap: true } },
    { header: 'What to do', format: { wrap: true } },
    { header: `Height of cut (${height})`, format: tenth },
    { header: 'Bearing from north', format: { numberFormat: '0"°"', align: 'right' } },
    { header: `Cut size (${diameter})`, format: tenth },
    { header: `Lateral at least (${diameter})`, format: tenth },
    { header: `All ends below (${height})`, format: { ...tenth, bold: true } },
    { header: 'Dose', format: share }
  ]
}

const columns: Record<UnitSystem, TableColumn[]> = {
  'in-ft': columnsOf('in-ft'),
  'cm-m': columnsOf('cm-m')
}

const clears = (cut: Cut): number => (!cut.live || cut.limb.broken ? 0 : 1)
const reached = (cut: Cut): number => heightOfCut(cut) ?? 0

/** Dead and broken wood first, then from the top down. */
export function inSequence(cuts: readonly Cut[]): readonly Cut[] {
  return inOrder(cuts, (a, b) => clears(a) - clears(b) || reached(b) - reached(a) || a.limb.row - b.limb.row)
}

/** Short, for the large type; what each word asks stands at the head of the order. */
function whatToDo(cut: Cut): string {
  const three = cut.marked ? ', 3 cuts' : ''
  if (!cut.live) return `Remove dead limb${three}`
  return cut.kind === 'remove' ? `Remove at collar${three}` : `Reduce to lateral${three}`
}

function cutRow(cut: Cut, index: number, system: UnitSystem): Content[] {
  const height = heightOfCut(cut)
  return [
    '☐',
    index + 1,
    cut.limb.id,
    whatToDo(cut),
    height === null ? null : printedHeight(height, system),
    cut.limb.bearing,
    printedDiameter(cut.cutDiameter, system),
    cut.lateralMin === null ? null : printedLateral(cut.lateralMin, system),
    cut.tipAfter === null ? null : printedHeight(cut.tipAfter, system),
    cut.dose
  ]
}

function about({ tree, visit, hours }: Stop, system: UnitSystem): string {
  const { height, access, clearance, clearanceSide } = tree.tree
  const side = clearanceSide === '' ? '' : ` on the side ${clearanceSide}`
  return [
    `Visit ${String(visit.visit)}`,
    hours === null ? 'no hours estimated' : `${hours.toFixed(2)} crew-hours`,
    ...(height === null ? [] : [`${showHeight(height, system)} high`]),
    `access ${access ?? 'open'}`,
    ...(clearance === null ? [] : [`clearance ${showHeight(clearance, system)}${side}`])
  ].join(', ')
}

/** The ceiling, and what the cuts are reckoned to take. */
function dose({ visit }: Stop): string {
  if (!visit.cuts.some(({ live }) => live)) return 'Dead wood only. No live wood is cut at this visit.'
  return `Not to exceed ${ceilingPercent(visit.allowedRemoval)} of live foliage; these cuts take ${ceilingPercent(visit.dose)}.`
}

function notes({ tree, visit }: Stop): string {
  return [
    tree.tree.notes,
    ...visit.cuts.map(({ limb }) => (limb.notes.trim() === '' ? '' : `Limb ${limb.id}: ${limb.notes}`))
  ]
    .filter((text) => text.trim() !== '')
    .map(sentence)
    .join(' ')
}

function addFacts(draft: PrintedDraft, stop: Stop, system: UnitSystem): void {
  const { leader } = stop.tree
  const name = leader.limb === null ? 'The trunk' : `Limb ${leader.limb.id}`
  const confirm = leader.confirm ? ' Confirm it on site before the first cut.' : ''
  draft.prose(`${name}: ${sentence(leader.reason)}${confirm}`, bold, said, 'Leader, not cut')
  draft.prose(dose(stop), bold, said, 'Total dose')
  draft.prose(`${about(stop, system)}.`, plain, said, 'Tree')
  const held = stop.visit.limbs.filter(({ decision }) => decision === 'hold')
  for (const { limb, reason } of held)
    draft.prose(`Limb ${limb.id}: ${sentence(reason)} The arborist decides.`, plain, said, 'On site')
  const noted = notes(stop)
  if (noted !== '') draft.prose(noted, plain, said, 'Notes')
}

/** The largest cuts are not made before somebody has written down why. */
function addReasons(draft: PrintedDraft, cuts: readonly Cut[], system: UnitSystem): void {
  for (const cut of cuts) {
    if (!cut.needsReason) continue
    const label = `Limb ${cut.limb.id} (${showDiameter(cut.cutDiameter, system)}), reason before the cut`
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
  const rows = cuts.map((cut, index) => cutRow(cut, index, system))
  draft.grid(columns[system], rows, 3)
  addReasons(draft, cuts, system)
  draft.toFill([{ label: 'Done otherwise', at: 0, from: 3, columns: 7 }])
}
