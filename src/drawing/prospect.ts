import { defaultRules } from '../../shared/rules'
import type { TreePlan, Visit } from '../plan/plan'
import { altText } from './altText'
import type { TreeDrawingOptions } from './drawTree'
import { sceneOf } from './scene'
import type { Drawing } from './shapes'
import { captionHeight, footroom, headroom, legendHeight, margin, plotOf, treeHeight } from './treeLayout'

/** What is known of a tree's drawings before they are drawn. */
export interface Prospect {
  /** Pixels; the same before the visit and after it. */
  height: number
  /** Everything each drawing says, in words. */
  alt: Record<'before' | 'after', string>
}

/** A drawing of a tree without height holds a sentence only. */
const sentenceHeight = 80

/**
 * How high the drawings of a visit get within a wanted height, and their words, at a fraction of the cost of drawing. A tall
 * one takes all the height that its tree can fill.
 */
export function prospect(
  plan: TreePlan,
  visit: Visit | null,
  options: Pick<TreeDrawingOptions, 'width' | 'system' | 'rules' | 'brief'> & {
    most: number
    tall?: boolean
  }
): Prospect {
  const { width, system, most, rules = defaultRules, brief = false, tall = false } = options
  const scene = sceneOf(plan, visit)
  const words = (when: 'before' | 'after') =>
    altText(plan, visit, when, system, scene?.notDrawn ?? [], scene !== null)
  const alt = { before: words('before'), after: words('after') }
  if (scene === null) return { height: sentenceHeight, alt }
  const setting = { when: 'before', system, subordinateUpTo: rules.subordinateUpTo, brief } as const
  const below = legendHeight(scene, width - 2 * margin, setting)
  const comfortable =
    captionHeight + headroom + treeHeight(scene, width, tall ? most : undefined) + footroom + below + margin
  const wanted = Math.min(most, Math.ceil(comfortable))
  const plot = plotOf(width, wanted, below)
  return { height: Math.max(wanted, Math.ceil(plot.y + plot.height + footroom + below + margin)), alt }
}

/** The drawing on a larger sheet of paper of the given proportion, width over height, in its upper left corner. */
export function onPaperOf(drawing: Drawing, proportion: number): Drawing {
  const { width, height } = drawing
  return width / height < proportion
    ? { ...drawing, width: height * proportion }
    : { ...drawing, height: width / proportion }
}
