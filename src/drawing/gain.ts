import { defaultRules, type Rules } from '../../shared/rules'
import { fitted, type StoredPicture } from '../../shared/pictures/storedPicture'
import type { UnitSystem } from '../../shared/units'
import type { TreePlan, Visit } from '../plan/plan'
import { altText } from './altText'
import { gainChart, gainOf } from './charts/gainChart'
import { drawPicture } from './drawPicture'
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
  /** Of the tree; the drawing makes room for it. */
  photograph?: StoredPicture | undefined
}

type Gain = NonNullable<ReturnType<typeof gainOf>>

/** Pixels between the parts. */
const apart = 10
/** Pixels of a panel of the chart across, and of the chart's height where it stands below the trees. */
const panelWidth = 146
const panelHeight = 176

/** Everything that `drawGain` shows, in words. */
export function gainWords(
  plan: TreePlan,
  visit: Visit,
  { system, rules = defaultRules, photograph }: GainOptions
): string {
  const scene = sceneOf(plan, visit)
  const words = (['before', 'after'] as const).map((when) =>
    altText(plan, visit, when, system, scene?.notDrawn ?? [], scene !== null)
  )
  const shown = photograph === undefined ? '' : `Photograph of tree ${plan.tree.id}.`
  return [...words, gainOf(plan, visit, system, rules)?.alt ?? '', shown]
    .filter((text) => text !== '')
    .join(' ')
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

/** Pixels that a photograph takes at most: beside the charts of a low room, and in their band below the trees of a high one. */
const photographRoom = { beside: 150, band: 250, across: 0.42 } as const

/** A drawing with the photograph at its right. */
function withPhotograph(left: Drawing, photograph: Drawing | null): Drawing {
  return photograph === null ? left : sideBySide(left, photograph, apart)
}

/** The photograph as large as it goes into a room, or null. */
function photographIn(
  { photograph }: GainOptions,
  room: { readonly width: number; readonly height: number }
): Drawing | null {
  return photograph === undefined ? null : drawPicture(photograph, fitted(photograph, room), 'Photograph.')
}

/** In a high room: the trees, below them the charts, and the photograph beside those. */
function oneAbove(plan: TreePlan, visit: Visit, options: GainOptions, gain: Gain | null): Drawing {
  const { width, height, palette } = options
  const band = options.photograph === undefined ? panelHeight : photographRoom.band
  // A little is left free: what stands in the last row of a page may reach over its end.
  const photograph = photographIn(options, { width: width * photographRoom.across, height: band - 6 })
  const left = width - (photograph === null ? 0 : photograph.width + apart)
  if (gain === null && photograph === null) return pairOf(plan, visit, options)
  const pair = pairOf(plan, visit, { ...options, height: height - band - apart })
  if (gain === null) return photograph === null ? pair : oneBelow(pair, photograph, apart)
  const chart = gainChart(gain, { width: left, height: band, palette, beside: true })
  return oneBelow(pair, withPhotograph(chart, photograph), apart)
}

/** In a low room: the trees, the charts one above the other, and the photograph at the right. */
function allBeside(plan: TreePlan, visit: Visit, options: GainOptions, gain: Gain | null): Drawing {
  const { width, height, palette } = options
  const photograph = photographIn(options, { width: photographRoom.beside, height })
  const left = width - (photograph === null ? 0 : photograph.width + apart)
  if (gain === null) return withPhotograph(pairOf(plan, visit, { ...options, width: left }), photograph)
  const pair = pairOf(plan, visit, { ...options, width: left - panelWidth - apart })
  const chart = gainChart(gain, { width: panelWidth, height, palette, beside: false })
  return withPhotograph(sideBySide(pair, chart, apart), photograph)
}

/**
 * A tree before and after a visit, and what the visit gains for the limb that needs it most: beside the trees, or below them
 * where the room is high; with a photograph where there is one. What the parts mean, the cuts and the notes are listed elsewhere.
 */
export function drawGain(plan: TreePlan, visit: Visit, options: GainOptions): Drawing {
  const { width, height, system, rules = defaultRules } = options
  const gain = gainOf(plan, visit, system, rules)
  const whole = (height > width ? oneAbove : allBeside)(plan, visit, options, gain)
  return { ...whole, width, height }
}
