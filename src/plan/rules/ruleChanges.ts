import { tenThousandth } from '../../../shared/words/figures'
import { ruleBook, ruleNames, type RuleName, type RuleUnit, type Rules } from '../../../shared/rules'

/** Why a rule was changed, in a person's own words. */
export type RuleReasons = Readonly<Partial<Record<RuleName, string>>>

/** A rule that does not have its default. */
export interface RuleChange {
  /** As the Rules sheet names it. */
  name: string
  rule: RuleName
  unit: RuleUnit
  from: number
  to: number
  /** Empty where none was written. */
  reason: string
}

/** The rules that a person changed, in the order of the rule book, each with the reason that was written down. */
export function ruleChanges(rules: Rules, reasons: RuleReasons = {}): RuleChange[] {
  return ruleNames
    .filter((rule) => rules[rule] !== ruleBook[rule].value)
    .map((rule) => {
      const { name, unit, value } = ruleBook[rule]
      return { name, rule, unit, from: value, to: rules[rule], reason: reasons[rule] ?? '' }
    })
}

/** A rule's value as print has it: at most four decimals. */
export function showRule(value: number): string {
  return tenThousandth(value)
}
