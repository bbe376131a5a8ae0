import type { UnitSystem } from '../../shared/units'
import type { TreePlan, Visit } from '../plan/plan'
import { altText } from './altText'
import { captionOf } from './cutLines'
import { cutMarks } from './drawCuts'
import { crownShape, woodShapes } from './drawWood'
import { groundLine, heightScale } from './labels/drawGuides'
import { labelShapes } from './labels/drawLabels'
import { drawableId } from './labels/letters'
import type { Obstacles } from './labels/placeBoxes'
import { onPaper } from './paper'
import { livePoints, sceneOf } from './scene'
import type { Drawing } from './shapes'
import { scaleFor } from './treeLayout'

/** Pixels beside the tree for the scale of heights, above it for the name of its leader, and below the ground. */
const room = { left: 26, right: 4, above: 15, below: 5 } as const

/** What a card says of its drawing in words, without laying it out. */
export function cardAlt(plan: TreePlan, visit: Visit, system: UnitSystem): string {
  return altText(plan, visit, 'before', system, [], plan.tree.height !== null)
}

/**
 * A tree before a visit with its cuts numbered, and nothing else: the card that it stands on says the rest. Black and white,
 * as the card is copied.
 */
export function drawCard(
  plan: TreePlan,
  visit: Visit,
  { width, height, system }: { width: number; height: number; system: UnitSystem }
): Drawing {
  const drawing = {
    width,
    height,
    title: captionOf(plan, visit, 'before'),
    alt: cardAlt(plan, visit, system),
    palette: 'print'
  } as const
  const scene = sceneOf(plan, visit)
  if (scene === null) return { ...drawing, shapes: [] }
  const plot = {
    x: room.left,
    y: room.above,
    width: width - room.left - room.right,
    height: height - room.above - room.below
  }
  const scale = scaleFor(scene, plot)
  const obstacles: Obstacles = {
    boxes: [],
    wood: scene.limbs.flatMap((limb) => livePoints(limb, 'before').map((point) => onPaper(scale, point))),
    inside: { x: plot.x + 1, y: 0, width: plot.width - 1, height: plot.y + plot.height }
  }
  return {
    ...drawing,
    shapes: [
      ...heightScale(scale, plot, scene.height, system),
      crownShape(scene, scale, 'before'),
      groundLine(scale, plot),
      ...woodShapes(scene, scale, 'before'),
      ...cutMarks(scene, scale, obstacles),
      ...labelShapes(scene, scale, 'before', obstacles, (limb) => drawableId(plan, limb))
    ]
  }
}
