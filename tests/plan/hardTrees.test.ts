/** No tree of up to 60 limbs is slow to plan: what is looked at to choose its cuts is counted, and worse trees hunted for. */
import { drawing, inventoryOf, mostLimbs, type DrawnTree } from '../../bench/hardTrees'
import { hardTrees } from '../../bench/knownHardTrees'
import { readInventory } from '../../src/inventory/readInventory'
import type { Effort } from '../../src/plan/choice'
import { choose } from '../../src/plan/choose'
import { firstVisitProblem } from '../../src/plan/firstVisit'
import { runs } from './trees'

/** Each takes about a tenth of a second: some 2 µs a half-made choice, 20 ns a comparison. */
const most: Effort = { choices: 50_000, comparisons: 5_000_000 }

function effortOf(drawn: DrawnTree): Effort {
  const [tree] = readInventory(inventoryOf(drawn)).trees
  const { groups, limits, effort } = firstVisitProblem(tree!, { date: '2030-03-01' })!
  choose(groups, limits, effort)
  return effort
}

const shareOf = ({ choices, comparisons }: Effort): number =>
  choices / most.choices + comparisons / most.comparisons

it.each(hardTrees.map((tree) => [tree.name, tree] as const))('%s', (_name, tree) => {
  expect(shareOf(effortOf(tree))).toBeLessThan(1)
})

it('counts what it looks at', () => {
  const efforts = hardTrees.map(effortOf)
  expect(efforts.some(({ choices }) => choices > 100)).toBe(true)
  expect(efforts.some(({ comparisons }) => comparisons > 1000)).toBe(true)
})

it(`no tree of up to ${mostLimbs} limbs takes more, however it is changed for the worse`, () => {
  const { numRuns: climbs, seed } = runs(6)
  const { fresh, changed } = drawing(seed)
  for (let climb = 0; climb < climbs; climb++) {
    let worst = fresh()
    let share = shareOf(effortOf(worst))
    for (let step = 0; step < 60; step++) {
      const tried = changed(worst)
      const got = shareOf(effortOf(tried))
      if (got < share) continue
      worst = tried
      share = got
    }
    if (share >= 1) throw new Error(`Too much is looked at (seed ${seed}): ${JSON.stringify(worst)}`)
  }
})
