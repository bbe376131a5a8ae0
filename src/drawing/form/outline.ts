import { directionAt, pointAt } from './curve'
import { drawnWidth, onPaper, type Scale } from '../paper'
import { polyline, strokes, type Point, type Step } from '../shapes'
import { diameterAt, type Taper } from './taper'
import { axisAt, trunkDiameterAt, type TrunkForm } from './trunkForm'

const pieces = 12

/** A point of a tapered piece on paper: its center, its half width and the direction across it. */
export interface Station {
  center: Point
  half: number
  across: Point
}

export function stationAt(scale: Scale, taper: Taper, t: number): Station {
  const direction = directionAt(taper.curve, t)
  return {
    center: onPaper(scale, pointAt(taper.curve, t)),
    half: drawnWidth(scale, diameterAt(taper, t)) / 2,
    across: { x: direction.y, y: direction.x }
  }
}

/** A point beside the center of a station, so many pixels across. */
export function beside({ center, across }: Station, distance: number): Point {
  return { x: center.x + across.x * distance, y: center.y + across.y * distance }
}

/** The stations of a piece between two parameters. */
export function stations(scale: Scale, taper: Taper, from: number, to: number): Station[] {
  return Array.from({ length: pieces + 1 }, (_, index) =>
    stationAt(scale, taper, from + ((to - from) * index) / pieces)
  )
}

/** The outline of a tapered piece, to scale by diameter. */
export function outline(along: readonly Station[]): Step[] {
  const left = along.map((station) => beside(station, -station.half))
  const right = along.map((station) => beside(station, station.half)).reverse()
  return polyline([...left, ...right], true)
}

/** Short strokes across a piece every few pixels: the mark of what comes off. */
export function ticksAcross(scale: Scale, taper: Taper, from: number, to: number): Step[] {
  const spacing = 5
  const pairs: [Point, Point][] = []
  let walked = spacing / 2
  let last = stationAt(scale, taper, from).center
  const rounds = 80
  for (let round = 1; round <= rounds; round++) {
    const station = stationAt(scale, taper, from + ((to - from) * round) / rounds)
    walked += Math.hypot(station.center.x - last.x, station.center.y - last.y)
    last = station.center
    if (walked < spacing) continue
    walked = 0
    const reach = station.half + 2
    pairs.push([beside(station, -reach), beside(station, reach)])
  }
  return strokes(pairs)
}

/** The outline of the trunk or leader between two heights. */
export function trunkOutline(scale: Scale, trunk: TrunkForm, from: number, to: number): Step[] {
  const heights = [
    from,
    ...trunk.profile.map(({ height }) => height).filter((height) => height > from && height < to),
    to
  ]
  const edge = (side: 1 | -1) => (height: number) => {
    const { x, y } = onPaper(scale, { x: axisAt(trunk, height), y: height })
    return { x: x + (side * drawnWidth(scale, trunkDiameterAt(trunk, height))) / 2, y }
  }
  return polyline([...heights.map(edge(-1)), ...heights.reverse().map(edge(1))], true)
}
