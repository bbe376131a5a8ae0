import { quoted, type Cell } from '../../../shared/cells'
import { problem, type FactsOf } from '../../../shared/problems'
import type { Rule } from '../../../shared/rules'
import type { LengthUnit } from '../../../shared/units'
import { isCounted } from './ruleRange'
import { showRuleIn, unitText } from './ruleUnits'

/** What a sentence about a value of this rule says. */
export function ruleFacts(
  rule: Rule,
  typed: Cell | undefined,
  unit: LengthUnit
): FactsOf<'rule-value' | 'rule-range' | 'rule-not-whole'> {
  return {
    rule: rule.name,
    text: quoted(typed),
    value: showRuleIn(rule, rule.value, unit),
    low: showRuleIn(rule, rule.low, unit, 'at least'),
    high: showRuleIn(rule, rule.high, unit, 'at most'),
    unit: unitText(rule, unit)
  }
}

/** What to type for this rule: the remedy that the reading of the sheet gives, for the moment of typing. */
export function whatToType(rule: Rule, unit: LengthUnit): string {
  const code = isCounted(rule) ? 'rule-not-whole' : 'rule-value'
  const { remedy } = problem(code, '', ruleFacts(rule, null, unit))
  return `${rule.name}: ${remedy.charAt(0).toLowerCase()}${remedy.slice(1)}`
}
