import { block, limbHeaders, limbRow, planOf } from './trees'

const codes = (plan: ReturnType<typeof planOf>): string[] => plan.problems.map(({ code }) => code)

describe('choosing the leader', () => {
  it('keeps the row marked as leader and says when two are marked', () => {
    const plan = planOf(
      block(
        limbHeaders,
        limbRow('A', 120, 100, 3, 10, { role: 'leader' }),
        limbRow('B', 90, 120, 3, 9.8, { role: 'leader' })
      )
    )
    expect(plan.trees[0]!.leader.name).toBe('A')
    expect(codes(plan)).toContain('leader-twice')
    expect(plan.trees[0]!.visits[0]!.cuts.map(({ limb }) => limb.id)).toEqual(['B'])
  })

  it('proposes the better of two stems that are each other’s stem, to be confirmed', () => {
    const plan = planOf(block(limbHeaders, limbRow('A', 90, 120, 3, 9.5), limbRow('B', 120, 90, 3, 10)))
    const { leader } = plan.trees[0]!
    expect(leader.name).toBe('B')
    expect(leader.confirm).toBe(true)
    expect(leader.reason).toContain('thicker, taller')
    expect(plan.trees[0]!.visits[0]!.cuts.every(({ limb }) => limb.id !== 'B')).toBe(true)
  })

  it('says decide on site where the candidates are close', () => {
    const plan = planOf(block(limbHeaders, limbRow('A', 100, 102, 3, 9.9), limbRow('B', 102, 100, 3, 10)))
    expect(plan.trees[0]!.leader.reason).toContain('too close to call')
    expect(plan.trees[0]!.leader.reason).toContain('decide on site')
  })

  it('ranks stems that reach the top quarter and have no stem beside them, and subordinates the others', () => {
    const plan = planOf(
      block(
        `${limbHeaders} | Lean angle`,
        [...limbRow('A', 95, null, 2.1, 9.6), 30],
        [...limbRow('B', 100, null, 2.05, 10), 5],
        [...limbRow('C', 40, 90, 5, 8), null]
      )
    )
    const { leader, visits } = plan.trees[0]!
    expect([leader.name, leader.confirm]).toEqual(['B', true])
    expect(leader.reason).toContain('of 2 stems B is more upright, thicker, taller')
    // They share a union, so that B is the stem beside A.
    const limb = visits[0]!.limbs.find(({ limb: { id } }) => id === 'A')!
    expect(limb.aspectRatio).toBeCloseTo(0.95, 12)
    expect(codes(plan)).toEqual(expect.arrayContaining(['leader-assumed', 'stem-beside-leader']))
    expect(plan.unplanned).toEqual([])
  })

  it('asks for the stem of a limb that starts elsewhere, or is too thin to be the trunk', () => {
    const elsewhere = planOf(
      block(limbHeaders, limbRow('A', 95, null, 4, 9.6), limbRow('B', 100, null, 2, 10))
    )
    expect(elsewhere.trees[0]!.leader.name).toBe('B')
    expect(elsewhere.unplanned.map(({ row }) => row)).toEqual([2])
    expect(codes(elsewhere)).toContain('missing-value')
    const thin = planOf(block(limbHeaders, limbRow('A', 40, null, 3, 9.6), limbRow('B', 60, 120, 5, 8)))
    expect(thin.trees[0]!.leader.limb).toBeNull()
    expect(thin.unplanned.map(({ row }) => row)).toEqual([2])
  })

  it('takes the trunk where it goes on above the listed limbs', () => {
    const plan = planOf(block(limbHeaders, limbRow('A', 90, 120, 3, 9), limbRow('B', 50, 110, 5, 8)))
    expect(plan.trees[0]!.leader.limb).toBeNull()
    expect(codes(plan)).toContain('leader-assumed')
  })

  it('names the likeliest leaders first where no stem diameter was measured at all', () => {
    const headers =
      'Tree | Height (m) | Crown base (m) | Life stage | Limb | Role | Limb dia (mm) | Origin (m) | Tip (m) | Lean angle'
    const tree = ['T1', 10, 2, 'young']
    const thin = [...tree, 'A', null, 60, 3, 9.6, 40]
    const upright = [...tree, 'B', 'codominant', 100, 3, 9.8, 5]
    const low = [...tree, 'C', null, 150, 3, 6, 5]
    const soon = [...tree, 'D', 'temporary', 150, 3, 10, 0]
    const plan = planOf(block(headers, thin, upright, low, soon))
    const { leader } = plan.trees[0]!
    expect([leader.limb, leader.confirm]).toEqual([null, true])
    expect(leader.reason).toContain('the likeliest leader is B, then A')
    expect(codes(plan)).not.toContain('leader-assumed')
    const asked = plan.problems.find(({ code }) => code === 'leader-unknown')
    expect(asked?.message).toContain('the likeliest of its limbs is B, then A.')
    // In whatever order the rows are; one that was measured beside its stem leaves the trunk as it was.
    const turned = planOf(block(headers, soon, low, upright, thin))
    expect(turned.trees[0]!.leader.reason).toBe(leader.reason)
    const known = planOf(block(`${headers} | Stem dia (mm)`, [...thin, 100], [...upright, 120]))
    expect(codes(known)).toContain('leader-assumed')
  })

  it('proposes another stem where the leader is dead or broken, and keeps the heir whole', () => {
    const headers = `${limbHeaders} | Live or dead | Broken`
    const dead = planOf(
      block(
        headers,
        [...limbRow('A', 120, 100, 3, 10, { role: 'leader' }), 'dead', null],
        [...limbRow('B', 100, 120, 3, 9.8), 'live', null],
        [...limbRow('C', 80, 110, 4, 9), 'live', null]
      )
    )
    expect(codes(dead)).toContain('leader-lost')
    expect(dead.trees[0]!.leader.name).toBe('B')
    const cuts = dead.trees[0]!.visits.flatMap((visit) => visit.cuts.map(({ limb, live }) => [limb.id, live]))
    expect(cuts).toContainEqual(['A', false])
    expect(cuts.every(([id]) => id !== 'B')).toBe(true)
    const alone = planOf(
      block(
        headers,
        [...limbRow('A', 120, 100, 3, 10, { role: 'leader' }), 'live', 'yes'],
        [...limbRow('B', 40, 120, 3, 6), 'live', null]
      )
    )
    expect(alone.trees[0]!.leader.name).toBe('A')
    expect(alone.trees[0]!.leader.confirm).toBe(true)
    // The broken leader is not removed but cut back to sound wood, and structure waits for the choice of another.
    const made = alone.trees[0]!.visits.flatMap((visit) => visit.cuts)
    expect(made.map(({ limb, kind, obligation, dose }) => [limb.id, kind, obligation, dose])).toEqual([
      ['A', 'reduce', 'broken', 0]
    ])
  })

  it('handles more than three competing leaders over two visits', () => {
    const rival = (id: string): ReturnType<typeof limbRow> => limbRow(id, 40, 50, 5, 9)
    const plan = planOf(
      block(
        limbHeaders,
        limbRow('A', 60, 50, 5, 10, { role: 'leader' }),
        ...['B', 'C', 'D', 'E'].map(rival),
        limbRow('F', 200, 400, 4, 5)
      )
    )
    expect(codes(plan)).toContain('many-leaders')
    const { visits } = plan.trees[0]!
    const rivals = (visit: number): string[] =>
      visits[visit]!.cuts.map(({ limb }) => limb.id).filter((id) => 'BCDE'.includes(id))
    expect(rivals(0)).toEqual(['B', 'C'])
    expect(rivals(1)).toEqual(expect.arrayContaining(['D', 'E']))
  })

  it('counts a limb that names the leader as its parent among the competing leaders', () => {
    const headers = `${limbHeaders} | Parent limb`
    const rival = (id: string): ReturnType<typeof limbRow> => [...limbRow(id, 40, 50, 5, 9), 'A']
    const plan = planOf(
      block(
        headers,
        [...limbRow('A', 60, 50, 5, 10, { role: 'leader' }), null],
        ...['B', 'C', 'D', 'E'].map(rival),
        [...limbRow('F', 200, 400, 4, 5), null]
      )
    )
    expect(codes(plan)).toContain('many-leaders')
    const first = plan.trees[0]!.visits[0]!.cuts.map(({ limb }) => limb.id)
    expect(first.filter((id) => 'BCDE'.includes(id))).toEqual(['B', 'C'])
  })

  it('holds structure back where two stems are too close to call, and says so', () => {
    const near = planOf(block(limbHeaders, limbRow('A', 98, 100, 3, 10), limbRow('B', 100, 98, 3, 10)))
    expect(codes(near)).toContain('leader-close')
    expect(near.trees[0]!.visits[0]!.cuts).toEqual([])
    expect(near.trees[0]!.outcomes.map(({ outcome, heldBy }) => [outcome, heldBy])).toEqual([
      ['wait', 'leader']
    ])
    const clear = planOf(block(limbHeaders, limbRow('A', 98, 104, 3, 8), limbRow('B', 104, 98, 3, 10)))
    expect(codes(clear)).not.toContain('leader-close')
    expect(clear.trees[0]!.visits[0]!.cuts).not.toEqual([])
  })

  it('cuts a dead leader back though no other stem takes over', () => {
    const headers = `${limbHeaders} | Live or dead`
    const plan = planOf(
      block(
        headers,
        [...limbRow('A', 120, null, 3, 10, { role: 'leader' }), 'dead'],
        [...limbRow('B', 40, 120, 3, 5), 'live']
      )
    )
    expect(
      plan.trees[0]!.visits[0]!.cuts.map(({ limb, obligation, reason }) => [limb.id, obligation, reason])
    ).toEqual([['A', 'dead', 'Dead wood: costs no live foliage. Cut it back to live wood.']])
  })
})
