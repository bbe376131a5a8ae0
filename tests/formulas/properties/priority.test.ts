/** Priority: bounds, direction in every input, units, never NaN. */
import fc from 'fast-check'
import { convertLength } from '../../../shared/units'
import type { IncludedBark } from '../../../shared/choices'
import { lowAndHigh, priority } from '../../../src/formulas/priority'
import { always, between, falls, rises, valueOf } from './monotone'
import { share, ratio, bark, unit, heights } from './domain'

/** The points of a limb as PRIORITY takes its numbers. */
function points(
  aspectRatio: number,
  origin: number,
  tip: number,
  height: number,
  crownBase: number,
  included: IncludedBark
): number {
  return priority({ aspectRatio, origin, tip, bark: included }, { height, crownBase })
}

describe('PRIORITY', () => {
  const others = fc.tuple(heights, bark)

  it('rises with the aspect ratio, truly so above 0.5', () => {
    rises({
      over: ratio,
      others,
      formula: (of, [origin, tip, height, base], included) => points(of, origin, tip, height, base, included),
      moves: (of) => of > 0.5
    })
  })

  it('rises with the tip, truly so in the top fifth of the tree', () => {
    rises({
      over: share,
      others: fc.tuple(ratio, heights, bark),
      formula: (part, of, [origin, , height, base], included) =>
        points(of, origin, height * part, height, base, included),
      moves: (part) => part > 0.8
    })
  })

  it('falls with the origin, truly so below half the height where the tip is high', () => {
    falls({
      over: between(0, 0.95),
      others: fc.tuple(ratio, heights, bark),
      formula: (part, of, [, tip, height, base], included) =>
        points(of, height * part, tip, height, base, included),
      moves: (part, _of, [, tip, height, base]) =>
        part < 0.5 && lowAndHigh({ origin: 0, tip }, { height, crownBase: base }) > 1e-3
    })
  })

  it('falls with the crown base, which moves the upper third up', () => {
    falls({
      over: between(0, 0.95),
      others: fc.tuple(ratio, heights, bark),
      formula: (part, of, [origin, tip, height], included) =>
        points(of, origin, tip, height, height * part, included),
      moves: (part, _of, [origin, tip, height]) =>
        tip < height && lowAndHigh({ origin, tip }, { height, crownBase: height * part }) > 1e-3
    })
  })

  it('rises with included bark', () => {
    always(fc.tuple(ratio, heights), (of, [origin, tip, height, base]) => {
      const [none, partial, full] = (['none', 'partial', 'full'] as const).map((included) =>
        valueOf(points(of, origin, tip, height, base, included))
      )
      expect(partial!).toBeGreaterThan(none!)
      expect(full!).toBeGreaterThan(partial!)
    })
  })

  it('stays from 0 to 100 up to a ratio of 1, and is not clamped above', () => {
    always(fc.tuple(ratio, heights, bark), (of, [origin, tip, height, base], included) => {
      const found = valueOf(points(of, origin, tip, height, base, included))
      expect(found).toBeGreaterThanOrEqual(0)
      expect(found).toBeLessThanOrEqual(100 + Math.max(0, of - 1) * 90 + 1e-9)
    })
    expect(points(1.4, 0, 10, 10, 2, 'full')).toBeCloseTo(136, 9)
  })

  it('is the same whatever unit the heights are in', () => {
    always(fc.tuple(ratio, heights, bark, unit), (of, limb, included, to) => {
      const [origin, tip, height, base] = limb
      const given = limb.map((value) => convertLength(value, 'm', to)) as typeof limb
      expect(points(of, ...given, included)).toBeCloseTo(points(of, origin, tip, height, base, included), 4)
    })
  })
})
