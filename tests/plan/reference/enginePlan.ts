/** Drawn trees through the reader and the engine: what was read, and the plan as the command line prints it. */
import { planJson } from '../../../src/file/planJson'
import type { Inventory } from '../../../src/inventory/inventory'
import { readSheets } from '../../../src/inventory/readSheets'
import type { Plan } from '../../../src/plan/plan'
import { planInventory } from '../../../src/plan/planInventory'
import { firstVisit } from '../../../src/price/offers'
import { priceByRates } from '../../../src/price/priceByRates'
import type { Cell } from '../../../shared/cells'
import { inventoryRows, type DrawnTree, type Units } from './draw'

export const day = '2027-03-01'

export type Printed = ReturnType<typeof planJson>
export type PrintedTree = Printed['trees'][number]

export interface EnginePlan {
  readonly inventory: Inventory
  readonly plan: Plan
  readonly printed: Printed
}

export function planRows(rows: Cell[][]): EnginePlan {
  const inventory = readSheets([{ name: 'Trees', rows, top: 0, left: 0 }])
  const plan = planInventory(inventory, { date: day })
  return { inventory, plan, printed: planJson(plan, firstVisit(priceByRates(plan, null).estimate)) }
}

export function enginePlan(trees: readonly DrawnTree[], units: Units): EnginePlan {
  return planRows(inventoryRows(trees, units))
}

/** The plan of one tree, lengths in mm and m. */
export function engineTree(tree: DrawnTree['tree'], ...limbs: DrawnTree['limbs']): PrintedTree {
  return enginePlan([{ tree: { tree: 'T1', ...tree }, limbs }], 'cm-m').printed.trees[0]!
}
