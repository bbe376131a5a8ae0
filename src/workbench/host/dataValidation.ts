/** DataValidation of the Excel API: the rule as given, and what the cell says. */
import { sharedPart } from '../../../shared/cells'
import type { Validation, ValidationTexts } from '../book'
import { invalidArgument, invalidOperation } from './faults'
import { hostType } from './hostObject'
import type { RangeTarget } from './rangeTarget'
import { writable } from './session'

/** Rules of the Excel API by their property, with the type that a read gives. */
const types: Record<string, string> = {
  list: 'List',
  wholeNumber: 'WholeNumber',
  decimal: 'Decimal',
  date: 'Date',
  time: 'Time',
  textLength: 'TextLength',
  custom: 'Custom'
}

/** The latest validation that holds for the whole range. */
function current({ session, sheetId, area }: RangeTarget): Validation | null {
  const covers = session.book.validations(sheetId).filter((validation) => {
    const shared = sharedPart(validation.area, area)
    return shared !== null && shared.rows === area.rows && shared.columns === area.columns
  })
  return covers.at(-1) ?? null
}

function setRule(target: RangeTarget, rule: unknown): void {
  const kinds = typeof rule === 'object' && rule !== null ? Object.keys(rule) : []
  const unknown = kinds.find((kind) => !Object.hasOwn(types, kind))
  if (kinds.length !== 1 || unknown !== undefined)
    throw invalidArgument(`A validation rule is one of ${Object.keys(types).join(', ')}.`)
  const { session, sheetId, area } = target
  writable(session, sheetId).setValidation(sheetId, area, rule, current(target)?.texts)
}

function setTexts(target: RangeTarget, texts: ValidationTexts): void {
  const now = current(target)
  if (!now) throw invalidOperation('This range has no validation rule yet; set the rule first.')
  const { session, sheetId, area } = target
  writable(session, sheetId).setValidation(sheetId, area, now.rule, { ...now.texts, ...texts })
}

function typeOf(target: RangeTarget): string {
  const kind = Object.keys(current(target)?.rule ?? {})[0]
  return (kind !== undefined && types[kind]) || 'None'
}

export const dataValidationObject = hostType<RangeTarget>({
  name: 'DataValidation',
  reads: {
    rule: (target) => current(target)?.rule ?? {},
    type: typeOf,
    errorAlert: (target) => current(target)?.texts?.errorAlert ?? null,
    prompt: (target) => current(target)?.texts?.prompt ?? null
  },
  writes: {
    rule: setRule,
    errorAlert: (target, errorAlert) => {
      setTexts(target, { errorAlert })
    },
    prompt: (target, prompt) => {
      setTexts(target, { prompt })
    }
  },
  calls: {
    clear: ({ session, sheetId, area }) => {
      const book = writable(session, sheetId)
      for (const known of book.validations(sheetId)) {
        const shared = sharedPart(known.area, area)
        const whole = shared?.rows === known.area.rows && shared.columns === known.area.columns
        if (whole) book.setValidation(sheetId, known.area, null)
      }
      book.setValidation(sheetId, area, null)
    }
  }
})
