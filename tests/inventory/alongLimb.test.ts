/** Heights along a limb that cannot be so are told with their cell, and left out. */
import { readInventory } from '../../src/inventory/readInventory'
import type { Cell } from '../../shared/cells'
import { block, planOf } from '../plan/trees'

const headers =
  'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Clearance (m) | Clearance side | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Lowest foliage (m) | First lateral height (m) | Broken | Break height (m)'

const row = (id: string, heights: readonly Cell[], clearance: Cell = null, side: Cell = null): Cell[] => [
  'T1',
  10,
  2,
  'young',
  'good',
  clearance,
  side,
  id,
  id === 'A' ? 'leader' : null,
  { A: 120, B: 60, C: 61 }[id] ?? 62,
  150,
  3,
  6,
  ...heights
]
const leader = row('A', [null, null, null, null])
const read = (...rows: Cell[][]) => readInventory(block(headers, leader, ...rows))

it('leaves out foliage that starts above the tip', () => {
  const { problems, trees } = read(row('B', [6.5, null, null, null]))
  expect(problems.map(({ code, cell }) => [code, cell])).toEqual([['foliage-above-tip', 'Trees!N3']])
  expect(problems[0]!.message).toBe(
    'Lowest foliage height at Trees!N3 reads “6.5”, above the tip of limb B of tree T1; it was left out.'
  )
  expect(trees[0]!.limbs[1]!.lowestFoliage).toBeNull()
  expect(read(row('B', [6, null, null, null])).problems).toEqual([])
})

it('leaves out a lateral and a break outside the limb, which stays broken', () => {
  const { problems, trees } = read(row('B', [null, 2.5, null, 8]))
  expect(problems.map(({ code, cell }) => [code, cell])).toEqual([
    ['outside-limb', 'Trees!O3'],
    ['outside-limb', 'Trees!Q3']
  ])
  expect(trees[0]!.limbs[1]).toMatchObject({ lateralHeight: null, breakHeight: null, broken: true })
})

it('tells faults of a column in one sentence', () => {
  const rows = ['B', 'C', 'D'].map((id) => row(id, [null, null, null, 8]))
  const told = planOf(block(headers, leader, ...rows)).problems.filter(({ code }) => code === 'outside-limb')
  expect(told.map(({ message }) => message)).toEqual([
    '3 cells of “Break height” are not between the origin and the tip of their limb (Trees!Q3:Q5); they were left out.'
  ])
})

it('counts a limb with a break height as broken, and cuts it below the break', () => {
  const cut = (breakHeight: Cell): unknown => {
    const plan = planOf(block(headers, leader, row('B', [null, 5, null, breakHeight])))
    const [found] = plan.trees[0]!.visits[0]!.cuts
    return found === undefined ? null : [found.kind, found.obligation, found.cutHeight]
  }
  expect(cut(5.5)).toEqual(['reduce', 'broken', 5])
  // The lateral is beyond the break, and nothing sound is known below it.
  expect(cut(4)).toEqual(['remove', 'broken', null])
  expect(cut(null)).toBeNull()
})

it('says that a clearance of which no side is given holds on all sides', () => {
  const codes = (side: Cell): string[] =>
    planOf(block(headers, row('A', [null, null, null, null], 3, side))).problems.map(({ code }) => code)
  expect(codes(null)).toContain('clearance-all-sides')
  expect(codes('E')).not.toContain('clearance-all-sides')
  expect(codes('all')).not.toContain('clearance-all-sides')
})
