/** Properties of the formulas behind the cell functions, whatever the numbers. */
import fc from 'fast-check'
import { leaderMerit, leaderRank } from '../../src/formulas/priority'
import { nextVisit } from '../../src/formulas/time'
import { visitsNeeded } from '../../src/formulas/removal'
import { wireDistance } from '../../src/formulas/wires'
import { treeHeight } from '../../src/formulas/heights'
import { brushKilograms, brushWeight, taperedVolume } from '../../src/formulas/brush'
import { priceWithMargin } from '../../src/formulas/price'
import { Money } from '../../shared/money'
import { rulesWith } from '../../shared/rules'
import { dayOf } from '../../shared/dates'

const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.1, max, noNaN: true })

test('a distance to wires never falls as the voltage rises', () => {
  fc.assert(
    fc.property(positive(1000), positive(1000), (a, b) => {
      expect(wireDistance(Math.max(a, b))).toBeGreaterThanOrEqual(wireDistance(Math.min(a, b)))
      expect(wireDistance(a)).toBeGreaterThanOrEqual(10)
    })
  )
})

test('the visits given are enough, and one fewer is not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 40 }), (needed, allowed) => {
      const visits = visitsNeeded(needed / 100, allowed / 100) as number
      expect(visits * allowed).toBeGreaterThanOrEqual(needed)
      expect((visits - 1) * allowed).toBeLessThan(needed)
    })
  )
})

test('the next visit falls on the same day of a later year, or on 28 February', () => {
  fc.assert(
    fc.property(fc.integer({ min: 61, max: 2_900_000 }), (last) => {
      const before = dayOf(last)
      const after = dayOf(nextVisit(last, 'medium') as number)
      expect(after.year).toBe(before.year + 3)
      expect(after.month).toBe(before.month)
      expect(after.day).toBe(before.month === 2 && before.day === 29 ? 28 : before.day)
    })
  )
})

test('a person’s own interval is used', () => {
  expect(dayOf(nextVisit(45382, 'young', rulesWith({ intervalYoung: 4 })) as number).year).toBe(2028)
})

test('twice the distance at the same angles is twice the height', () => {
  fc.assert(
    fc.property(positive(200), fc.double({ min: 1, max: 80, noNaN: true }), (distance, top) => {
      const height = treeHeight(distance, top, -5) as number
      expect(treeHeight(2 * distance, top, -5) as number).toBeCloseTo(2 * height, 6)
    })
  )
})

test('ranks are 1 to n, each once, and the first has the most merit of those that reach the top quarter', () => {
  const stem = fc.record({
    diameter: positive(30),
    lean: fc.double({ min: 0, max: 90, noNaN: true }),
    height: positive(80),
    bark: fc.constantFrom('none' as const, 'partial' as const, 'full' as const)
  })
  fc.assert(
    fc.property(fc.array(stem, { minLength: 1, maxLength: 9 }), (stems) => {
      const ranks = leaderRank(stems)
      expect([...ranks].sort((a, b) => a - b)).toEqual(stems.map((_, index) => index + 1))
      const thickest = Math.max(...stems.map(({ diameter }) => diameter))
      const tallest = Math.max(...stems.map(({ height }) => height))
      const reaching = stems.filter(({ height }) => height >= 0.75 * tallest)
      const best = Math.max(...reaching.map((one) => leaderMerit(one, thickest, tallest)))
      expect(leaderMerit(stems[ranks.indexOf(1)]!, thickest, tallest)).toBe(best)
    })
  )
})

test('a tapered piece lies between the cylinders of its two ends, a cone is a third of its cylinder', () => {
  const cylinder = (diameter: number, length: number): number => (Math.PI / 4) * diameter ** 2 * length
  fc.assert(
    fc.property(positive(3), positive(3), positive(30), (a, b, length) => {
      const volume = taperedVolume(a, b, length)
      expect(volume).toBeLessThanOrEqual(cylinder(Math.max(a, b), length) * (1 + 1e-12))
      expect(volume).toBeGreaterThanOrEqual(cylinder(Math.min(a, b), length) * (1 - 1e-12))
      expect(taperedVolume(a, 0, length)).toBeCloseTo(cylinder(a, length) / 3, 9)
    })
  )
})

test('weight is the same in either system, and unlisted species are refused', () => {
  const pounds = brushWeight(4, 12, 'red maple', 'in-ft') as number
  expect(brushKilograms(101.6, 3.6576, 'red maple') as number).toBeCloseTo(pounds * 0.45359237, 9)
  expect(brushWeight(4, 12, 'plastic', 'cm-m')).toMatchObject({ refusal: 'missing' })
})

test('a price leaves its margin, and never falls below the minimum', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 500000 }), fc.integer({ min: 0, max: 90 }), (cents, percent) => {
      const cost = new Money(cents).div(100)
      const margin = new Money(percent).div(100)
      const price = priceWithMargin(cost, new Money(0), margin)
      expect(price.minus(cost).minus(price.times(margin)).abs().lt('1e-15')).toBe(true)
      expect(priceWithMargin(cost, new Money(0), margin, new Money(60)).gte(60)).toBe(true)
    })
  )
})
