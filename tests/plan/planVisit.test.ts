import fc from 'fast-check'
import type { Cell } from '../../shared/cells'
import { block, limbHeaders, limbRow, planOf, runs } from './trees'

/** A limb by its six numbers, and a tree of 10 m. Diameters in mm, heights in m. */
interface DrawnLimb {
  d: number
  D: number
  origin: number
  tip: number
  bark: 'none' | 'partial' | 'full'
}

interface DrawnTree {
  stage: 'young' | 'medium' | 'mature'
  limbs: DrawnLimb[]
}

const tenths = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(low * 10), max: Math.round(high * 10) }).map((value) => value / 10)

const drawnLimb: fc.Arbitrary<DrawnLimb> = fc
  .record({
    D: fc.integer({ min: 40, max: 260 }),
    part: tenths(0.1, 1.1),
    origin: tenths(1.5, 7),
    rise: tenths(0.5, 6),
    bark: fc.constantFrom('none' as const, 'none' as const, 'partial' as const, 'full' as const)
  })
  .map(({ D, part, origin, rise, bark }) => ({
    D,
    d: Math.max(8, Math.round(D * part)),
    origin,
    tip: Math.min(10, origin + rise),
    bark
  }))

const drawnTree: fc.Arbitrary<DrawnTree> = fc.record({
  stage: fc.constantFrom('young' as const, 'medium' as const, 'mature' as const),
  limbs: fc.array(drawnLimb, { minLength: 1, maxLength: 5 })
})

function rowsOf(tree: DrawnTree): Cell[][] {
  const leader = limbRow('A', null, null, null, null, { role: 'leader', stage: tree.stage })
  return [
    leader,
    ...tree.limbs.map(({ d, D, origin, tip, bark }, at) =>
      limbRow(`L${at}`, d, D, origin, tip, { bark, stage: tree.stage })
    )
  ]
}

describe('one visit', () => {
  it('never cuts the leader, never takes more than allowed, never takes more than a limb has', () => {
    fc.assert(
      fc.property(drawnTree, (tree) => {
        const plan = planOf(block(limbHeaders, ...rowsOf(tree))).trees[0]!
        for (const visit of plan.visits) {
          expect(visit.dose).toBeLessThanOrEqual(visit.allowedRemoval + 1e-9)
          expect(visit.cuts.length).toBeLessThanOrEqual(6)
          expect(visit.lowerFoliageAfter).toBeGreaterThanOrEqual(
            Math.min(0.5, visit.lowerFoliageBefore) - 1e-9
          )
          for (const cut of visit.cuts) {
            expect(cut.limb.id).not.toBe('A')
            const share = visit.limbs.find(({ limb }) => limb === cut.limb)!.foliageShare
            expect(cut.dose).toBeLessThanOrEqual(share + 1e-12)
            for (const value of [cut.dose, cut.work.diameter, cut.priority, cut.nextPriority, cut.share])
              expect(Number.isFinite(value)).toBe(true)
          }
        }
      }),
      runs(200)
    )
  })

  it('lists dead wood free of dose and leaves a tree in poor vigor its live wood', () => {
    const headers = `${limbHeaders} | Live or dead`
    const plan = planOf(
      block(
        headers,
        [...limbRow('A', null, null, null, null, { role: 'leader', vigor: 'poor' }), 'live'],
        [...limbRow('B', 90, 100, 3, 9, { vigor: 'poor' }), 'live'],
        [...limbRow('C', 40, null, null, null, { vigor: 'poor' }), 'dead']
      )
    )
    const visit = plan.trees[0]!.visits[0]!
    expect(visit.cuts.map(({ limb, kind, dose }) => [limb.id, kind, dose])).toEqual([['C', 'remove', 0]])
    expect(visit.dose).toBe(0)
    expect(plan.problems.map(({ code }) => code)).toContain('poor-vigor')
    expect(plan.trees[0]!.outcomes.map(({ limb, outcome, heldBy }) => [limb.id, outcome, heldBy])).toEqual([
      ['B', 'wait', 'allowance']
    ])
  })

  it('judges a dead limb by the stem above its union, as the live one beside it', () => {
    const headers = `${limbHeaders} | Live or dead | Stem measured`
    const plan = planOf(
      block(
        headers,
        [...limbRow('A', null, null, null, null, { role: 'leader' }), 'live', ''],
        [...limbRow('B', 100, 125, 2, 9), 'live', 'below'],
        [...limbRow('C', 100, 125, 6, 9), 'dead', 'below']
      )
    )
    const visit = plan.trees[0]!.visits[0]!
    const live = visit.limbs.find(({ limb }) => limb.id === 'B')!
    const dead = visit.cuts.find(({ limb }) => limb.id === 'C')!
    expect(live.aspectRatio).toBeCloseTo(4 / 3, 12)
    expect([dead.aspectRatio, dead.standing]).toEqual([live.aspectRatio, live.standing])
    expect(dead.standing).toBe('codominant')
  })

  it('does not count foliage twice where a limb goes with its parent', () => {
    const headers = `${limbHeaders} | Parent limb`
    const plan = planOf(
      block(
        headers,
        [...limbRow('A', null, null, null, null, { role: 'leader' }), null],
        [...limbRow('B', 80, 100, 2, 10), null],
        [...limbRow('B1', 50, 60, 8, 10), 'B'],
        [...limbRow('B2', 30, 75, 3, 5), 'B']
      ),
      { visits: 1 }
    )
    const visit = plan.trees[0]!.visits[0]!
    const byId = new Map(visit.limbs.map((state) => [state.limb.id, state]))
    expect(byId.get('B')!.decision).toBe('reduce')
    expect(byId.get('B1')!.reason).toBe('goes with limb B')
    expect(byId.get('B1')!.nextPriority).toBe(0)
    expect(visit.dose).toBeCloseTo(visit.cuts.find(({ limb }) => limb.id === 'B')!.dose, 12)
    expect(byId.get('B1')!.foliageShare).toBeLessThanOrEqual(byId.get('B')!.foliageShare)
  })
})
