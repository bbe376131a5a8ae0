import type { Tree } from '../inventory/inventory'
import type { Rules } from '../../shared/rules'
import type { Limit } from '../../shared/words/rounding'
import { heightOfCut, largeCutMark, mustWords, whatToDo } from './cutWords'
import type { Cut, Visit } from './plan'
import { priorityWord } from './priorityWords'
import { shownDose, shownDoses } from './shownDoses'
import { describeTree } from './treeTitle'

/** What a row of a table of cuts is about. */
export interface CutRow {
  readonly tree: Tree
  readonly visit: Visit
  readonly cut: Cut
  /** The rules of the plan; the defaults where they are left out. */
  readonly rules?: Rules | undefined
}

/** What kind of value stands in a column, which decides its unit, its digits and its look. */
export type CutValue =
  'text' | 'name' | 'mark' | 'count' | 'diameter' | 'height' | 'bearing' | 'share' | 'ratio' | 'points'

/**
 * One column of a table of cuts: what it is called, what kind of value it has, and the value for a cut (mm, m, shares 0
 * to 1; null is blank). Every surface (cut plan, terminal, pane, LIMB.CUTPLAN) chooses among these by name
 * and decides how wide it is, nothing else.
 */
export interface CutColumn {
  readonly header: string
  /** Where there is less room: in a terminal, in the spilled table of LIMB.CUTPLAN. */
  readonly shorter?: { readonly terminal?: string; readonly formula?: string }
  readonly kind: CutValue
  /** The value is a limit, which its text never passes. */
  readonly limit?: Limit
  readonly of: (row: CutRow) => string | number | null
  /** What is shown for the value, where that depends on the other cuts of the visit. */
  readonly shown?: (row: CutRow) => number
}

export const cutColumns = {
  tree: { header: 'Tree', kind: 'name', of: ({ tree }) => tree.id },
  about: { header: 'Species, location', kind: 'text', of: ({ tree }) => describeTree(tree) },
  visit: { header: 'Visit', kind: 'count', of: ({ visit }) => visit.visit },
  year: { header: 'Year', kind: 'count', of: ({ visit }) => visit.year },
  limb: { header: 'Limb', kind: 'name', of: ({ cut }) => cut.limb.id },
  /** As in the drawing and on the work order. */
  number: { header: 'Cut', kind: 'count', of: ({ visit, cut }) => visit.cuts.indexOf(cut) + 1 },
  instruction: { header: 'What to do', kind: 'text', of: ({ cut }) => whatToDo(cut) },
  must: { header: 'Must', kind: 'text', of: ({ cut }) => mustWords(cut) },
  cut: {
    header: 'Do',
    shorter: { terminal: 'Cut' },
    kind: 'text',
    of: ({ cut }) => (cut.live ? cut.kind : 'remove, dead')
  },
  diameter: {
    header: 'Diameter of cut',
    shorter: { terminal: 'at', formula: 'Cut diameter' },
    kind: 'diameter',
    of: ({ cut }) => cut.cutDiameter
  },
  lateral: {
    header: 'Least lateral to leave',
    shorter: { terminal: 'lat.', formula: 'Least lateral' },
    kind: 'diameter',
    limit: 'at least',
    of: ({ cut }) => cut.lateralMin
  },
  height: {
    header: 'Height of cut',
    shorter: { terminal: 'cut' },
    kind: 'height',
    of: ({ cut }) => heightOfCut(cut)
  },
  bearing: { header: 'Bearing from north', kind: 'bearing', of: ({ cut }) => cut.limb.bearing },
  tip: {
    header: 'Tip after',
    shorter: { terminal: 'tip' },
    kind: 'height',
    limit: 'at most',
    of: ({ cut }) => cut.tipAfter
  },
  dose: {
    header: 'Foliage removed',
    shorter: { terminal: 'leaves' },
    kind: 'share',
    of: ({ cut }) => cut.dose,
    shown: ({ visit, cut }) => shownDose(visit, cut)
  },
  visitDose: {
    header: 'Foliage removed at the visit',
    kind: 'share',
    of: ({ visit }) => visit.dose,
    shown: ({ visit }) => shownDoses(visit).visit
  },
  allowed: {
    header: 'Allowed removal',
    kind: 'share',
    limit: 'at most',
    of: ({ visit }) => visit.allowedRemoval
  },
  ratio: {
    header: 'Aspect ratio now',
    shorter: { terminal: 'ratio' },
    kind: 'ratio',
    of: ({ cut }) => cut.aspectRatio
  },
  nextRatio: {
    header: 'Aspect ratio at next visit',
    kind: 'ratio',
    of: ({ cut }) => cut.projectedAspectRatio
  },
  priority: {
    header: 'Priority now',
    shorter: { terminal: 'priority' },
    kind: 'points',
    of: ({ cut }) => cut.priority
  },
  urgency: {
    header: 'Urgency',
    kind: 'text',
    of: ({ cut, rules }) => priorityWord(cut.priority, rules)
  },
  nextPriority: { header: 'Priority at next visit', kind: 'points', of: ({ cut }) => cut.nextPriority },
  large: { header: 'Large cut', kind: 'mark', of: ({ cut }) => largeCutMark(cut) },
  why: { header: 'Why', kind: 'text', of: ({ cut }) => cut.reason }
} as const satisfies Record<string, CutColumn>

export type CutColumnName = keyof typeof cutColumns
