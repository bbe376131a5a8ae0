/**
 * Validation rules: kept as the Excel API gives them, and shown in the grid as far as it has the same kind.
 */
import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationType,
  generateRandomId,
  type IRange
} from '@univerjs/core'
import {
  AddDataValidationMutation,
  DataValidationModel,
  RemoveDataValidationMutation
} from '@univerjs/preset-sheets-data-validation'
import type { Area } from '../../../shared/cells'
import type { Book, Validation, ValidationTexts } from '../book'
import type { GridContext } from './context'
import { toArea, toRange } from './ranges'
import { extrasOf } from './extras'

type ValidationPart = Pick<Book, 'validations' | 'setValidation'>

interface Bounds {
  formula1?: unknown
  formula2?: unknown
  operator?: string
}

/** The part of the Excel API's rule that the grid can show. */
export interface KnownRule {
  list?: { inCellDropDown?: boolean; source?: unknown }
  decimal?: Bounds
  wholeNumber?: Bounds
  textLength?: Bounds
  custom?: { formula?: string }
}

const operators: Record<string, DataValidationOperator> = {
  Between: DataValidationOperator.BETWEEN,
  NotBetween: DataValidationOperator.NOT_BETWEEN,
  EqualTo: DataValidationOperator.EQUAL,
  NotEqualTo: DataValidationOperator.NOT_EQUAL,
  GreaterThan: DataValidationOperator.GREATER_THAN,
  LessThan: DataValidationOperator.LESS_THAN,
  GreaterThanOrEqualTo: DataValidationOperator.GREATER_THAN_OR_EQUAL,
  LessThanOrEqualTo: DataValidationOperator.LESS_THAN_OR_EQUAL
}

const text = (value: unknown) => (value === undefined || value === null ? undefined : String(value))

/** The grid's rule of the same meaning, or null where it has none. */
export function gridRule(rule: unknown): object | null {
  const { list, decimal, wholeNumber, textLength, custom } = (rule ?? {}) as KnownRule
  const bounds = (type: DataValidationType, { formula1, formula2, operator }: Bounds) => ({
    type,
    formula1: text(formula1),
    formula2: text(formula2),
    operator: operators[operator ?? 'Between']
  })
  if (list) return { type: DataValidationType.LIST, formula1: text(list.source), showDropDown: true }
  if (decimal) return bounds(DataValidationType.DECIMAL, decimal)
  if (wholeNumber) return bounds(DataValidationType.WHOLE, wholeNumber)
  if (textLength) return bounds(DataValidationType.TEXT_LENGTH, textLength)
  if (custom) return { type: DataValidationType.CUSTOM, formula1: custom.formula }
  return null
}

interface Alert {
  message?: string
  title?: string
  style?: string
  showAlert?: boolean
}

interface Prompt {
  message?: string
  title?: string
  showPrompt?: boolean
}

const alertStyles: Record<string, DataValidationErrorStyle> = {
  Stop: DataValidationErrorStyle.STOP,
  Warning: DataValidationErrorStyle.WARNING,
  Information: DataValidationErrorStyle.INFO
}

function textsOf(texts: ValidationTexts | undefined): object {
  const alert = (texts?.errorAlert ?? {}) as Alert
  const prompt = (texts?.prompt ?? {}) as Prompt
  return {
    errorStyle: alertStyles[alert.style ?? 'Stop'],
    showErrorMessage: alert.showAlert !== false,
    ...(alert.message ? { error: alert.message, errorTitle: alert.title ?? '' } : {}),
    ...(prompt.message
      ? {
          showInputMessage: prompt.showPrompt !== false,
          prompt: prompt.message,
          promptTitle: prompt.title ?? ''
        }
      : {})
  }
}

/** Shows the rule in the grid, as far as the grid has its kind. */
export function showRule(context: GridContext, sheetId: string, { area, rule, texts }: Validation): void {
  const shown = gridRule(rule)
  if (shown === null) return
  context.mutate(AddDataValidationMutation.id, sheetId, {
    rule: {
      ...shown,
      uid: generateRandomId(),
      ranges: [toRange(area)],
      allowBlank: true,
      ...textsOf(texts)
    },
    source: 'command'
  })
}

function same(a: Area, b: Area): boolean {
  return a.row === b.row && a.column === b.column && a.rows === b.rows && a.columns === b.columns
}

/** The rules of the grid that stand on exactly this area. */
function shownRules(context: GridContext, sheetId: string, area: Area): string[] {
  return context.injector
    .get(DataValidationModel)
    .getRules(context.workbook().getUnitId(), sheetId)
    .filter((rule) => rule.ranges.some((range: IRange) => same(toArea(range), area)))
    .map((rule) => rule.uid)
}

export function validationsOf(context: GridContext): ValidationPart {
  return {
    validations: (sheetId) => [...extrasOf(context.extras, sheetId).validations],
    setValidation(sheetId, area, rule, texts) {
      context.sheet(sheetId)
      const kept = extrasOf(context.extras, sheetId)
      kept.validations = kept.validations.filter((validation) => !same(validation.area, area))
      const shown = shownRules(context, sheetId, area)
      if (shown.length > 0) context.mutate(RemoveDataValidationMutation.id, sheetId, { ruleId: shown })
      if (rule === null) return
      const validation = { area, rule, ...(texts ? { texts } : {}) }
      kept.validations.push(validation)
      showRule(context, sheetId, validation)
    }
  }
}
