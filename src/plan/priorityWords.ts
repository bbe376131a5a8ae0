import { defaultRules, type Rules } from '../../shared/rules'
import { points } from '../../shared/words/figures'
import { atLeast } from '../formulas/boundary'

/** How urgent a priority is in a word: high from 40 points, medium from 20, low below (house rules). */
export function priorityWord(priority: number, rules: Rules = defaultRules): 'high' | 'medium' | 'low' {
  if (atLeast(priority, rules.urgentFrom)) return 'high'
  return atLeast(priority, rules.smallCutPriority) ? 'medium' : 'low'
}

/** A priority with its word: "high (52)". */
export function priorityText(priority: number, rules: Rules = defaultRules): string {
  return `${priorityWord(priority, rules)} (${points(priority)})`
}
