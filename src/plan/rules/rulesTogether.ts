import { problem, type Problem } from '../../../shared/problems'
import { orderedRules, ruleBook, weightsOf, type RuleName } from '../../../shared/rules'
import type { LengthUnit } from '../../../shared/units'
import { showRule } from './ruleChanges'
import { showRuleIn } from './ruleUnits'

/** Values of one's own with the cells they stand in. */
export type PlacedRules = Map<RuleName, { value: number; cell: string; unit: LengthUnit }>

const priorityWeights = weightsOf('priority')
const leaderWeights = weightsOf('leader')

/** Takes back values that contradict each other, each with a problem; gives those that may be used. */
export function checkTogether(placed: PlacedRules, problems: Problem[]): Partial<Record<RuleName, number>> {
  const valueOf = (rule: RuleName): number => placed.get(rule)?.value ?? ruleBook[rule].value
  const cellOf = (...rules: readonly RuleName[]): string =>
    rules.map((rule) => placed.get(rule)?.cell).find((cell) => cell !== undefined) ?? ''
  const unitOf = (...rules: readonly RuleName[]): LengthUnit =>
    rules.map((rule) => placed.get(rule)?.unit).find((unit) => unit !== undefined) ?? 'mm'
  const takeBack = (rules: readonly RuleName[]): void => {
    for (const rule of rules) placed.delete(rule)
  }
  // A default that comes back may contradict another value, so the pairs are looked at until all of them hold.
  for (let found = true; found;) {
    found = false
    for (const [low, high] of orderedRules) {
      if (valueOf(low) <= valueOf(high)) continue
      const facts = {
        rule: ruleBook[low].name,
        text: showRuleIn(ruleBook[low], valueOf(low), unitOf(low, high)),
        next: ruleBook[high].name,
        other: cellOf(high, low)
      }
      problems.push(problem('rule-order', cellOf(low, high), facts))
      takeBack([low, high])
      found = true
    }
  }
  const sum = (rules: readonly RuleName[]): number => rules.reduce((all, rule) => all + valueOf(rule), 0)
  const weights = sum(priorityWeights)
  if (Math.abs(weights - 1) > 1e-3) {
    problems.push(problem('rule-weights', cellOf(...priorityWeights), { text: showRule(weights) }))
    takeBack(priorityWeights)
  }
  if (!(sum(leaderWeights) > 0)) {
    problems.push(problem('rule-weights-none', cellOf(...leaderWeights)))
    takeBack(leaderWeights)
  }
  return Object.fromEntries([...placed].map(([rule, { value }]) => [rule, value]))
}
