/** Validation rules, from a file's words to the Excel API's and back. */
import type { FileValidation } from '../../file/file-library/fileBook'
import type { Validation, ValidationTexts } from '../book'
import type { KnownRule } from '../grid/gridValidations'
import { areaAddress, parseAddress } from '../../../shared/a1Notation'

const operators: Record<string, NonNullable<FileValidation['operator']>> = {
  Between: 'between',
  NotBetween: 'notBetween',
  EqualTo: 'equal',
  NotEqualTo: 'notEqual',
  GreaterThan: 'greaterThan',
  LessThan: 'lessThan',
  GreaterThanOrEqualTo: 'greaterThanOrEqual',
  LessThanOrEqualTo: 'lessThanOrEqual'
}

function ruleOf(rule: FileValidation): KnownRule | null {
  const operator = Object.keys(operators).find((key) => operators[key] === rule.operator) ?? 'Between'
  const bounds = { formula1: rule.formula1, formula2: rule.formula2, operator }
  if (rule.type === 'list') {
    const source = rule.values ? rule.values.join(',') : `=${(rule.formula1 ?? '').replace(/^=/, '')}`
    return { list: { inCellDropDown: true, source } }
  }
  if (rule.type === 'decimal') return { decimal: bounds }
  if (rule.type === 'whole') return { wholeNumber: bounds }
  if (rule.type === 'textLength') return { textLength: bounds }
  return rule.type === 'custom' ? { custom: { formula: `=${rule.formula1 ?? ''}` } } : null
}

const alertStyles = { stop: 'Stop', warning: 'Warning', information: 'Information' } as const

function readTexts(rule: FileValidation): ValidationTexts | null {
  const { errorMessage, errorTitle = '', errorStyle = 'stop', inputMessage, inputTitle = '' } = rule
  if (!errorMessage && !inputMessage && errorStyle === 'stop') return null
  return {
    ...(errorMessage || errorStyle !== 'stop'
      ? {
          errorAlert: {
            message: errorMessage ?? '',
            title: errorTitle,
            style: alertStyles[errorStyle],
            showAlert: rule.showErrorMessage !== false
          }
        }
      : {}),
    ...(inputMessage ? { prompt: { message: inputMessage, title: inputTitle, showPrompt: true } } : {})
  }
}

function writeTexts(texts: ValidationTexts | undefined): Partial<FileValidation> {
  const alert = (texts?.errorAlert ?? {}) as {
    message?: string
    title?: string
    style?: string
    showAlert?: boolean
  }
  const prompt = (texts?.prompt ?? {}) as { message?: string; title?: string }
  const style = (['stop', 'warning', 'information'] as const).find(
    (name) => alertStyles[name] === alert.style
  )
  return {
    ...(alert.message ? { errorMessage: alert.message, errorTitle: alert.title ?? '' } : {}),
    ...(style ? { errorStyle: style } : {}),
    ...(alert.showAlert === false ? { showErrorMessage: false } : {}),
    ...(prompt.message
      ? { showInputMessage: true, inputMessage: prompt.message, inputTitle: prompt.title ?? '' }
      : {})
  }
}

/** One validation for each area of the rule; kinds that the grid does not know are left to the file. */
export function readValidation(rule: FileValidation): Validation[] {
  const known = ruleOf(rule)
  if (known === null) return []
  const texts = readTexts(rule)
  return rule.range.split(/[ ,]+/).flatMap((range) => {
    const area = parseAddress(range)?.area
    return area ? [{ area, rule: known, ...(texts ? { texts } : {}) }] : []
  })
}

const word = (value: unknown) => (value === undefined || value === null ? undefined : String(value))

/** The file's rule, or null for a kind that the workbench does not write. */
export function writeValidation({ area, rule, texts }: Validation): FileValidation | null {
  const { list, decimal, wholeNumber, textLength, custom } = (rule ?? {}) as KnownRule
  const place = { range: areaAddress(area), allowBlank: true, showErrorMessage: true, ...writeTexts(texts) }
  if (list) {
    const source = word(list.source) ?? ''
    if (source.startsWith('=')) return { ...place, type: 'list', formula1: source.slice(1) }
    return { ...place, type: 'list', values: source.split(',').map((value) => value.trim()) }
  }
  const numbers = decimal ?? wholeNumber ?? textLength
  if (numbers)
    return {
      ...place,
      type: decimal ? 'decimal' : wholeNumber ? 'whole' : 'textLength',
      operator: operators[numbers.operator ?? 'Between'],
      formula1: word(numbers.formula1)?.replace(/^=/, ''),
      formula2: word(numbers.formula2)?.replace(/^=/, '')
    }
  return custom ? { ...place, type: 'custom', formula1: (custom.formula ?? '').replace(/^=/, '') } : null
}
