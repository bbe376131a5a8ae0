import type { Point, Step } from '../shapes'
import { livePoints, type Scene } from '../scene'

/** Foliage begins this far along a limb, and hangs out this share of the tree's height around it (a sketch only). */
const foliageFrom = 0.35
const rim = 0.045
const directions = 48
/** How fast a limb's foliage falls away to its sides, and the least reach as a share of the greatest. */
const sharpness = 3
const leastReach = 0.36

/** A closed smooth path through points. */
export function smoothLoop(points: readonly Point[]): Step[] {
  const count = points.length
  const at = (index: number): Point => points[(index + count) % count] ?? { x: 0, y: 0 }
  const steps: Step[] = [['M', at(0)]]
  for (let index = 0; index < count; index++) {
    const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)]
    steps.push([
      'C',
      { x: b.x + (c.x - a.x) / 6, y: b.y + (c.y - a.y) / 6 },
      { x: c.x - (d.x - b.x) / 6, y: c.y - (d.y - b.y) / 6 },
      c
    ])
  }
  return [...steps, ['Z']]
}

/**
 * How far the foliage reaches from a middle point in each direction: every point counts fully in its own direction and
 * less to either side, which gives a rounded outline with a lobe for each limb.
 */
function reaches(points: readonly Point[], middle: Point, rimAt: (point: Point) => number): number[] {
  const tips = points.map((point) => ({
    angle: Math.atan2(point.y - middle.y, point.x - middle.x),
    reach: Math.hypot(point.x - middle.x, point.y - middle.y) + rimAt(point)
  }))
  const least = leastReach * Math.max(0, ...tips.map(({ reach }) => reach))
  return Array.from({ length: directions }, (_, index) => {
    const angle = (index * 2 * Math.PI) / directions
    let furthest = least
    for (const tip of tips) {
      const turned = Math.cos(tip.angle - angle)
      // A power of a share is no greater than the share, and slow to compute.
      if (tip.reach * turned > furthest) furthest = Math.max(furthest, tip.reach * turned ** sharpness)
    }
    return furthest
  })
}

/** An oval between crown base and top, half as wide as high or as wide as the spread, where no limbs are known. */
function oval(scene: Scene): Point[] {
  const base = scene.crownBase ?? scene.height / 3
  const wide = (scene.plan.tree.spread ?? scene.height / 2) / 2
  const middle = (base + scene.height) / 2
  return Array.from({ length: 24 }, (_, index) => {
    const angle = (index * Math.PI) / 12
    return { x: wide * Math.cos(angle), y: middle + ((scene.height - base) / 2) * Math.sin(angle) }
  })
}

/** A sketch of the crown's outline in meters: around the live limbs and the leader, above the crown base. */
export function crownOutline(scene: Scene, when: 'before' | 'after'): Point[] {
  const live = scene.limbs.filter(({ form }) => !form.present.limb.dead)
  if (live.length === 0) return oval(scene)
  const { trunk, height } = scene
  const base = (when === 'after' ? scene.visit?.crownBaseAfter : scene.crownBase) ?? 0
  const points = live.flatMap((limb) => livePoints(limb, when, foliageFrom))
  for (const part of [0.4, 0.6, 0.8, 1])
    points.push({ x: trunk.lean * part, y: trunk.leaderFrom + (trunk.tip - trunk.leaderFrom) * part })
  const middle = { x: trunk.lean / 2, y: base + (trunk.tip - base) * 0.45 }
  const rimAt = ({ y }: Point): number => Math.min(rim * height, Math.max(0, height - y))
  return reaches(points, middle, rimAt).map((reach, index) => {
    const angle = (index * 2 * Math.PI) / directions
    const y = middle.y + reach * Math.sin(angle)
    return { x: middle.x + reach * Math.cos(angle), y: Math.min(height, Math.max(base, y)) }
  })
}
