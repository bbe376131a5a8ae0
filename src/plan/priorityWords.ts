import { defaultRules, type Rules } from '../../shared/rules'
import { Figure, points } from '../../shared/words/figures'
import { atLeast } from '../formulas/boundary'

/** How urgent a priority is in a word: high from 40 points, where its cut is a must, medium from 20, low below (house rules). */
export function priorityWord(priority: number, rules: Rules = defaultRules): 'high' | 'medium' | 'low' {
  if (atLeast(priority, rules.urgentFrom)) return 'high'
  return atLeast(priority, rules.mediumFrom) ? 'medium' : 'low'
}

/** The points of each word, as `points` has them. */
const texts = {
  high: new Figure(0, 0, false, ')', 'high ('),
  medium: new Figure(0, 0, false, ')', 'medium ('),
  low: new Figure(0, 0, false, ')', 'low (')
}

/** A priority with its word: "high (52)". */
export function priorityText(priority: number, rules: Rules = defaultRules): string {
  return texts[priorityWord(priority, rules)].of(priority)
}

/** The bands behind the words, for the documents that show them. */
export function priorityBands(rules: Rules = defaultRules): string {
  return `Priority: high from ${points(rules.urgentFrom)} points, medium from ${points(rules.mediumFrom)}, low below; one that is high is a must (house rules, to be changed on the Rules sheet).`
}
