import fc from 'fast-check'
import { runs } from './trees'
import { leaveAlone, noEffort, type Item, type Limits } from '../../src/plan/choice'
import { choose, choosing } from '../../src/plan/choose'
import { choosePlainly } from './plainChoice/choosePlainly'

interface Result {
  gain: number
  units: number
  cuts: number
  chosen: readonly number[]
}

const empty: Item = { gain: 0, units: 0, cuts: 0, lower: 0, raises: false, leaders: 0 }

function total(
  groups: Item[][],
  chosen: readonly number[]
): Result & { lower: number; raised: number; leaders: number } {
  const items = groups.map((group, at) => (chosen[at] === leaveAlone ? empty : group[chosen[at]!]!))
  const sum = (of: (item: Item) => number): number => items.reduce((all, item) => all + of(item), 0)
  return {
    gain: sum((item) => item.gain),
    units: sum((item) => item.units),
    cuts: sum((item) => item.cuts),
    lower: sum((item) => item.lower),
    raised: sum((item) => (item.raises ? 1 : 0)),
    leaders: sum((item) => item.leaders),
    chosen
  }
}

function fits(groups: Item[][], chosen: readonly number[], limits: Limits): boolean {
  const all = total(groups, chosen)
  return (
    all.units <= limits.units &&
    all.cuts <= limits.cuts &&
    limits.lower + all.lower >= -1e-9 &&
    limits.holders - all.raised > 0 &&
    all.leaders <= limits.leaders
  )
}

/** Every combination, the first best kept: greatest gain, then least dose, fewest cuts, the earlier limb cut. */
function enumerate(groups: Item[][], limits: Limits): Result {
  let best = total(
    groups,
    groups.map(() => leaveAlone)
  )
  const walk = (at: number, chosen: number[]): void => {
    if (at === groups.length) {
      if (!fits(groups, chosen, limits)) return
      const result = total(groups, chosen)
      const better =
        result.gain !== best.gain
          ? result.gain > best.gain
          : result.units !== best.units
            ? result.units < best.units
            : result.cuts < best.cuts
      if (better) best = result
      return
    }
    // Cutting comes before leaving alone, so that among equals the earlier limb is the one that is cut.
    for (let index = 0; index < groups[at]!.length; index++) walk(at + 1, [...chosen, index])
    walk(at + 1, [...chosen, leaveAlone])
  }
  walk(0, [])
  return best
}

const item = (fine: boolean): fc.Arbitrary<Item> =>
  fc.record({
    gain: fc.integer({ min: 1, max: fine ? 100000 : 6 }),
    units: fc.integer({ min: 0, max: fine ? 100000 : 6 }),
    cuts: fc.constantFrom(1, 1, 1, 2),
    lower: fc.constantFrom(0, 0, -0.02, -0.05, 0.03),
    raises: fc.boolean(),
    leaders: fc.constantFrom(0, 0, 1)
  })

const cases = (fine: boolean): fc.Arbitrary<{ groups: Item[][]; limits: Limits }> =>
  fc.record({
    groups: fc.array(fc.array(item(fine), { maxLength: 4 }), { maxLength: 6 }),
    limits: fc.record({
      units: fc.integer({ min: 0, max: fine ? 200000 : 14 }),
      cuts: fc.integer({ min: 1, max: 6 }),
      lower: fc.constantFrom(0, 0.04, 0.1, 1),
      holders: fc.constantFrom(1, 2, 3, Infinity),
      leaders: fc.constantFrom(1, 2, Infinity)
    })
  })

describe('the choice of a visit', () => {
  it('gains as much as the best of all combinations and keeps every limit', () => {
    fc.assert(
      fc.property(cases(true), ({ groups, limits }) => {
        const chosen = choose(groups, limits)
        expect(fits(groups, chosen, limits)).toBe(true)
        expect(total(groups, chosen).gain).toBe(enumerate(groups, limits).gain)
      }),
      runs(600)
    )
  })

  it('settles ties by the lower dose, then fewer cuts, then the inventory’s order', () => {
    fc.assert(
      fc.property(cases(false), ({ groups, limits }) => {
        const chosen = choose(groups, limits)
        const best = enumerate(groups, limits)
        const got = total(groups, chosen)
        expect([got.gain, got.units, got.cuts]).toEqual([best.gain, best.units, best.cuts])
      }),
      runs(600)
    )
  })

  it('cuts the earlier of two equal limbs when only one may be cut', () => {
    const same: Item = { gain: 5, units: 5, cuts: 1, lower: 0, raises: false, leaders: 0 }
    const limits = { units: 5, cuts: 6, lower: 1, holders: Infinity, leaders: Infinity }
    expect(choose([[same], [same], [same]], limits)).toEqual([0, leaveAlone, leaveAlone])
  })

  it('leaves everything alone where nothing fits', () => {
    const limits = { units: 4, cuts: 6, lower: 1, holders: Infinity, leaders: Infinity }
    expect(choose([[{ ...empty, gain: 9, units: 5, cuts: 1 }]], limits)).toEqual([leaveAlone])
  })
})

/** Groups of items such as trees have them, with more to choose than can be tried one by one. */
const many = fc.record({
  groups: fc.array(fc.array(item(true), { minLength: 1, maxLength: 5 }), { minLength: 8, maxLength: 24 }),
  limits: fc.record({
    units: fc.integer({ min: 0, max: 400000 }),
    cuts: fc.integer({ min: 0, max: 6 }),
    lower: fc.constantFrom(0, 0.04, 1),
    holders: fc.constantFrom(1, 2, Infinity),
    leaders: fc.constantFrom(1, 2, Infinity)
  })
})

describe('the search among numbers', () => {
  it('looks at what the plain search looks at, and chooses the same', () => {
    for (const drawn of [cases(false), cases(true), many])
      fc.assert(
        fc.property(drawn, ({ groups, limits }) => {
          const [plain, ours] = [noEffort(), noEffort()]
          expect(choose(groups, limits, ours)).toEqual(choosePlainly(groups, limits, plain))
          expect(ours).toEqual(plain)
        }),
        runs(300)
      )
  })

  it('rests and goes on, while others are begun and ended', () => {
    const cuts = Array.from({ length: 30 }, (_none, at): Item[] =>
      [1, 2, 3].map((step) => ({
        gain: 1000 * step + ((at * 37) % 11),
        units: 1000 * step + ((at * 53) % 13),
        cuts: 1,
        lower: 0,
        raises: false,
        leaders: 0
      }))
    )
    const limits = { units: 9007, cuts: 30, lower: 1, holders: Infinity, leaders: Infinity }
    const resting = choosing(cuts, limits)
    let step = resting.next()
    let rests = 0
    for (; step.done !== true; rests++) {
      if (rests < 3) expect(choose(cuts.slice(0, 4), limits)).toEqual(choosePlainly(cuts.slice(0, 4), limits))
      step = resting.next()
    }
    expect(rests).toBeGreaterThan(3)
    expect(step.value).toEqual(choosePlainly(cuts, limits))
  })
})
