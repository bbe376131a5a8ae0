import type { Point, Step } from '../shapes'
import { livePoints, type Scene } from '../scene'

/** Foliage begins this far along a limb, and hangs out this share of the tree's height around it (a sketch only). */
const foliageFrom = 0.35
const rim = 0.045
const directions = 48
/** How fast a limb's foliage falls away to its sides, and the least reach as a share of the greatest. */
const sharpness = 2
const leastReach = 0.5

/** Pixels along the edge of a crown from one clump of leaves to the next, and how far each stands out, as a share of that. */
const clump = { along: 17, out: 0.3 } as const

/** Points at even distances along a closed line. */
function evenly(points: readonly Point[], count: number): Point[] {
  const closed = [...points, ...points.slice(0, 1)]
  const lengths = closed.slice(1).map((to, index) => {
    const from = closed[index] ?? to
    return Math.hypot(to.x - from.x, to.y - from.y)
  })
  const step = lengths.reduce((sum, length) => sum + length, 0) / count
  const even: Point[] = []
  let walked = 0
  lengths.forEach((length, index) => {
    const [from, to] = [closed[index], closed[index + 1]]
    if (from === undefined || to === undefined) return
    while (even.length < count && even.length * step <= walked + length) {
      const part = length > 0 ? (even.length * step - walked) / length : 0
      even.push({ x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part })
    }
    walked += length
  })
  return even
}

/** The edge of a crown on paper: a closed line of clumps of leaves that stand out a little. */
export function leafyLoop(points: readonly Point[]): Step[] {
  const around = points.reduce((sum, { x, y }, index) => {
    const next = points[(index + 1) % points.length] ?? { x, y }
    return sum + Math.hypot(next.x - x, next.y - y)
  }, 0)
  const even = evenly(points, Math.max(8, Math.round(around / clump.along)))
  const area = even.reduce((sum, { x, y }, index) => {
    const next = even[(index + 1) % even.length] ?? { x, y }
    return sum + x * next.y - next.x * y
  }, 0)
  const out = area > 0 ? 1 : -1
  const steps: Step[] = [['M', even[0] ?? { x: 0, y: 0 }]]
  even.forEach((from, index) => {
    const to = even[(index + 1) % even.length] ?? from
    const [dx, dy] = [to.x - from.x, to.y - from.y]
    const bump = { x: dy * clump.out * out, y: -dx * clump.out * out }
    steps.push([
      'C',
      { x: from.x + dx * 0.12 + bump.x, y: from.y + dy * 0.12 + bump.y },
      { x: from.x + dx * 0.88 + bump.x, y: from.y + dy * 0.88 + bump.y },
      to
    ])
  })
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

/** Each direction drawn out toward its neighbors, so that lobes run into each other; none reaches less than it did. */
function filledOut(reach: readonly number[]): number[] {
  const at = (index: number) => reach[(index + directions) % directions] ?? 0
  return reach.map((own, index) => {
    const wide = [-3, -2, -1, 0, 1, 2, 3].map((by) => at(index + by))
    return Math.max(own, wide.reduce((sum, each) => sum + each, 0) / wide.length)
  })
}

/** A depth below the middle, up to the crown base and rounded toward it. */
function rounded(depth: number, most: number): number {
  if (most <= 0) return 0
  const part = depth / most
  return most * (part ** 6 / (1 + part ** 6)) ** (1 / 6)
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
  return filledOut(reaches(points, middle, rimAt)).map((reach, index) => {
    const angle = (index * 2 * Math.PI) / directions
    const rise = reach * Math.sin(angle)
    const y = rise >= 0 ? middle.y + rise : middle.y - rounded(-rise, middle.y - base)
    return { x: middle.x + reach * Math.cos(angle), y: Math.min(height, Math.max(base, y)) }
  })
}
