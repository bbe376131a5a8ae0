/** Limbs on limbs: what is followed misses no best choice, found by following everything on small trees. */
import { numbers } from '../../bench/madeInventory'
import type { Cell } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import { leaveAlone, noEffort } from '../../src/plan/choice'
import { choose } from '../../src/plan/choose'
import { familyItems, weighCuts, type Following } from '../../src/plan/families'
import { firstVisitProblem } from '../../src/plan/firstVisit'
import type { VisitProblem } from '../../src/plan/visitProblem'
import { block, limbHeaders, limbRow } from './trees'

const headers = `${limbHeaders} | Parent limb`

/** An invented tree of up to eight limbs, some on others. */
function madeTree(next: () => number, limbs: number): Cell[][] {
  const stage = ['young', 'medium', 'mature'][Math.floor(next() * 3)]!
  const rows: Cell[][] = [[...limbRow('A', null, null, null, null, { role: 'leader', stage }), null]]
  for (let at = 0; at < limbs; at++) {
    const origin = 2 + next() * 5
    const stem = Math.round(60 + next() * 120)
    const parent = at > 0 && next() < 0.6 ? `B${String(Math.floor(next() * Math.min(at, 3)))}` : null
    const bark = next() < 0.4 ? 'full' : 'none'
    const tip = origin + (10 - origin) * (0.5 + next() / 2)
    const limb = limbRow(`B${String(at)}`, Math.round(stem * (0.3 + 0.8 * next())), stem, origin, tip, {
      stage,
      bark
    })
    rows.push([...limb, parent])
  }
  return rows
}

const everything: Following = {
  limits: { units: Infinity, cuts: Infinity, leaders: Infinity },
  prices: { price: 0, perCut: 0, values: new Map(), bound: Infinity },
  gap: Infinity,
  most: Infinity,
  effort: noEffort()
}

function gainOf(groups: VisitProblem['groups'], limits: VisitProblem['limits']): number {
  return choose(groups, limits).reduce(
    (sum, index, at) => sum + (index === leaveAlone ? 0 : groups[at]![index]!.gain),
    0
  )
}

it('gains as much as when every way is followed, on 60 trees of up to 8 limbs', () => {
  const next = numbers(20300301)
  let families = 0
  for (let made = 0; made < 60; made++) {
    const rows = madeTree(next, 4 + (made % 5))
    const [tree] = readInventory(block(headers, ...rows)).trees
    const problem = firstVisitProblem(tree!, { date: '2030-03-01' })!
    const { assessed, crown, limits } = problem
    const all = new Map(assessed.map((each) => [each.limb, each]))
    const groups = assessed
      .filter(({ limb }) => limb.parent === null)
      .map((root) => {
        const holds = crown.holders.has(root.limb)
        return root.limb.children.length > 0
          ? familyItems(root, { all, rule: crown.lower, following: everything }, holds)
          : weighCuts(root, crown.lower, holds)
      })
    if (assessed.some(({ limb, cuts }) => limb.parent !== null && cuts.length > 0)) families++
    expect([made, gainOf(problem.groups, limits)]).toEqual([made, gainOf(groups, limits)])
  }
  expect(families).toBeGreaterThan(20)
})

it('plans 60 limbs of which many stand on three others well within a second', () => {
  const next = numbers(7)
  const [tree] = readInventory(block(headers, ...madeTree(next, 60))).trees
  const start = performance.now()
  expect(firstVisitProblem(tree!, { date: '2030-03-01' })!.groups.length).toBeGreaterThan(0)
  expect(performance.now() - start).toBeLessThan(1000)
})
