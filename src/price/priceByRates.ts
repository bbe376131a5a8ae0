import type { CellBlock } from '../../shared/cells'
import type { Problem } from '../../shared/problems'
import type { Plan } from '../plan/plan'
import { withChangedRates } from './changedRates'
import type { Estimate } from './estimate'
import { groupProblems } from '../../shared/groupProblems'
import { estimatePlan } from './estimatePlan'
import { inventedRatesIn } from './rates'
import { readRates } from './readRates'

/**
 * What a plan costs by the Rates sheet of a workbook, and what is wrong with that sheet; by the invented rates where the
 * workbook has none. Rates that were changed on an earlier Estimate go before those of the Rates sheet.
 */
export function priceByRates(
  plan: Plan,
  sheet: CellBlock | null,
  earlier: CellBlock | null = null
): { estimate: Estimate; problems: Problem[] } {
  const read =
    sheet === null ? { rates: inventedRatesIn[plan.system], problems: [] } : readRates(sheet, plan.system)
  const changed =
    earlier === null ? { rates: read.rates, problems: [] } : withChangedRates(read.rates, earlier)
  const problems = [...read.problems, ...groupProblems(changed.problems)]
  const estimate = estimatePlan(plan, changed.rates)
  return { estimate: problems.length === 0 ? estimate : { ...estimate, rateProblems: problems }, problems }
}
