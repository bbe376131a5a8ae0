import { defaultRules, type Rules } from '../../../shared/rules'
import type { Inventory } from '../measure/inventory'
import type { Plan, TreePlan } from './plan'
import { planTree } from './planTree'

export interface PlanOptions {
  /** ISO date, YYYY-MM-DD; visit 1 falls in its year. The engine has no clock of its own. */
  date: string
  rules?: Rules
  /** Visits to plan, 1 to the horizon of the rules. */
  visits?: number
  /** Visits looked at beyond the last one planned, to say when a remaining limb would be cleared; 4 unless given. */
  lookAhead?: number
}

/** Plans an inventory tree by tree, so that a surface can show progress and stop in between. */
export function* planTrees(inventory: Inventory, options: PlanOptions): Generator<TreePlan, Plan> {
  const rules = options.rules ?? defaultRules
  const visits = Math.max(1, Math.min(options.visits ?? rules.horizonVisits, rules.horizonVisits))
  const year = Number(options.date.slice(0, 4))
  if (!Number.isInteger(year)) throw new Error(`Not an ISO date: ${options.date}`)
  const read: Inventory = { ...inventory, unplanned: [...inventory.unplanned] }
  const problems = [...inventory.problems]
  const trees: TreePlan[] = []
  for (const tree of inventory.trees) {
    const planned = planTree(read, tree, rules, year, visits, options.lookAhead ?? 4, problems)
    trees.push(planned)
    yield planned
  }
  return {
    date: options.date,
    system: inventory.system,
    inventory,
    trees,
    unplanned: read.unplanned.sort((a, b) => a.row - b.row),
    problems
  }
}

/** Plans a whole inventory. */
export function planInventory(inventory: Inventory, options: PlanOptions): Plan {
  const trees = planTrees(inventory, options)
  for (;;) {
    const step = trees.next()
    if (step.done === true) return step.value
  }
}
