import fc from 'fast-check'
import { daysTaken, fillDays, fullest, leastDays } from '../../../src/price/days/fillDays'
import { runs } from '../../plan/trees'

const stops = (hours: readonly number[]) => hours.map((each, at) => ({ hours: each, at }))
const sum = (of: readonly number[]) => of.reduce((all, each) => all + each, 0)

describe('the fullest day', () => {
  /** Every subset tried one by one. */
  function bestOf(weights: readonly number[], room: number): number {
    let best = 0
    for (let chosen = 0; chosen < 2 ** weights.length; chosen++) {
      const taken = sum(weights.filter((_weight, at) => (chosen >> at) & 1))
      if (taken <= room && taken > best) best = taken
    }
    return best
  }

  it('is found, as by trying every choice', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 90 }), { maxLength: 9 }),
        fc.integer({ min: 1, max: 200 }),
        (weights, room) => {
          const taken = fullest(weights, room)
          expect(new Set(taken).size).toBe(taken.length)
          expect(sum(taken.map((at) => weights[at]!))).toBe(bestOf(weights, room))
        }
      ),
      runs(300)
    )
  })

  it('takes what is wanted first where that fills it too', () => {
    expect(fullest([30, 40, 30, 40], 70)).toEqual([0, 1])
  })
})

describe('days', () => {
  const hours = fc.integer({ min: 0, max: 900 }).map((each) => each / 100)
  const groups = fc.array(fc.record({ hours: fc.array(hours, { maxLength: 8 }), isFree: fc.boolean() }), {
    maxLength: 4
  })

  it('hold every stop once, none too many, in the order of the groups', () => {
    fc.assert(
      fc.property(groups, fc.integer({ min: 50, max: 800 }), (drawn, room) => {
        let next = 0
        const given = drawn.map(({ hours: own, isFree }, group) => ({
          stops: own.map((each) => ({ hours: each, group, at: next++ })),
          isFree
        }))
        const days = fillDays(given, room / 100)
        const all = days.flat()
        expect(all.map(({ at }) => at).sort((a, b) => a - b)).toEqual(
          Array.from({ length: next }, (_none, at) => at)
        )
        expect(all.map(({ group }) => group)).toEqual(all.map(({ group }) => group).sort((a, b) => a - b))
        for (const day of days) {
          const taken = sum(day.map((stop) => Math.round(stop.hours * 100)))
          expect(taken <= room || day.filter((stop) => stop.hours > 0).length === 1).toBe(true)
        }
        for (const { stops: own, isFree } of given)
          if (!isFree) expect(all.filter((stop) => own.includes(stop))).toEqual(own)
        const taken = sum(days.map((day) => daysTaken(sum(day.map((stop) => stop.hours)), room / 100)))
        expect(leastDays(all, room / 100)).toBeLessThanOrEqual(taken)
      }),
      runs(300)
    )
  })

  it('are fewer where their order is free', () => {
    const list = stops([4, 4, 3, 3])
    expect(fillDays([{ stops: list, isFree: false }], 7).length).toBe(3)
    expect(fillDays([{ stops: list, isFree: true }], 7).map((day) => day.map(({ at }) => at))).toEqual([
      [0, 2],
      [1, 3]
    ])
  })

  it('have a bound that halves and long stops are counted in', () => {
    expect(leastDays(stops([4, 4, 4]), 7)).toBe(3)
    expect(leastDays(stops([15, 1]), 7)).toBe(4)
    expect(leastDays(stops([3.5, 3.5]), 7)).toBe(1)
    expect(leastDays([], 7)).toBe(0)
  })
})
