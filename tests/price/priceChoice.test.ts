import * as fc from 'fast-check'
import type { Offered } from '../../src/price/budgetBounds'
import { chooseWithin } from '../../src/price/chooseWithin'
import { shareOut } from '../../src/price/shareOut'

interface Best {
  worth: number
  price: number
  choice: number[]
}

/** Every choice there is, one after the other; the rules of the tie are written out again here. */
function enumerated(trees: readonly (readonly Offered[])[], budget: number): number[] {
  let best: Best = { worth: -1, price: Infinity, choice: [] }
  const earlier = (a: number[], b: number[]) => {
    const place = a.findIndex((taken, index) => taken !== b[index])
    return place >= 0 && a[place]! > b[place]!
  }
  const go = (index: number, choice: number[], price: number, worth: number): void => {
    if (price > budget) return
    if (index === trees.length) {
      const better =
        worth > best.worth ||
        (worth === best.worth && price < best.price) ||
        (worth === best.worth && price === best.price && earlier(choice, best.choice))
      if (better) best = { worth, price, choice }
      return
    }
    const visits = trees[index]!
    let [sum, value] = [0, 0]
    for (let taken = 0; taken <= visits.length; taken++) {
      if (taken > 0) {
        sum += visits[taken - 1]!.price
        value += visits[taken - 1]!.worth
      }
      go(index + 1, [...choice, taken], price + sum, worth + value)
    }
  }
  go(0, [], 0, 0)
  return best.choice
}

const visits = fc.array(
  fc.record({ price: fc.integer({ min: 0, max: 30 }), worth: fc.integer({ min: 0, max: 12 }) }),
  { maxLength: 4 }
)

describe('trees and visits within a budget', () => {
  test('are the best of all choices, ties included (every choice enumerated)', () => {
    fc.assert(
      fc.property(fc.array(visits, { maxLength: 6 }), fc.integer({ min: 0, max: 140 }), (trees, budget) => {
        expect(chooseWithin(trees, budget)).toEqual(enumerated(trees, budget))
      }),
      { numRuns: 600 }
    )
  })

  test('are chosen where buying by worth for the price would miss the best', () => {
    const trees = [[{ price: 6, worth: 13 }], [{ price: 5, worth: 10 }], [{ price: 5, worth: 10 }]]
    expect(chooseWithin(trees, 10)).toEqual([0, 1, 1])
  })

  test('a later visit is bought only with the ones before it', () => {
    const trees = [
      [
        { price: 8, worth: 1 },
        { price: 2, worth: 100 }
      ],
      [{ price: 5, worth: 50 }]
    ]
    expect(chooseWithin(trees, 9)).toEqual([0, 1])
    expect(chooseWithin(trees, 10)).toEqual([2, 0])
    expect(chooseWithin(trees, 15)).toEqual([2, 1])
  })

  test('of equal worth the cheaper wins, then more of the earlier trees', () => {
    expect(chooseWithin([[{ price: 7, worth: 5 }], [{ price: 6, worth: 5 }]], 7)).toEqual([0, 1])
    expect(chooseWithin([[{ price: 6, worth: 5 }], [{ price: 6, worth: 5 }]], 7)).toEqual([1, 0])
  })

  test('nothing is bought with nothing, and everything with enough', () => {
    const trees = [[{ price: 3, worth: 1 }], [{ price: 4, worth: 2 }]]
    expect(chooseWithin(trees, 0)).toEqual([0, 0])
    expect(chooseWithin(trees, -1)).toEqual([0, 0])
    expect(chooseWithin(trees, 7)).toEqual([1, 1])
    expect(chooseWithin([], 7)).toEqual([])
  })

  test('a larger budget never relieves less, and the price never exceeds it', () => {
    const budgets = fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 }))
    fc.assert(
      fc.property(fc.array(visits, { maxLength: 20 }), budgets, (trees, both) => {
        const [small, large] = [...both].sort((a, b) => a - b) as [number, number]
        const sums = (budget: number) => {
          const bought = chooseWithin(trees, budget).flatMap((taken, index) => trees[index]!.slice(0, taken))
          const of = (part: keyof Offered) => bought.reduce((sum, visit) => sum + visit[part], 0)
          return { price: of('price'), worth: of('worth') }
        }
        expect(sums(small).price).toBeLessThanOrEqual(small)
        expect(sums(large).worth).toBeGreaterThanOrEqual(sums(small).worth)
      })
    )
  })
})

describe('a sum shared out in whole units', () => {
  const weights = fc.array(fc.integer({ min: 0, max: 100_000 }), { minLength: 1, maxLength: 40 })

  test('adds up exactly, and every share is its quota rounded down or up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), weights, (units, parts) => {
        const shares = shareOut(units, parts)
        expect(shares.reduce((sum, share) => sum + share, 0)).toBe(units)
        const total = parts.reduce((sum, part) => sum + part, 0)
        if (total > 0)
          shares.forEach((share, index) => {
            expect(Math.abs(share - (units * parts[index]!) / total)).toBeLessThan(1)
          })
      })
    )
  })

  test('gives what is left to the largest remainders, the earlier of two equal ones first', () => {
    expect(shareOut(10, [1, 1, 1])).toEqual([4, 3, 3])
    expect(shareOut(11, [1, 1, 1])).toEqual([4, 4, 3])
    // Quotas 41.8, 20.9 and 37.3: the units left go to the second and the first.
    expect(shareOut(100, [418, 209, 373])).toEqual([42, 21, 37])
  })

  test('counts all alike where every weight is 0', () => {
    expect(shareOut(5, [0, 0])).toEqual([3, 2])
  })
})
