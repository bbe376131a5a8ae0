import { isBlank, type Cell } from '../../../shared/cells'
import { readLength } from '../../../shared/lengths'
import { numberIn, type NumberFault, type NumberStyle } from '../../../shared/numbers'
import { problem, type Problem, type ProblemCode } from '../../../shared/problems'
import type { Rule } from '../../../shared/rules'
import { millimetersPer, type LengthUnit } from '../../../shared/units'
import { ruleFacts } from './ruleFacts'
import { isCounted, isLength, isProportion } from './ruleRange'
import { fromUnit } from './ruleUnits'

const faultCodes = {
  'not-finite': 'rule-not-finite',
  date: 'rule-date',
  'no-number': 'rule-value'
} as const satisfies Record<Exclude<NumberFault['why'], 'two-ways'>, ProblemCode>

/** A number, for a proportion in percent too, for a length with its unit, such as "2 in"; or why there is none. */
function numberOf(cell: Cell, rule: Rule, style: NumberStyle, unit: LengthUnit): number | NumberFault {
  const length = isLength(rule) && typeof cell === 'string' ? readLength(cell, style) : null
  if (length !== null && 'unit' in length && length.unit !== null)
    return length.value * millimetersPer[length.unit]
  if (length !== null && 'why' in length) return length
  const value = numberIn(cell, style, { percent: isProportion(rule) })
  return typeof value === 'number' && isLength(rule) ? fromUnit(rule, value, unit) : value
}

/** Outside the range of a rule, by more than what floating point leaves over. */
function isOutside({ low, high }: Rule, value: number): boolean {
  return value < low - 1e-12 || value > high + 1e-12
}

/**
 * The value of a rule in its cell, in the rule's unit; null where the cell is blank, or what is wrong with it. `style`
 * tells which sign stands before the decimals on the sheet, `unit` in which unit a length without one is.
 */
export function readRule(
  rule: Rule,
  typed: Cell | undefined,
  address: string,
  style: NumberStyle,
  unit: LengthUnit = 'mm'
): number | Problem | null {
  if (isBlank(typed)) return null
  const facts = ruleFacts(rule, typed, unit)
  const value = numberOf(typed ?? null, rule, style, unit)
  if (typeof value !== 'number')
    return value.why === 'two-ways'
      ? problem('rule-two-ways', address, { ...facts, ...value })
      : problem(faultCodes[value.why], address, facts)
  if (isOutside(rule, value)) return problem('rule-range', address, facts)
  return isCounted(rule) && !Number.isInteger(value) ? problem('rule-not-whole', address, facts) : value
}
