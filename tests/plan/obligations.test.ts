/** The first pass of a visit: what obliges to a cut, in order, each under the allowance that is left. */
import type { Cell } from '../../shared/cells'
import type { Cut, TreePlan } from '../../src/plan/plan'
import { block, planOf } from './trees'

const headers =
  'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Trunk dia (mm) | Clearance (m) | Clearance side | Local limit | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Lowest foliage (m) | Bearing | Broken | Rubbing | Decay | First lateral height (m) | Foliage share'

interface Whole {
  height?: number
  base?: number
  stage?: string
  clearance?: Cell
  side?: Cell
  limit?: Cell
}

interface Row {
  id: string
  role?: string
  d?: number
  stem?: number
  origin?: number
  tip?: number
  lowest?: Cell
  bearing?: Cell
  broken?: boolean
  rubbing?: boolean
  decay?: boolean
  lateral?: Cell
  share?: Cell
}

/** An invented tree of 10 m with its crown from 1 m, which limbs that are not listed hold. */
function planned(whole: Whole, ...limbs: Row[]): TreePlan {
  const { height = 10, base = 1, stage = 'young', clearance = null, side = null, limit = null } = whole
  const rows = [{ id: 'A', role: 'leader', d: 180, stem: 180, origin: 1, tip: height }, ...limbs].map(
    ({ id, role, d, stem, origin, tip, lowest, bearing, broken, rubbing, decay, lateral, share }: Row) => [
      'T1',
      height,
      base,
      stage,
      'good',
      200,
      clearance,
      side,
      limit,
      id,
      role ?? null,
      d ?? 40,
      stem ?? 160,
      origin ?? 3,
      tip ?? 6,
      lowest ?? null,
      bearing ?? null,
      broken === true ? 'yes' : null,
      rubbing === true ? 'yes' : null,
      decay === true ? 'yes' : null,
      lateral ?? null,
      share ?? null
    ]
  )
  return planOf(block(headers, ...rows)).trees[0]!
}

const cutsOf = ({ visits }: TreePlan): readonly Cut[] => visits[0]!.cuts
const acts = (plan: TreePlan): unknown[] =>
  cutsOf(plan).map(({ limb, kind, obligation }) => [limb.id, kind, obligation])
const endOf = (plan: TreePlan, id: string) => plan.outcomes.find(({ limb }) => limb.id === id)!

describe('clearance', () => {
  it('raises a limb where its hanging branches are half of its foliage at most', () => {
    // (3 − 2.5) / (6.5 − 2.5) is an eighth of its foliage, spread evenly over its height (house rule).
    const plan = planned({ clearance: 3 }, { id: 'B', origin: 3, tip: 6.5, lowest: 2.5, share: 0.08 })
    expect(acts(plan)).toEqual([['B', 'raise', 'clearance']])
    const [cut] = cutsOf(plan)
    expect(cut!.share).toBeCloseTo(0.125, 12)
    expect(cut!.dose).toBeCloseTo(0.01, 12)
    expect([cut!.cutHeight, cut!.cutDiameter, cut!.tipAfter]).toEqual([3, null, null])
    expect(plan.clearance).toEqual({ required: 3, reachedNow: 3, reachedYear: 2030, heldBy: null })
  })

  it('removes a limb that hangs for more than half, where it may be removed', () => {
    const plan = planned({ clearance: 3 }, { id: 'B', origin: 2.5, tip: 3.4, lowest: 2, share: 0.05 })
    expect(acts(plan)).toEqual([['B', 'remove', 'clearance']])
    expect(endOf(plan, 'B').outcome).toBe('removed')
  })

  it('reduces a limb that is too large to remove as the first step, and says that its size holds the clearance', () => {
    const plan = planned(
      { clearance: 3 },
      { id: 'B', d: 110, stem: 150, origin: 2.5, tip: 3.4, lowest: 2, share: 0.2 }
    )
    const [cut] = cutsOf(plan)
    expect([cut!.kind, cut!.obligation, cut!.must]).toEqual(['reduce', 'clearance', true])
    expect(plan.clearance).toMatchObject({ reachedNow: 2, heldBy: 'size' })
  })

  it('goes from the lowest foliage up, and a limb that does not fit waits for the allowance', () => {
    const plan = planned(
      { clearance: 3, limit: 0.05 },
      { id: 'B', origin: 2.6, tip: 3.3, lowest: 2.6, share: 0.04 },
      { id: 'C', origin: 2.2, tip: 3.3, lowest: 2.2, share: 0.04 },
      { id: 'D', origin: 2.4, tip: 3.3, lowest: 2.4, share: 0.01 }
    )
    expect(acts(plan).map((act) => (act as string[])[0])).toEqual(['C', 'D'])
    expect(plan.clearance!.reachedNow).toBeCloseTo(2.6, 9)
    expect(plan.clearance).toMatchObject({ heldBy: 'allowance', reachedYear: 2032 })
  })

  it('leaves limbs alone that hang on another side, 90° off or more', () => {
    const sides = (bearing: number): unknown[] =>
      acts(planned({ clearance: 3, side: 'N' }, { id: 'B', tip: 6.5, lowest: 2.5, bearing, share: 0.08 }))
    expect(sides(90)).toHaveLength(1)
    expect(sides(91)).toHaveLength(0)
    expect(sides(270)).toHaveLength(1)
  })

  it('raises no higher than the crown ratio allows, and forecasts when the tree is tall enough', () => {
    // 5 m is clear with a crown of 60 % on a tree of 12.5 m: of 10 m only 4 m may be cleared.
    const plan = planned({ clearance: 5 }, { id: 'B', origin: 3, tip: 8, lowest: 3, share: 0.08 })
    expect(cutsOf(plan)[0]).toMatchObject({ kind: 'raise', cutHeight: 4 })
    // Height as trunk diameter to the power 2/3: 200·(1.25^1.5 − 1) / 10.16 = 7.8 years (house rule).
    expect(plan.clearance).toEqual({ required: 5, reachedNow: 4, reachedYear: 2038, heldBy: 'crown ratio' })
  })

  it('comes before structure, whatever structure would gain', () => {
    const rival = { id: 'C', d: 140, stem: 150, origin: 3, tip: 10, share: 0.3 }
    const low = { id: 'B', origin: 2.2, tip: 3.2, lowest: 2.2, share: 0.12 }
    const plan = planned({ clearance: 3, limit: 0.13 }, rival, low)
    expect(acts(plan)[0]).toEqual(['B', 'remove', 'clearance'])
  })
})

describe('broken and rubbing wood', () => {
  it('cuts a broken limb back to its lateral, taking nothing of the allowance', () => {
    const plan = planned({}, { id: 'B', origin: 3, tip: 7, broken: true, lateral: 5 })
    const [cut] = cutsOf(plan)
    expect([cut!.kind, cut!.obligation, cut!.dose, cut!.cutHeight]).toEqual(['reduce', 'broken', 0, 5])
    expect(cut!.cutDiameter).toBeCloseTo(20, 9)
    expect(cut!.share).toBeCloseTo(0.25, 9)
  })

  it('removes a broken limb where no sound lateral is known', () => {
    expect(acts(planned({}, { id: 'B', d: 120, stem: 150, broken: true }))).toEqual([
      ['B', 'remove', 'broken']
    ])
  })

  it('removes the lesser of two rubbing limbs and leaves the other', () => {
    const plan = planned(
      {},
      { id: 'B', d: 60, rubbing: true, share: 0.1 },
      { id: 'C', d: 40, rubbing: true, share: 0.05 }
    )
    expect(acts(plan)).toEqual([['C', 'remove', 'rubbing']])
  })

  it('shortens a rubbing limb that is too large to remove by the largest share that fits', () => {
    const plan = planned(
      { limit: 0.11 },
      { id: 'B', d: 110, stem: 150, origin: 3, tip: 9, rubbing: true, share: 0.2 },
      { id: 'C', d: 120, stem: 150, origin: 4, tip: 9, rubbing: true, share: 0.1 }
    )
    const [cut] = cutsOf(plan)
    // Four eighths take 10 % of the tree, five would take 12.5 %.
    expect([cut!.limb.id, cut!.obligation, cut!.share]).toEqual(['B', 'rubbing', 0.5])
  })

  it('shortens one that is marked alone by the least there is, as nobody knows where it rubs', () => {
    const alone = { id: 'B', d: 110, stem: 150, origin: 3, tip: 9, rubbing: true, share: 0.2 }
    const [cut] = cutsOf(planned({ limit: 0.2 }, alone))
    expect([cut!.kind, cut!.obligation, cut!.share]).toEqual(['reduce', 'rubbing', 0.25])
  })
})

describe('temporary limbs', () => {
  it('are removed before they pass 2 in or half of their stem', () => {
    const due = planned({}, { id: 'B', role: 'temporary', d: 50, stem: 200, share: 0.02 })
    const early = planned({}, { id: 'B', role: 'temporary', d: 30, stem: 200, share: 0.02 })
    expect(acts(due)).toEqual([['B', 'remove', 'temporary']])
    expect(acts(early)).toEqual([])
  })

  it('that are due come off rather than being raised for the clearance, where that fits', () => {
    const hanging = {
      id: 'B',
      role: 'temporary',
      d: 50,
      stem: 200,
      origin: 2,
      tip: 8,
      lowest: 2,
      share: 0.04
    }
    expect(acts(planned({ clearance: 3 }, hanging))).toEqual([['B', 'remove', 'temporary']])
    expect(acts(planned({ clearance: 3 }, { ...hanging, d: 30 }))[0]).toEqual(['B', 'raise', 'clearance'])
    expect(acts(planned({ clearance: 3, limit: 0.02 }, hanging))[0]).toEqual(['B', 'raise', 'clearance'])
  })
})

describe('decay', () => {
  it('stops every live cut on its limb, which waits for an inspection', () => {
    const plan = planned(
      { clearance: 3 },
      { id: 'B', d: 140, stem: 150, origin: 2, tip: 10, lowest: 2, decay: true, share: 0.3 }
    )
    expect(acts(plan)).toEqual([])
    expect(endOf(plan, 'B')).toMatchObject({ outcome: 'wait', heldBy: 'inspect first' })
    expect(plan.clearance!.heldBy).toBe('inspect first')
  })

  it('of the leader lets structure wait, and obligations go on', () => {
    const rows = [
      ['T1', 10, 1, 'young', 'good', 200, 3, null, null, 'A', 'leader', 180, 180, 1, 10].concat([
        null,
        null,
        null,
        null,
        'yes',
        null,
        null
      ] as never[]),
      ['T1', null, null, null, null, null, null, null, null, 'B', null, 140, 150, 3, 10].concat([
        null,
        null,
        null,
        null,
        null,
        null,
        0.3
      ] as never[]),
      ['T1', null, null, null, null, null, null, null, null, 'C', null, 40, 160, 2, 3.2].concat([
        2,
        null,
        null,
        null,
        null,
        null,
        0.05
      ] as never[])
    ]
    const plan = planOf(block(headers, ...rows))
    expect(acts(plan.trees[0]!)).toEqual([['C', 'remove', 'clearance']])
    expect(endOf(plan.trees[0]!, 'B')).toMatchObject({ outcome: 'wait', heldBy: 'leader' })
    expect(plan.problems.map(({ code }) => code)).toContain('leader-decayed')
  })
})

describe('a limb with an obligation and decay', () => {
  it.each<[string, Partial<Row>, Partial<Whole>]>([
    ['in the clearance', { lowest: 2 }, { clearance: 4 }],
    ['broken', { broken: true }, {}],
    ['rubbing', { rubbing: true }, {}]
  ])('%s waits to be inspected, and says so', (_what, row, whole) => {
    const plan = planned(whole, { id: 'B', d: 30, stem: 150, origin: 3, tip: 5, decay: true, ...row })
    expect(plan.visits.flatMap(({ cuts }) => cuts)).toEqual([])
    expect(plan.outcomes.map(({ limb, outcome, heldBy }) => [limb.id, outcome, heldBy])).toEqual([
      ['B', 'wait', 'inspect first']
    ])
  })
})
