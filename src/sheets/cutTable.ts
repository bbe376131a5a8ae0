import type { Cut, TreePlan, Visit } from '../plan/plan'
import type { Tree } from '../inventory/inventory'
import { systems, type UnitSystem } from '../../shared/units'
import { heightOfCut, largeCutMark, whatToDo } from './cutWords'
import type { TableColumn } from './draft'
import { inOrder } from './inOrder'
import { printedDiameter, printedHeight, printedLateral } from './printedLengths'
import type { Content } from './sheet'

/** Width of each column in characters. */
export const cutWidths = [16, 22, 6, 6, 8, 34, 10, 10, 10, 9, 9, 9, 9, 10, 11, 8, 10, 16, 48]

const tenth = { numberFormat: '0.0', align: 'right' } as const
/** Whole percent; below one percent with a decimal, so that a small dose does not read as none. */
const percent = { numberFormat: '[=0]0%;[<0.0095]0.0%;0%', align: 'right' } as const
const hundredth = { numberFormat: '0.00', align: 'right' } as const
const centred = { numberFormat: '0', align: 'center' } as const
const points = { numberFormat: '0', align: 'right' } as const

/** Headers with their units, and the look of each column. */
export function cutColumns(system: UnitSystem): TableColumn[] {
  const { diameter, height } = systems[system]
  return [
    { header: 'Tree', format: { bold: true, wrap: true } },
    { header: 'Species, location', format: { wrap: true } },
    { header: 'Visit', format: centred },
    { header: 'Year', format: centred },
    { header: 'Limb', format: { bold: true, wrap: true } },
    { header: 'What to do', format: { wrap: true } },
    { header: `Diameter of cut (${diameter})`, format: tenth },
    { header: `Least lateral to leave (${diameter})`, format: tenth },
    { header: `Height of cut (${height})`, format: tenth },
    { header: `Tip after (${height})`, format: tenth },
    { header: 'Dose of this cut', format: percent },
    { header: 'Dose of the visit', format: percent },
    { header: 'Allowed removal', format: percent },
    { header: 'Aspect ratio now', format: hundredth },
    { header: 'Aspect ratio at next visit', format: hundredth },
    { header: 'Priority now', format: points },
    { header: 'Priority at next visit', format: points },
    { header: 'Large cut', format: { wrap: true, align: 'center' } },
    { header: 'Why', format: { wrap: true } }
  ]
}

/** "Red maple, Gate lawn", or whichever of the two is known. */
export function describeTree(tree: Tree): string {
  return [tree.species, tree.site].filter((part) => part.trim() !== '').join(', ')
}

/** "Tree T02: Pin oak, Gate lawn", the heading of a part about one tree. */
export function treeTitle(tree: Tree): string {
  const about = describeTree(tree)
  return about === '' ? `Tree ${tree.id}` : `Tree ${tree.id}: ${about}`
}

/** What the rows of a tree have in common. */
interface Heading {
  id: string
  described: string
  system: UnitSystem
}

function cutRow({ id, described, system }: Heading, visit: Visit, cut: Cut): Content[] {
  const height = heightOfCut(cut)
  return [
    id,
    described,
    visit.visit,
    visit.year,
    cut.limb.id,
    whatToDo(cut),
    printedDiameter(cut.cutDiameter, system),
    cut.lateralMin === null ? null : printedLateral(cut.lateralMin, system),
    height === null ? null : printedHeight(height, system),
    cut.tipAfter === null ? null : printedHeight(cut.tipAfter, system),
    cut.dose,
    visit.dose,
    visit.allowedRemoval,
    cut.aspectRatio,
    cut.projectedAspectRatio,
    cut.priority,
    cut.nextPriority,
    largeCutMark(cut),
    cut.reason
  ]
}

const byPriority = (a: Cut, b: Cut): number => b.priority - a.priority || a.limb.row - b.limb.row

/** Adds the cuts of a tree in the order of work: by visit, then the most urgent limb first. Gives how many there are. */
export function addCutRows(
  rows: Content[][],
  { tree, visits }: TreePlan,
  system: UnitSystem,
  sources: { add(source: string): void }
): number {
  const before = rows.length
  const heading = { id: tree.id, described: describeTree(tree), system }
  for (const visit of visits)
    for (const cut of inOrder(visit.cuts, byPriority)) {
      rows.push(cutRow(heading, visit, cut))
      sources.add(cut.source)
    }
  return rows.length - before
}
