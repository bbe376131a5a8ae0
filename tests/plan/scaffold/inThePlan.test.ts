/** What the scaffold does to a plan: temporary limbs go in time, permanent ones stay, crowding goes by what is permanent. */
import { firstVisit } from '../../../src/plan/firstVisit'
import type { Cut, TreePlan } from '../../../src/plan/plan'
import { removalReason } from '../../../src/plan/removalReason'
import { plannedTree, type Row } from './trees'

const cutsOf = ({ visits }: TreePlan): readonly Cut[] => visits.flatMap(({ cuts }) => cuts)
const removed = (tree: TreePlan): readonly string[] =>
  cutsOf(tree)
    .filter(({ kind }) => kind === 'remove')
    .map(({ limb }) => limb.id)

/** The owner says how high, and no clearance is asked for. */
const whole = { clearance: null, lowest: 2.5 }

describe('temporary limbs of the scaffold', () => {
  // 45 + 3·10.16·45/165 = 53.3 mm, over 2 in before the next visit in three years.
  const due: Row = { id: 'L', d: 45, stem: 165, origin: 2.1, tip: 5, bearing: 0 }
  // 40 + 5·10.16·40/180 = 51.3 mm in 2035: the visit of 2033 is the last before.
  const later: Row = { id: 'M', d: 40, stem: 180, origin: 2.2, tip: 4, bearing: 180 }
  const stays: Row = { id: 'B', d: 60, stem: 165, origin: 3, bearing: 90, foliage: 2 }

  it('are removed at the last visit before they grow too thick', () => {
    const tree = plannedTree(whole, [due, later, stays]).trees[0]!
    expect(cutsOf(tree).map(({ limb, kind, obligation }) => [limb.id, kind, obligation])).toEqual([
      ['L', 'remove', 'temporary'],
      ['M', 'remove', 'temporary']
    ])
    expect(tree.visits.map(({ year }) => year)).toEqual([2030, 2033])
    expect(cutsOf(tree)[0]!.must).toBe(true)
  })

  it('stay where the survey says that they are permanent', () => {
    const tree = plannedTree(whole, [{ ...due, permanent: 'yes' }, later, stays]).trees[0]!
    expect(removed(tree)).toEqual(['M'])
  })

  it('are no obligation where the survey does not allow a scaffold', () => {
    const tree = plannedTree({ ...whole, mature: null }, [due, later, stays]).trees[0]!
    expect(cutsOf(tree).filter(({ obligation }) => obligation === 'temporary')).toEqual([])
  })
})

describe('a permanent limb', () => {
  const small: Row = { id: 'B', d: 24, stem: 30, origin: 3, tip: 9.5, bearing: 0, bark: 'full' }

  const other: Row = { id: 'C', d: 90, stem: 170, origin: 4, bearing: 180 }

  it('is shortened where it would be removed', () => {
    const young = { stage: 'young', mature: null }
    expect(removed(plannedTree(young, [small, other], { visits: 1 }).trees[0]!)).toEqual(['B'])
    const kept = plannedTree(young, [{ ...small, permanent: 'yes' }, other], { visits: 1 }).trees[0]!
    expect(cutsOf(kept).map(({ limb, kind }) => [limb.id, kind])).toEqual([['B', 'reduce']])
  })

  it('that hangs in the clearance is raised or shortened, which is no first step of its removal', () => {
    const hanging: Row = { id: 'B', d: 40, stem: 160, origin: 3, tip: 4.4, foliage: 2.2, bearing: 0 }
    const tree = plannedTree({ clearance: 3.5, lowest: 3 }, [{ ...hanging, permanent: 'yes' }], {
      visits: 1
    }).trees[0]!
    const [cut] = cutsOf(tree)
    expect([cut!.kind, cut!.obligation]).toEqual(['reduce', 'clearance'])
    expect(cut!.reason).not.toContain('removal')
    expect(tree.clearance?.heldBy).toBe('permanent')
  })
})

describe('within 300 mm of a larger permanent limb', () => {
  // Half its stem and up to the top: nothing but the larger limb beside it speaks for its removal.
  const limb: Row = { id: 'B', d: 50, stem: 100, origin: 6.5, tip: 10, bearing: 200 }
  const larger: Row = { id: 'C', d: 50.5, stem: 150, origin: 6.7, tip: 9, bearing: 0 }
  const reason = (row: Row): string | null => {
    const { tree } = plannedTree({ mature: null, clearance: null }, [limb, row]).trees[0]!
    const { conditions } = firstVisit(tree)!
    return removalReason(conditions.limbs[0]!, 0.5, conditions)
  }

  it('is a reason for removal, as long as that limb is not said to be temporary', () => {
    expect(reason(larger)).toBe('within 300 mm of the larger limb C')
    expect(reason({ ...larger, permanent: 'yes' })).toBe('within 300 mm of the larger limb C')
    expect(reason({ ...larger, permanent: 'no' })).toBeNull()
  })
})
