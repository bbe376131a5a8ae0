/** Growth: bounds, direction in every input, never NaN. */
import fc from 'fast-check'
import { growthAfterLoss, limbGrowth, projectedRatio } from '../../../src/formulas/growth'
import { always, between, falls, rises, valueOf } from './monotone'
import { diameter, share, ratio } from './domain'

describe('PROJECTEDRATIO and growth', () => {
  const years = between(0, 30)
  const yearly = between(0.1, 20)

  it('rises with the limb’s growth and falls with the stem’s', () => {
    const others = fc.tuple(diameter, diameter, years, yearly)
    rises({
      over: yearly,
      others,
      formula: (limbs, limb, stem, after, stems) =>
        projectedRatio({ diameter: limb, yearly: limbs }, { diameter: stem, yearly: stems }, after),
      moves: (_limbs, _limb, _stem, after) => after > 0.1
    })
    falls({
      over: yearly,
      others,
      formula: (stems, limb, stem, after, limbs) =>
        projectedRatio({ diameter: limb, yearly: limbs }, { diameter: stem, yearly: stems }, after),
      moves: (_stems, _limb, _stem, after) => after > 0.1
    })
  })

  it('goes toward 1 where both grow alike, and never past it', () => {
    always(fc.tuple(diameter, diameter, years, yearly), (limb, stem, after, both) => {
      const now = limb / stem
      const then = valueOf(
        projectedRatio({ diameter: limb, yearly: both }, { diameter: stem, yearly: both }, after)
      )
      expect(Math.abs(1 - then)).toBeLessThanOrEqual(Math.abs(1 - now) + 1e-12)
      expect((then - 1) * (now - 1)).toBeGreaterThanOrEqual(0)
    })
  })

  it('reaches a goal in the years that the increments take to it, and never where they do not close on it', () => {
    always(
      fc.tuple(diameter, diameter, between(0.2, 0.9), yearly, yearly, years),
      (limb, stem, goal, limbs, stems, after) => {
        const closing = goal * stems - limbs
        const needed = (limb - goal * stem) / closing
        if (limb / stem <= goal) return
        if (closing > 0)
          expect(
            projectedRatio({ diameter: limb, yearly: limbs }, { diameter: stem, yearly: stems }, needed)
          ).toBeCloseTo(goal, 6)
        else
          expect(
            projectedRatio({ diameter: limb, yearly: limbs }, { diameter: stem, yearly: stems }, after)
          ).toBeGreaterThan(goal)
      }
    )
  })

  it('lets a limb gain less the more it lost, and never less than nothing', () => {
    const whole = fc.integer({ min: 0, max: 10 })
    falls({
      over: share,
      others: fc.tuple(yearly, whole),
      formula: (lost, grown, after) => growthAfterLoss(grown, lost, after),
      moves: (_lost, _grown, after) => after > 0
    })
    rises({ over: yearly, others: fc.tuple(ratio), formula: (stem, of) => limbGrowth(stem, of, false) })
    always(fc.tuple(yearly, share, whole, ratio), (grown, lost, after, of) => {
      const gained = valueOf(growthAfterLoss(grown, lost, after))
      expect(gained).toBeGreaterThanOrEqual(0)
      expect(gained).toBeLessThanOrEqual(grown * after * (1 + 1e-12))
      expect(limbGrowth(grown, of, true)).toBeLessThanOrEqual(grown)
    })
  })
})
