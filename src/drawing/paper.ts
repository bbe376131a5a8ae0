import type { Point } from './shapes'

/** A rectangle of the picture. */
export interface Box {
  x: number
  y: number
  width: number
  height: number
}

/** From meters to pixels: the same scale both ways, diameters drawn a stated number of times too large. */
export interface Scale {
  /** Pixels a meter. */
  perMeter: number
  /** Where the foot of the trunk stands. */
  foot: Point
  exaggeration: number
}

export function onPaper(scale: Scale, point: Point): Point {
  return { x: scale.foot.x + point.x * scale.perMeter, y: scale.foot.y - point.y * scale.perMeter }
}

/** Drawn width of a diameter in meters. */
export function drawnWidth(scale: Scale, diameter: number): number {
  return diameter * scale.perMeter * scale.exaggeration
}

const exaggerations = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]

/** The least exaggeration that makes the trunk 12 pixels thick, or the largest there is. */
export function chooseExaggeration(trunk: number, perMeter: number): number {
  return exaggerations.find((times) => trunk * perMeter * times >= 12) ?? 10
}

/** Fits a tree of this height and these sideways extents into a box, standing on the box's lower edge. */
export function fitScale(box: Box, height: number, left: number, right: number, trunk: number): Scale {
  const perMeter = Math.min(box.height / height, box.width / Math.max(right - left, 1e-6))
  const middle = box.x + box.width / 2
  const wanted = middle - ((left + right) / 2) * perMeter
  return {
    perMeter,
    foot: { x: wanted, y: box.y + box.height },
    exaggeration: chooseExaggeration(trunk, perMeter)
  }
}

/** A round step that divides a length into at most so many parts. */
export function roundStep(length: number, parts: number): number {
  const least = length / parts
  const power = 10 ** Math.floor(Math.log10(least))
  for (const times of [1, 2, 5, 10]) if (times * power >= least - 1e-9) return times * power
  return 10 * power
}
