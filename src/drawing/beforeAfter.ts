import { defaultRules } from '../../shared/rules'
import type { TreePlan, Visit } from '../plan/plan'
import { drawTree, type TreeDrawingOptions } from './drawTree'
import { noteLines, textBlock } from './labels/legend'
import { sceneOf } from './scene'
import type { Drawing } from './shapes'
import { sideBySide } from './sideBySide'
import { legendHeight, margin, plotOf, scaleFor } from './treeLayout'

/** Pixels between the two trees. */
const apart = 14

export type PairOptions = Omit<TreeDrawingOptions, 'width' | 'when' | 'brief'> & {
  /** Pixels of both together. */
  width: number
}

/** Pixels that each tree of a pair has. */
export function widthOfEach(width: number): number {
  return (width - apart) / 2
}

/** What both drawings take for granted, in lines as wide as the pair. */
function notesBelow(plan: TreePlan, visit: Visit, height: number, options: PairOptions): string[] {
  const scene = sceneOf(plan, visit)
  if (scene === null) return []
  const { system, rules = defaultRules } = options
  const width = widthOfEach(options.width)
  const setting = { when: 'before', system, subordinateUpTo: rules.subordinateUpTo, brief: true } as const
  const below = legendHeight(scene, width - 2 * margin, setting)
  return noteLines(scene, scaleFor(scene, plotOf(width, height, below)), options.width - 2 * margin)
}

/** Room below the two trees for what they take for granted; more where that is long. */
export const notesRoom = 44

/**
 * A tree before and after a visit, side by side and at one scale, with one set of notes below both. The cuts are numbered
 * and listed elsewhere.
 */
export function drawBeforeAfter(plan: TreePlan, visit: Visit, options: PairOptions): Drawing {
  const height = options.height - notesRoom
  const each = { ...options, width: widthOfEach(options.width), height, brief: true }
  const pair = sideBySide(
    drawTree(plan, visit, { ...each, when: 'before' }),
    drawTree(plan, visit, { ...each, when: 'after' }),
    apart
  )
  const lines = notesBelow(plan, visit, height, options)
  const notes = textBlock(lines, { x: margin, y: pair.height + 2 }, 'note')
  const room = Math.max(notesRoom, Math.ceil(notes.height) + margin)
  return { ...pair, height: pair.height + room, shapes: [...pair.shapes, ...notes.shapes] }
}
