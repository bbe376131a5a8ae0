import type { CellBlock } from '../shared/cells'
import type { Inventory, ReadingChoices } from '../src/arbor/measure/inventory'
import type { Plan, TreePlan } from '../src/arbor/plan/plan'
import type { Estimate } from '../src/arbor/price/estimate'
import type { SheetDescription } from '../src/documents/sheet'

/** What the pane asks of the engine and the documents: read, plan, price, describe, in that order. */
export interface Engine {
  readInventory(block: CellBlock, choices?: ReadingChoices): Inventory
  /** Gives one tree after the other, so that the pane can breathe between them; returns the whole plan. */
  planTrees(inventory: Inventory, options: { date: string }): Generator<TreePlan, Plan>
  estimatePlan(plan: Plan): Estimate
  describeCutPlan(plan: Plan): SheetDescription
  describeEstimate(estimate: Estimate, plan: Plan): SheetDescription
}
