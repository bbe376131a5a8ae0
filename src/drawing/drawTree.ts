import { defaultRules, type Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import type { TreePlan, Visit } from '../plan/plan'
import type { Limb } from '../inventory/inventory'
import { altText } from './altText'
import { captionOf, shortCaption } from './cutLines'
import { cutMarks, madeCuts } from './drawCuts'
import { groundLine, guideLines, heightScale, upperThirdBand } from './labels/drawGuides'
import { labelShapes } from './labels/drawLabels'
import { crownShape, woodShapes } from './drawWood'
import { legend } from './labels/legend'
import { drawableId } from './labels/letters'
import { onPaper, type Box, type Scale } from './paper'
import type { Obstacles } from './labels/placeBoxes'
import { livePoints, sceneOf, type Scene } from './scene'
import type { Drawing, DrawingPalette, Shape } from './shapes'
import { linesOf, shortened } from './labels/textSize'
import {
  captionHeight,
  footroom,
  headroom,
  legendHeight,
  margin,
  plotOf,
  scaleFor,
  treeHeight
} from './treeLayout'

export interface TreeDrawingOptions {
  /** Pixels. The drawing becomes higher where its legend needs it. */
  width: number
  height: number
  system: UnitSystem
  when: 'before' | 'after'
  palette: DrawingPalette
  /** For the ratio at which the dashed ring of the rose stands. */
  rules?: Rules
  /** Without a legend and with the shortest caption: the tree is named, and everything explained, in text beside it. */
  bare?: boolean
}

function treeShapes(scene: Scene, scale: Scale, plot: Box, options: TreeDrawingOptions): Shape[] {
  const { when, system } = options
  const inAnyLetters = (limb: Limb) => drawableId(scene.plan, limb)
  const obstacles: Obstacles = {
    boxes: [],
    wood: scene.limbs.flatMap((limb) => livePoints(limb, when).map((point) => onPaper(scale, point))),
    inside: { x: plot.x + 1, y: plot.y - headroom, width: plot.width - 1, height: plot.height + headroom }
  }
  const guides = [
    ...upperThirdBand(scene, scale, plot, obstacles),
    ...heightScale(scale, plot, scene.height, system),
    ...guideLines(scene, scale, plot, when, system, obstacles)
  ]
  const cuts = when === 'before' ? cutMarks(scene, scale, obstacles) : madeCuts(scene, scale)
  return [
    ...guides.filter((shape) => shape.kind !== 'text'),
    crownShape(scene, scale, when),
    groundLine(scale, plot),
    ...woodShapes(scene, scale, when),
    ...guides.filter((shape) => shape.kind === 'text'),
    ...cuts,
    ...labelShapes(scene, scale, when, obstacles, options.bare === true ? inAnyLetters : undefined)
  ]
}

function caption(text: string, width: number): Shape {
  const size = 12
  return {
    kind: 'text',
    at: { x: margin, y: 15 },
    text: shortened(text, size * 1.08, width - 2 * margin),
    size,
    anchor: 'start',
    look: 'caption'
  }
}

function withoutHeight(width: number): Shape[] {
  const sentence = 'No drawing: the height of this tree is not known. Measure it and plan again.'
  return linesOf(sentence, 11, width - 2 * margin).map((text, index) => ({
    kind: 'text',
    at: { x: margin, y: 40 + index * 15 },
    text,
    size: 11,
    anchor: 'start',
    look: 'text'
  }))
}

/**
 * A tree in side view, before or after a visit; without a visit, as it was surveyed. Heights to scale, diameters to
 * scale among themselves. Pure: the same plan gives the same drawing.
 */
export function drawTree(plan: TreePlan, visit: Visit | null, options: TreeDrawingOptions): Drawing {
  const { width, height, when, system, palette } = options
  const title = captionOf(plan, visit, when)
  const scene = sceneOf(plan, visit)
  const alt = altText(plan, visit, when, system, scene?.notDrawn ?? [], scene !== null)
  const drawing = { width, height, title, alt, palette }
  const { rules = defaultRules, bare = false } = options
  const heading = bare ? shortCaption(visit, when) : title
  if (scene === null) return { ...drawing, shapes: [caption(heading, width), ...withoutHeight(width)] }
  const setting = { when, system, subordinateUpTo: rules.subordinateUpTo }
  const inner = width - 2 * margin
  const below = bare ? 0 : legendHeight(scene, inner, setting)
  const plot = plotOf(width, height, below)
  const scale = scaleFor(scene, plot)
  const corner = { x: margin, y: plot.y + plot.height + footroom }
  return {
    ...drawing,
    height: Math.max(height, Math.ceil(corner.y + below + margin)),
    shapes: [
      caption(heading, width),
      ...treeShapes(scene, scale, plot, options),
      ...(bare ? [] : legend(scene, scale, corner, inner, setting))
    ]
  }
}

/** A height at which the drawing is neither cramped nor stretched; the same before and after a visit. */
export function fittingHeight(
  plan: TreePlan,
  visit: Visit | null,
  options: Pick<TreeDrawingOptions, 'width' | 'system' | 'when' | 'rules'>
): number {
  const scene = sceneOf(plan, visit)
  if (scene === null) return 80
  const setting = {
    when: options.when,
    system: options.system,
    subordinateUpTo: (options.rules ?? defaultRules).subordinateUpTo
  }
  const below = legendHeight(scene, options.width - 2 * margin, setting)
  const tree = treeHeight(scene, options.width)
  return Math.ceil(captionHeight + headroom + tree + footroom + below + margin)
}
