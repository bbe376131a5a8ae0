/**
 * The second pass of larger trees against an independent solver: HiGHS (a mixed-integer solver compiled to WebAssembly),
 * asked what the plain reference of `reference/` makes of the tree, and not what the engine asks.
 */
import loadHighs from 'highs'
import { defaultRules } from '../../shared/rules'
import { allowance } from './reference/allowance'
import { drawTree } from './reference/draw'
import { day, enginePlan } from './reference/enginePlan'
import { LeaderToBeRanked } from './reference/leader'
import type { TreeModel } from './reference/model'
import { obligations } from './reference/obligations'
import { programOf } from './reference/program'
import { question, type Question } from './reference/structure'
import { atVisit, limbsAtSurvey, surveyed } from './reference/survey'

const full = process.env['FUZZ'] === 'full'
const seed = Number(process.env['PROPERTY_SEED'] ?? 20270401)
const trees = full ? 400 : 25
jest.setTimeout(full ? 1_800_000 : 240_000)

function modelOf(...from: Parameters<typeof surveyed>): TreeModel | null {
  try {
    return surveyed(...from)
  } catch (error) {
    if (error instanceof LeaderToBeRanked) return null
    throw error
  }
}

/** What the first visit has to choose from. */
function firstQuestion(model: TreeModel): Question {
  const tree = atVisit(model, limbsAtSurvey(model), 0)
  return question(tree, obligations(tree, allowance(tree)))
}

it(`reaches the same objective as the solver on ${trees} trees of up to 40 limbs (seed ${seed})`, async () => {
  const highs = await loadHighs()
  let [asked, largest, cut] = [0, 0, 0]
  for (let at = 0; asked < trees; at++) {
    const tree = drawTree('T1', seed + at * 104729, 40)
    const { inventory, printed } = enginePlan([tree], at % 2 === 0 ? 'cm-m' : 'in-ft')
    const model = printed.unplanned.length > 0 ? null : modelOf(inventory.trees[0]!, defaultRules, day)
    if (model === null) continue
    const found = firstQuestion(model)
    const open = found.limbs.filter(({ options }) => options.length > 0).length
    if (open < 6) continue
    asked++
    largest = Math.max(largest, open)
    const result = highs.solve(programOf(found), {
      mip_rel_gap: 0,
      mip_abs_gap: 0,
      mip_feasibility_tolerance: 1e-9,
      primal_feasibility_tolerance: 1e-9
    })
    const { objective, cuts } = printed.trees[0]!.visits[0]!
    cut += cuts.length
    const best = result.ObjectiveValue
    // The solver keeps its limits to a tolerance and may gain by it.
    expect([at, result.Status, Math.abs(objective - best) <= 0.01 + best * 1e-6, objective, best]).toEqual([
      at,
      'Optimal',
      true,
      objective,
      best
    ])
  }
  expect(largest).toBeGreaterThan(12)
  expect(cut).toBeGreaterThan(2 * trees)
})
