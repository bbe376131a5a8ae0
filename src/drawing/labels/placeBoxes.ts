import type { Box } from '../paper'
import type { Point } from '../shapes'

/** A text or mark that needs a place near what it names. */
export interface Wanted {
  anchor: Point
  width: number
  height: number
  /** Direction in which it would best stand, from the anchor. */
  toward: Point
  /** Pixels to keep from the anchor. */
  clear: number
}

/** What stands in the way: other boxes, and points of the drawn wood. */
export interface Obstacles {
  boxes: Box[]
  wood: readonly Point[]
  inside: Box
}

const turns = [0, 22, -22, 45, -45, 70, -70, 95, -95, 125, -125, 180]
const steps = [0, 7, 15, 24, 36, 50]

function overlap(a: Box, b: Box): number {
  const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return wide > 0 && high > 0 ? wide * high : 0
}

function contains(box: Box, { x, y }: Point): boolean {
  return x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height
}

function isInside(box: Box, outer: Box): boolean {
  return (
    box.x >= outer.x &&
    box.y >= outer.y &&
    box.x + box.width <= outer.x + outer.width &&
    box.y + box.height <= outer.y + outer.height
  )
}

/** The box whose nearest edge is so far from the anchor in a direction. */
function boxToward(wanted: Wanted, direction: Point, distance: number): Box {
  const { anchor, width, height } = wanted
  const reach = distance + Math.abs(direction.x) * (width / 2) + Math.abs(direction.y) * (height / 2)
  const center = { x: anchor.x + direction.x * reach, y: anchor.y + direction.y * reach }
  return { x: center.x - width / 2, y: center.y - height / 2, width, height }
}

/** What a place costs, or anything from `enough` on where it costs that much: a costlier place is not examined further. */
function costOf(box: Box, obstacles: Obstacles, turn: number, step: number, enough: number): number {
  let cost = Math.abs(turn) * 0.05 + step * 0.4
  if (!isInside(box, obstacles.inside)) cost += 2000
  for (const other of obstacles.boxes) {
    if (cost >= enough) return cost
    cost += overlap(box, other) * 5
  }
  for (const point of obstacles.wood) {
    if (cost >= enough) return cost
    if (contains(box, point)) cost += 4
  }
  return cost
}

/** Finds a box for each wish in turn, near its anchor and clear of what is already there. */
export function placeBoxes(wishes: readonly Wanted[], obstacles: Obstacles): Box[] {
  const boxes = [...obstacles.boxes]
  const all = { ...obstacles, boxes }
  return wishes.map((wanted) => {
    let best: Box | null = null
    let least = Infinity
    const start = Math.atan2(wanted.toward.y, wanted.toward.x)
    for (const turn of turns) {
      const angle = start + (turn * Math.PI) / 180
      const direction = { x: Math.cos(angle), y: Math.sin(angle) }
      for (const step of steps) {
        const box = boxToward(wanted, direction, wanted.clear + step)
        const cost = costOf(box, all, turn, step, least)
        if (cost < least) {
          least = cost
          best = box
        }
      }
    }
    const found = best ?? boxToward(wanted, wanted.toward, wanted.clear)
    boxes.push(found)
    return found
  })
}
