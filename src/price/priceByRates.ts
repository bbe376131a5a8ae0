import type { CellBlock } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import type { Plan } from '../plan/plan'
import type { Estimate } from './estimate'
import { estimatePlan } from './estimatePlan'
import { readRates } from './readRates'

/**
 * What a plan costs by the Rates sheet of a workbook, and what is wrong with that sheet; by the invented rates where the
 * workbook has none.
 */
export function priceByRates(
  plan: Plan,
  sheet: CellBlock | null
): { estimate: Estimate; problems: Problem[] } {
  if (sheet === null) return { estimate: estimatePlan(plan), problems: [] }
  const { rates, problems } = readRates(sheet, plan.system)
  const estimate = estimatePlan(plan, rates)
  return { estimate: problems.length === 0 ? estimate : { ...estimate, rateProblems: problems }, problems }
}
