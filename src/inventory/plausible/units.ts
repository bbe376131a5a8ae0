import { millimetersPer, type LengthUnit } from '../../../shared/units'

/**
 * Heights by trunk diameters of most trees, and of what stands above a union (house judgment; trees grown in the open are
 * stouter than those of a stand, and old ones stouter than young ones).
 */
export const usual = { low: 20, high: 120 } as const

/** A typical trunk thicker than this many mm may be stouter still. */
const thickTrunk = 600
const leastOfThick = 12

/** What another unit would have to bring a typical tree to before it is asked about. */
const likely = { low: 25, high: 110 } as const

export function isUnusual(times: number, trunk: number | null): boolean {
  const least = trunk !== null && trunk > thickTrunk ? leastOfThick : usual.low
  return times < least || times > usual.high
}

/** Units that people mistake for one another. */
export const otherHeights: Partial<Record<LengthUnit, readonly LengthUnit[]>> = { ft: ['m'], m: ['ft'] }
export const otherDiameters: Partial<Record<LengthUnit, readonly LengthUnit[]>> = {
  in: ['cm', 'mm'],
  cm: ['in', 'mm'],
  mm: ['cm']
}

/** Units in which the sizes would be likely; the other column's stays as it is read where one is null. */
export interface OtherUnits {
  readonly height: LengthUnit | null
  readonly diameter: LengthUnit | null
}

/** Which other units would make a typical tree likely: of one of the two columns, or, where none does, of both. */
export function likelyUnits(times: number, height: LengthUnit, diameter: LengthUnit): readonly OtherUnits[] {
  const heights = otherHeights[height] ?? []
  const diameters = otherDiameters[diameter] ?? []
  const single = [
    ...heights.map((unit): OtherUnits => ({ height: unit, diameter: null })),
    ...diameters.map((unit): OtherUnits => ({ height: null, diameter: unit }))
  ]
  const both = heights.flatMap((tall) =>
    diameters.map((small): OtherUnits => ({ height: tall, diameter: small }))
  )
  const isLikely = (other: OtherUnits): boolean => {
    const taller = millimetersPer[other.height ?? height] / millimetersPer[height]
    const thicker = millimetersPer[other.diameter ?? diameter] / millimetersPer[diameter]
    const then = (times * taller) / thicker
    return then >= likely.low && then <= likely.high
  }
  const ones = single.filter(isLikely)
  return ones.length > 0 ? ones : both.filter(isLikely).slice(0, 1)
}

export function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort()
  return sorted[Math.floor(sorted.length / 2)] ?? NaN
}
