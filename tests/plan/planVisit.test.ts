import fc from 'fast-check'
import type { Cell } from '../../shared/cells'
import { handOptimum, type HandLimb, type HandTree } from './byHand'
import { block, limbHeaders, limbRow, planOf, runs } from './trees'

const tenths = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(low * 10), max: Math.round(high * 10) }).map((value) => value / 10)

const handLimb: fc.Arbitrary<HandLimb> = fc
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

const handTree: fc.Arbitrary<HandTree> = fc
  .record({
    stage: fc.constantFrom('young' as const, 'medium' as const, 'mature' as const),
    limbs: fc.array(handLimb, { minLength: 1, maxLength: 5 })
  })
  .map(({ stage, limbs }) => ({
    H: 10,
    base: 2,
    stage,
    allowed: { young: 0.25, medium: 0.2, mature: 0.1 }[stage],
    g: stage === 'mature' ? 5.08 : 10.16,
    years: { young: 2, medium: 3, mature: 5 }[stage],
    limbs
  }))

function rowsOf(tree: HandTree): Cell[][] {
  const leader = limbRow('A', null, null, null, null, { role: 'leader', stage: tree.stage })
  return [
    leader,
    ...tree.limbs.map(({ d, D, origin, tip, bark }, at) =>
      limbRow(`L${at}`, d, D, origin, tip, { bark, stage: tree.stage })
    )
  ]
}

describe('one visit', () => {
  it('reaches the optimum that full enumeration of the rules finds by hand', () => {
    fc.assert(
      fc.property(handTree, (tree) => {
        const plan = planOf(block(limbHeaders, ...rowsOf(tree)), { visits: 1 })
        const visit = plan.trees[0]!.visits[0]!
        const best = handOptimum(tree)
        expect(Math.abs(visit.objective - best)).toBeLessThanOrEqual(1e-3 + best * 1e-9)
        expect(visit.dose).toBeLessThanOrEqual(tree.allowed + 1e-9)
      }),
      runs(400)
    )
  })

  it('gives the same plan in inches and feet as in millimeters and meters', () => {
    const imperial = limbHeaders.replaceAll('(mm)', '(in)').replaceAll('(m)', '(ft)')
    fc.assert(
      fc.property(handTree, (tree) => {
        const metric = rowsOf(tree)
        const converted = metric.map((row) =>
          row.map((cell, at) =>
            typeof cell !== 'number' ? cell : at === 8 || at === 9 ? cell / 25.4 : cell / 0.3048
          )
        )
        const one = planOf(block(limbHeaders, ...metric)).trees[0]!
        const other = planOf(block(imperial, ...converted)).trees[0]!
        const shape = (plan: typeof one): unknown =>
          plan.visits.map(({ cuts }) =>
            cuts.map(({ limb, kind, share }) => [limb.id, kind, share.toFixed(9)])
          )
        expect(shape(other)).toEqual(shape(one))
      }),
      runs(150)
    )
  })

  it('never cuts the leader, never takes more than allowed, never takes more than a limb has', () => {
    fc.assert(
      fc.property(handTree, (tree) => {
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

  it('plans the same for any order of the rows, where nothing ties', () => {
    fc.assert(
      fc.property(handTree, fc.nat(), (tree, turn) => {
        const rows = rowsOf(tree)
        const turned = [...rows.slice(turn % rows.length), ...rows.slice(0, turn % rows.length)]
        const objective = (inventory: Cell[][]): number[] =>
          planOf(block(limbHeaders, ...inventory), { visits: 1 }).trees[0]!.visits.map(
            (visit) => visit.objective
          )
        expect(objective(turned)[0]).toBeCloseTo(objective(rows)[0]!, 6)
      }),
      runs(150)
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
