import { millimetersPer, type LengthUnit } from '../../../shared/units'
import { median, otherDiameters, otherHeights } from './units'

/** A tree with what tells whether one of its sizes was typed in another unit than those of the others. */
export interface Shape {
  readonly id: string
  readonly row: number
  /** Meters. */
  readonly height: number
  /** Millimeters. */
  readonly trunk: number
}

/** A tree that would be like the others if one of its sizes were in another unit. */
export interface InOtherUnit {
  readonly shape: Shape
  readonly field: 'height' | 'trunk'
  readonly unit: LengthUnit
  /** What the size would be, in meters or millimeters. */
  readonly size: number
  /** Heights by trunk diameters: of the tree and of a typical one. */
  readonly times: number
  readonly typical: number
}

/** Trees that say what is typical, at the least; house judgments all. */
const enough = 4
/** A tree is odd where it is so many times as slender, or as stout, as a typical one. */
const odd = 2
/** In the other unit it has to be as slender as a typical one within this factor, and about as large. */
const alike = 1.6
const asLarge = 2.2
/** Where more than this share of the trees is odd, the trees are not alike enough to tell. */
const mostOdd = 0.25

const within = (value: number, typical: number, factor: number): boolean =>
  value * factor >= typical && value <= typical * factor

/** The single trees of which the height, or the trunk, would be likely in another unit, and is not as it stands. */
export function inOtherUnits(
  shapes: readonly Shape[],
  heightUnit: LengthUnit,
  trunkUnit: LengthUnit
): readonly InOtherUnit[] {
  if (shapes.length < enough) return []
  const timesOf = ({ height, trunk }: Shape): number => (height * 1000) / trunk
  const typical = median(shapes.map(timesOf))
  const suspects = shapes.filter((shape) => !within(timesOf(shape), typical, odd))
  if (suspects.length === 0 || suspects.length > Math.max(1, shapes.length * mostOdd)) return []
  const height = median(shapes.map((shape) => shape.height))
  const trunk = median(shapes.map((shape) => shape.trunk))
  return suspects.flatMap((shape): InOtherUnit[] => {
    const times = timesOf(shape)
    const facts = { shape, times, typical }
    const tall = (otherHeights[heightUnit] ?? []).map((unit): InOtherUnit => {
      const size = (shape.height * millimetersPer[unit]) / millimetersPer[heightUnit]
      return { ...facts, field: 'height', unit, size }
    })
    const thick = (otherDiameters[trunkUnit] ?? []).map((unit): InOtherUnit => {
      const size = (shape.trunk * millimetersPer[unit]) / millimetersPer[trunkUnit]
      return { ...facts, field: 'trunk', unit, size }
    })
    const found = [
      ...tall.filter(
        ({ size }) =>
          !within(shape.height, height, odd) &&
          within((size * 1000) / shape.trunk, typical, alike) &&
          within(size, height, asLarge)
      ),
      ...thick.filter(
        ({ size }) =>
          !within(shape.trunk, trunk, odd) &&
          within((shape.height * 1000) / size, typical, alike) &&
          within(size, trunk, asLarge)
      )
    ]
    return found.slice(0, 1)
  })
}
