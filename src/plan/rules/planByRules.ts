import type { CellBlock } from '../../../shared/cells'
import { readRules } from './readRules'
import type { PlanOptions } from '../planInventory'

/** How to plan by the Rules sheet of a workbook; by the defaults, with nothing answered, where it has none. */
export function planByRules(
  sheet: CellBlock | null
): Required<Pick<PlanOptions, 'rules' | 'reasons' | 'ruleProblems' | 'timing'>> | { timing: object } {
  if (sheet === null) return { timing: {} }
  const { rules, reasons, problems, timing } = readRules(sheet)
  return { rules, reasons, ruleProblems: problems, timing }
}
