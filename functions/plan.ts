import { cutPlan } from './cutPlan'

/**
 * Cut plan of an inventory as a table, most urgent tree first; a qualified arborist on site decides.
 * @customfunction CUTPLAN
 * @param inventory_with_headers The inventory with its header row: one row per limb, or one row per tree.
 * @param [visit] Visit to show, a whole number from 1 to 4. All visits unless given; those after the first are a forecast.
 * @returns A table of cuts with its own headers. Rows that could not be planned follow, each with a text that begins with "! "; cells named there count from the range's first cell as A1. An inventory that cannot be read at all gives #VALUE! with the reason. Doubtful cells are listed in the pane.
 * @table
 * @example =LIMB.CUTPLAN(Inventory!A1:V65, 1) gives the table of the first visit
 * @source The rule book of this project, each rule with its source or marked as a house rule.
 */
export function CUTPLAN(inventory_with_headers: unknown[][], visit?: unknown[][]): unknown[][] {
  return cutPlan(inventory_with_headers, visit)
}
