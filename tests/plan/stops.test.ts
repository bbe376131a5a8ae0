/** What stops a cut or a whole plan: dieback, a recent pruning, the form of the tree. */
import type { Cell } from '../../shared/cells'
import { block, planOf } from './trees'
import { outcomeWords } from '../../src/plan/outcomeWords'
import { isPalm } from '../../src/plan/treeForm'

const headers =
  'Tree | Species | Form | Height (m) | Crown base (m) | Life stage | Vigor | Dieback | Last pruned | Removed this season | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m)'

function treeOf(own: { species?: Cell; form?: Cell; dieback?: Cell; pruned?: Cell; removed?: Cell }) {
  const plan = planOf(
    block(
      headers,
      [
        'T1',
        own.species ?? 'Pin oak',
        own.form ?? null,
        10,
        2,
        'young',
        'good',
        own.dieback ?? null,
        own.pruned ?? null,
        own.removed ?? null,
        'A',
        'leader',
        180,
        180,
        2,
        10
      ],
      ['T1', null, null, null, null, null, null, null, null, null, 'B', null, 120, 150, 3, 9.8]
    )
  )
  return { plan, tree: plan.trees[0]!, codes: plan.problems.map(({ code }) => code) }
}

const clump = (form: Cell, role: Cell = null) =>
  planOf(
    block(
      headers,
      ...['A', 'B', 'C'].map((id, at) => [
        'T1',
        'Serviceberry',
        at === 0 ? form : null,
        5,
        0.5,
        'medium',
        'good',
        null,
        null,
        null,
        id,
        at === 0 ? role : null,
        80 - 5 * at,
        85,
        0.2,
        5 - at / 10
      ])
    )
  )

describe('dieback', () => {
  it('of a quarter of the crown counts as poor vigor, of a tenth as fair at best', () => {
    expect(treeOf({ dieback: 0.25 }).tree.vigor).toBe('poor')
    expect(treeOf({ dieback: 0.1 }).tree.vigor).toBe('fair')
    expect(treeOf({ dieback: 0.09 }).tree.vigor).toBe('good')
    expect(treeOf({ dieback: 0.25 }).codes).toContain('dieback-counts')
  })
})

describe('a pruning within a year', () => {
  it('stops live cuts this season and asks how much came off', () => {
    const { tree, codes } = treeOf({ pruned: '2029-11-15' })
    expect(tree.allowedRemoval).toBe(0)
    expect(tree.visits[0]!.cuts).toEqual([])
    expect(codes).toContain('pruned-recently')
    // The next visit, two years on, is planned as usual.
    expect(tree.visits[1]?.cuts.map(({ limb }) => limb.id)).toEqual(['B'])
  })

  it('does not stop a tree that was pruned a year ago, or where the amount is given', () => {
    expect(treeOf({ pruned: '2029-03-01' }).tree.allowedRemoval).toBe(0.25)
    expect(treeOf({ pruned: '2029-11-15', removed: 0.1 }).tree.allowedRemoval).toBeCloseTo(0.15, 12)
    expect(treeOf({ pruned: '2029-11-15', removed: 0 }).tree.allowedRemoval).toBe(0.25)
  })
})

describe('the form of a tree', () => {
  it('refuses a palm, by its form or its species, with a sentence', () => {
    for (const own of [
      { form: 'palm' },
      { species: 'Canary Island date palm' },
      { species: 'Sabal palmetto' }
    ]) {
      const { plan, tree, codes } = treeOf(own)
      expect(tree.visits).toEqual([])
      expect(codes).toContain('palm')
      expect(plan.unplanned).toHaveLength(2)
      expect(plan.unplanned[0]!.reason).toContain('outside the standards')
    }
    expect(['Sago palm', 'Palm oil', 'Pin oak'].map(isPalm)).toEqual([false, false, false])
  })

  it('proposes a multi-stem tree of three unmarked stems from the ground, seeks no leader and shortens none', () => {
    const plan = clump(null)
    const [tree] = plan.trees
    expect([tree!.form, tree!.leader.limb, tree!.leader.confirm]).toEqual(['multi-stem', null, true])
    expect(tree!.visits.flatMap(({ cuts }) => cuts)).toEqual([])
    expect(plan.problems.map(({ code }) => code)).toContain('multi-stem-proposed')
    // A leader that is marked wins, and a form that is given is not asked about.
    expect(clump(null, 'leader').trees[0]!.form).toBe('decurrent')
    expect(clump('multi-stem').problems.map(({ code }) => code)).not.toContain('multi-stem-proposed')
  })

  it('keeps the stems of a multi-stem tree as what they are, and does not rank the tree by them', () => {
    const [tree] = clump('multi-stem').trees
    expect(tree!.urgency).toBe(0)
    expect(tree!.outcomes.length).toBeGreaterThan(0)
    for (const outcome of tree!.outcomes)
      expect(outcomeWords(outcome)).toBe('Kept: a stem of a multi-stem tree, not reduced for the others.')
  })
})

it('says that nothing may come off where that holds a clearance, and not that the allowance is used up', () => {
  const rows = (vigor: string) =>
    block(
      'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Clearance (m) | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Lowest foliage (m)',
      ['T1', 10, 2, 'young', vigor, 3, 'A', 'leader', 180, 180, 2, 10, null],
      ['T1', null, null, null, null, null, 'B', null, 70, 150, 2.5, 8, 2]
    )
  const held = (vigor: string) =>
    planOf(rows(vigor)).problems.find(({ code }) => code === 'clearance-held')?.message ?? ''
  expect(held('poor')).toContain('no live foliage may come off this season')
  expect(held('good')).not.toContain('no live foliage')
})
