import { defaultRules, type Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import type { TreePlan, Visit } from '../plan/plan'
import { altText } from './altText'
import { gainChart, gainOf } from './charts/gainChart'
import { drawTree } from './drawTree'
import { sceneOf } from './scene'
import type { Drawing, DrawingPalette } from './shapes'
import { oneBelow, sideBySide } from './sideBySide'

export interface GainOptions {
  /** Pixels of all that is drawn. */
  width: number
  height: number
  system: UnitSystem
  palette: DrawingPalette
  rules?: Rules
}

/** Pixels between the parts. */
const apart = 10
/** Pixels of a panel of the chart across, and of the chart's height where it stands below the trees. */
const panelWidth = 146
const panelHeight = 176

/** Everything that `drawGain` shows, in words. */
export function gainWords(
  plan: TreePlan,
  visit: Visit,
  { system, rules = defaultRules }: GainOptions
): string {
  const scene = sceneOf(plan, visit)
  const words = (['before', 'after'] as const).map((when) =>
    altText(plan, visit, when, system, scene?.notDrawn ?? [], scene !== null)
  )
  return [...words, gainOf(plan, visit, system, rules)?.alt ?? ''].filter((text) => text !== '').join(' ')
}

/** The tree before and after, on one ground and at one scale. */
function pairOf(plan: TreePlan, visit: Visit, options: GainOptions): Drawing {
  const each = { ...options, width: (options.width - apart) / 2, bare: true }
  return sideBySide(
    drawTree(plan, visit, { ...each, when: 'before' }),
    drawTree(plan, visit, { ...each, when: 'after' }),
    apart
  )
}

/**
 * A tree before and after a visit, and what the visit gains for the limb that needs it most: beside the trees, or below them
 * where the room is high. What the parts mean, the cuts and the notes are listed elsewhere.
 */
export function drawGain(plan: TreePlan, visit: Visit, options: GainOptions): Drawing {
  const { width, height, system, palette, rules = defaultRules } = options
  const gain = gainOf(plan, visit, system, rules)
  if (gain === null) return { ...pairOf(plan, visit, options), width, height }
  const below = height > width
  const trees = below
    ? { ...options, height: height - panelHeight - apart }
    : { ...options, width: width - panelWidth - apart }
  const pair = pairOf(plan, visit, trees)
  const room = below ? { width, height: panelHeight } : { width: panelWidth, height }
  const chart = gainChart(gain, { ...room, palette, beside: below })
  const whole = below ? oneBelow(pair, chart, apart) : sideBySide(pair, chart, apart)
  return { ...whole, width, height }
}
