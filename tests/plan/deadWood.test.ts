import { block, limbHeaders, limbRow, planOf } from './trees'

const headers = `${limbHeaders} | Live or dead`
const live = (row: ReturnType<typeof limbRow>) => [...row, 'live']
const dead = (row: ReturnType<typeof limbRow>) => [...row, 'dead']
const deadCutOf = (plan: ReturnType<typeof planOf>) =>
  plan.trees[0]!.visits[0]!.cuts.find(({ live: isLive }) => !isLive)

describe('dead wood', () => {
  it('has no aspect ratio and no standing where its stem was not measured', () => {
    const leader = limbRow('A', 120, null, 0, 10, { role: 'leader' })
    const cut = deadCutOf(planOf(block(headers, live(leader), dead(limbRow('B', 40, null, 4, 6)))))!
    expect(cut).toMatchObject({ kind: 'remove', cutDiameter: 40, aspectRatio: null, standing: null })
    expect(cut.projectedAspectRatio).toBeNull()
  })

  it('is not planned where a dead leader that another stem replaces came without a diameter', () => {
    const rows = [
      dead(limbRow('A', null, null, null, null, { role: 'leader' })),
      live(limbRow('B', 110, 115, 3, 9.8))
    ]
    const plan = planOf(block(headers, ...rows))
    expect(plan.trees[0]!.leader.name).toBe('B')
    expect(deadCutOf(plan)).toBeUndefined()
    expect(plan.unplanned).toEqual([expect.objectContaining({ tree: 'T1', row: 2 })])
    expect(plan.unplanned[0]!.reason).toContain('The limb diameter is missing at Trees!I2')
  })

  it('is cut back to a live limb on it, which is not planned until it is answered whether it would go', () => {
    const on = (row: ReturnType<typeof limbRow>, parent: string | null, life: string) => [
      ...row,
      life,
      parent
    ]
    const plan = planOf(
      block(
        `${headers} | Parent limb`,
        on(limbRow('A', 120, null, 0, 10, { role: 'leader' }), null, 'live'),
        on(limbRow('B', 60, 110, 3, 9), null, 'dead'),
        on(limbRow('C', 30, 40, 5, 9), 'B', 'live'),
        on(limbRow('D', 20, 30, 6, 9), 'C', 'live')
      )
    )
    expect(deadCutOf(plan)!.reason).toBe(
      'Dead wood: costs no live foliage. Cut it back to limb C, listed as live on it.'
    )
    expect(plan.trees[0]!.notJudged.map(({ id }) => id)).toEqual(['C', 'D'])
    const told = plan.problems.filter(({ code }) => code === 'parent-dead')
    expect(told).toHaveLength(1)
    expect(told[0]!.message).toContain('2 limbs are live and grow on limbs that are dead (“B” and “C”)')
  })
})
