import type { Cut } from '../../src/plan/plan'
import { byPurpose } from '../../src/sheets/purposes'
import { samplePlan } from './samplePlan'

const plan = samplePlan()
const elm = plan.trees.find(({ tree }) => tree.id === 'T03')!
const cutOf = (limb: string) => elm.visits[0]!.cuts.find((cut) => cut.limb.id === limb)!
const purposeOf = (cut: Cut) => byPurpose(elm, [cut]).map(({ purpose }) => purpose)

test('the planner marks the cuts in the clearance, on the side that must be clear, and no others', () => {
  const { clearance } = elm.tree
  const low = cutOf('F')
  expect(low.limb.lowestFoliage ?? low.limb.origin!).toBeLessThan(clearance!)
  expect([low.inClearance, purposeOf(low)]).toEqual([true, ['clearance']])
  for (const tree of plan.trees)
    for (const cut of tree.visits.flatMap(({ cuts }) => cuts)) {
      if (tree.tree.clearance === null || !cut.live) expect(cut.inClearance).toBe(false)
      // The reason is written for people; it has to say the same.
      expect(/hangs to .* below /.test(cut.reason)).toBe(cut.inClearance)
    }
})

test('what a cut is for does not hang on the wording of its reason', () => {
  const low = cutOf('F')
  expect(purposeOf({ ...low, reason: 'Said in other words.' })).toEqual(['clearance'])
  expect(purposeOf({ ...low, obligation: null, inClearance: false })).not.toContain('clearance')
})
