import type { ConditionalLook } from '../sheets/sheet'

/**
 * A look that follows the cells (ExcelApi 1.6). Each new one goes before those there are, so that a later one wins; its
 * formula is read for the first cell of the range (OfficeDev/office-js, issue 5194).
 */
export function addConditionalLook(sheet: Excel.Worksheet, { area, formula, format }: ConditionalLook): void {
  const range = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns)
  const { custom } = range.conditionalFormats.add('Custom')
  custom.rule.formula = formula
  const { font, fill } = custom.format
  if (format.bold) font.bold = true
  if (format.italic) font.italic = true
  if (format.color !== undefined) font.color = format.color
  if (format.fill !== undefined) fill.color = format.fill
}
