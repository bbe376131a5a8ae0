import type { TreePlan, Visit } from '../../src/plan/plan'
import { drawTree, fittingHeight } from '../../src/drawing/drawTree'
import type { Drawing, DrawingPalette, Point, Shape } from '../../src/drawing/shapes'
import type { UnitSystem } from '../../shared/units'

export type When = 'before' | 'after'

const made = new WeakMap<TreePlan, Map<string, Drawing>>()

/** A tree drawn at its own height; drawn once for all the tests of a file that look at it. */
export function drawn(
  plan: TreePlan,
  visit: Visit | null,
  when: When,
  more: { width?: number; system?: UnitSystem; palette?: DrawingPalette } = {}
): Drawing {
  const { width = 304, system = 'cm-m', palette = 'color' } = more
  const key = [visit === null ? 'none' : plan.visits.indexOf(visit), when, width, system, palette].join()
  const drawings = made.get(plan) ?? new Map<string, Drawing>()
  made.set(plan, drawings)
  const drawing = drawings.get(key) ?? draw(plan, visit, when, { width, system, palette })
  drawings.set(key, drawing)
  return drawing
}

function draw(
  plan: TreePlan,
  visit: Visit | null,
  when: When,
  { width, system, palette }: { width: number; system: UnitSystem; palette: DrawingPalette }
): Drawing {
  const height = fittingHeight(plan, visit, { width, system, when })
  return drawTree(plan, visit, { width, height, system, when, palette })
}

/** The shapes that depict a part, of one limb where it is named. */
export function partsOf(drawing: Drawing, part: string, limb?: string): Shape[] {
  return drawing.shapes.filter(
    ({ depicts }) => depicts?.part === part && (limb === undefined || depicts.limb === limb)
  )
}

/** The only shape that depicts a part. */
export function partOf(drawing: Drawing, part: string, limb?: string): Shape {
  const found = partsOf(drawing, part, limb)
  if (found.length !== 1) throw new Error(`${found.length} shapes depict ${part} ${limb ?? ''}`)
  return found[0]!
}

/** Every place that a shape names. */
export function pointsOf(shape: Shape): Point[] {
  switch (shape.kind) {
    case 'path':
      return shape.steps.flatMap(([, ...points]) => points as Point[])
    case 'line':
      return [shape.from, shape.to]
    case 'rect':
    case 'image':
      return [
        { x: shape.x, y: shape.y },
        { x: shape.x + shape.width, y: shape.y + shape.height }
      ]
    case 'circle':
      return [-1, 1].map((way) => ({
        x: shape.center.x + way * shape.radius,
        y: shape.center.y + way * shape.radius
      }))
    case 'text':
      return [shape.at]
  }
}

export function middleOf(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

/** Base and end of a tapered outline: their middles and widths. An outline runs up one side and down the other. */
export function endsOf(shape: Shape): { base: Point; baseWidth: number; end: Point; endWidth: number } {
  const points = pointsOf(shape)
  const half = points.length / 2
  const [a, b, c, d] = [points[0]!, points.at(-1)!, points[half - 1]!, points[half]!]
  return { base: middleOf(a, b), baseWidth: distance(a, b), end: middleOf(c, d), endWidth: distance(c, d) }
}

/** Reads heights off the drawing: from its ground line, and the leader's tip of a known height. */
export function rulerOf(drawing: Drawing, tipHeight: number): (y: number) => number {
  const ground = drawing.shapes.find(({ look }) => look === 'ground')!
  const foot = pointsOf(ground)[0]!.y
  const tip = Math.min(...pointsOf(partOf(drawing, 'leader')).map(({ y }) => y))
  return (y) => ((foot - y) / (foot - tip)) * tipHeight
}

/** Paths with their numbers rounded, to compare shapes rather than digits. */
export function rounded(shape: Shape): string {
  return pointsOf(shape)
    .map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`)
    .join(' ')
}
