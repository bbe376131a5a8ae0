import { numberOrText } from '../sheets/cellRuleFormula'
import type { CellRule } from '../sheets/sheet'

/** What cells take, as the spreadsheet checks it while somebody types (ExcelApi 1.8). */
export function addCellRule(sheet: Excel.Worksheet, rule: CellRule): void {
  const { area, takes, sentence } = rule
  const { dataValidation } = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns)
  if ('values' in takes)
    dataValidation.rule = { list: { inCellDropDown: true, source: takes.values.join(',') } }
  else if (takes.texts) dataValidation.rule = { custom: { formula: numberOrText(rule, takes) } }
  else {
    const between = { formula1: takes.from, formula2: takes.to, operator: 'Between' as const }
    dataValidation.rule = takes.whole ? { wholeNumber: between } : { decimal: between }
  }
  dataValidation.errorAlert = { title: 'Not taken', message: sentence, showAlert: true, style: 'Stop' }
}
