import { areaOf } from '../../shared/cells'
import { numberOrText } from '../sheets/cellRuleFormula'
import type { CellRule, SheetDescription } from '../sheets/sheet'
import type { FileValidation } from './file-library/fileBook'

function validationOf(rule: CellRule): FileValidation {
  const { area, takes, sentence } = rule
  const place = {
    range: areaOf(area),
    allowBlank: true,
    showErrorMessage: true,
    errorTitle: 'Not taken',
    errorMessage: sentence,
    errorStyle: 'stop'
  } as const
  if ('values' in takes) return { ...place, type: 'list', values: [...takes.values] }
  if (takes.texts) return { ...place, type: 'custom', formula1: numberOrText(rule, takes).slice(1) }
  const [formula1, formula2] = [String(takes.from), String(takes.to)]
  return { ...place, type: takes.whole ? 'whole' : 'decimal', operator: 'between', formula1, formula2 }
}

/** What cells take, as a file names it. */
export function validationsOf({ rules = [] }: SheetDescription): FileValidation[] {
  return rules.map(validationOf)
}
