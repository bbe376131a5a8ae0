import { quoted, type Cell } from '../../../shared/cells'
import { problem, type FactsOf } from '../../../shared/problems'
import { ruleUnits, type Rule } from '../../../shared/rules'
import { showRule } from './ruleChanges'

/** Counted in whole numbers. */
export function isCounted({ unit }: Rule): boolean {
  return ruleUnits[unit] === 'count'
}

/** A length, which may be typed with a unit of its own, such as "2 in". */
export function isLength({ unit }: Rule): boolean {
  return ruleUnits[unit] === 'length'
}

/** A part of a whole, which may be typed in percent, such as "25 %". */
export function isProportion({ unit }: Rule): boolean {
  return ruleUnits[unit] === 'proportion'
}

/** What a sentence about a value of this rule says. */
export function ruleFacts(
  { name, value, low, high, unit }: Rule,
  typed: Cell | undefined
): FactsOf<'rule-value' | 'rule-range' | 'rule-not-whole'> {
  return {
    rule: name,
    text: quoted(typed),
    value: showRule(value),
    low: showRule(low),
    high: showRule(high),
    unit
  }
}

/** What to type for this rule: the remedy that the reading of the sheet gives, for the moment of typing. */
export function whatToType(rule: Rule): string {
  const { remedy } = problem(isCounted(rule) ? 'rule-not-whole' : 'rule-value', '', ruleFacts(rule, null))
  return `${rule.name}: ${remedy.charAt(0).toLowerCase()}${remedy.slice(1)}`
}
