/** Weights, hours and prices: direction in every input, never NaN. */
import fc from 'fast-check'
import { brushKilograms, taperedVolume } from '../../../src/formulas/brush'
import { crewHours } from '../../../src/formulas/time'
import { priceWithMargin } from '../../../src/formulas/price'
import { Money } from '../../../shared/money'
import { always, between, rises, valueOf } from './monotone'

describe('BRUSHWEIGHT and CREWHOURS', () => {
  const cut = between(5, 400)
  const length = between(0.2, 12)
  const species = fc.constantFrom('red maple', 'live oak', 'basswood', 'hardwood')

  it('weighs more for a thicker and a longer piece', () => {
    rises({ over: cut, others: fc.tuple(length, species), formula: brushKilograms })
    rises({
      over: length,
      others: fc.tuple(cut, species),
      formula: (long, thick, of) => brushKilograms(thick, long, of)
    })
  })

  it('weighs twice as much at twice the length and four times at twice the diameter', () => {
    always(fc.tuple(cut, length, species), (thick, long, of) => {
      const once = valueOf(brushKilograms(thick, long, of))
      expect(valueOf(brushKilograms(thick, 2 * long, of)) / once).toBeCloseTo(2, 9)
      expect(valueOf(brushKilograms(2 * thick, long, of)) / once).toBeCloseTo(4, 9)
    })
  })

  it('gives a piece more volume the thicker either end is', () => {
    const others = fc.tuple(cut, length)
    rises({ over: cut, others, formula: (one, other, long) => taperedVolume(one, other, long) })
    always(fc.tuple(cut, cut, length), (butt, tip, long) => {
      expect(taperedVolume(butt, tip, long) / taperedVolume(tip, butt, long)).toBeCloseTo(1, 9)
    })
  })

  it('takes no less time for a thicker or a higher cut, and more for one cut more', () => {
    const level = () => false
    const high = between(0, 20)
    const atTen = fc.constant<[number]>([10])
    const hours = (thick: number, up: number) => crewHours([{ diameter: thick, height: up }])
    rises<[number]>({ over: cut, others: atTen, formula: hours, moves: level, steps: 3 })
    rises<[number]>({
      over: high,
      others: fc.constant<[number]>([30]),
      formula: (up, thick) => hours(thick, up),
      moves: level,
      steps: 3
    })
    always(fc.tuple(cut, high, cut, high), (a, aHigh, b, bHigh) => {
      const one = [{ diameter: a, height: aHigh }]
      const two = [...one, { diameter: b, height: bHigh }]
      expect(crewHours(two)).toBeGreaterThan(crewHours(one))
      expect(crewHours(one, 'no machine')).toBeGreaterThan(crewHours(one, 'open'))
    })
  })
})

describe('JOBPRICE', () => {
  const price = (cost: number, overhead: number, margin: number, least = 0) =>
    priceWithMargin(new Money(cost), new Money(overhead), new Money(margin), new Money(least)).toNumber()
  const cost = between(10, 5000)
  const rate = between(0, 0.9)

  it('rises with the cost, the overhead, the margin and the minimum', () => {
    rises({ over: cost, others: fc.tuple(rate, rate), formula: price })
    rises({
      over: rate,
      others: fc.tuple(cost, rate),
      formula: (over, of, margin) => price(of, over, margin)
    })
    rises({
      over: rate,
      others: fc.tuple(cost, rate),
      formula: (margin, of, over) => price(of, over, margin)
    })
    rises({
      over: cost,
      others: fc.tuple(cost, rate, rate),
      formula: (least, of, over, margin) => price(of, over, margin, least),
      moves: (least, of, over, margin) => least > price(of, over, margin)
    })
  })

  it('never lies below the cost with its overhead', () => {
    always(fc.tuple(cost, rate, rate), (of, over, margin) => {
      expect(valueOf(price(of, over, margin))).toBeGreaterThanOrEqual(of * (1 + over) - 1e-9)
    })
  })
})
