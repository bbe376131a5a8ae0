/** What may come off at a visit, with the stops (design, section 3). */
import type { LifeStage, Vigor } from '../../../shared/choices'
import type { CalendarDate } from '../../../shared/dates'
import { baseAllowance, vigorFactor, type Rules } from '../../../shared/rules'
import type { Tree } from '../../../src/inventory/inventory'
import { atLeast } from './near'
import type { TreeNow } from './model'

/** Dieback of a quarter or more counts as poor vigor, from a tenth as fair at best. */
export function vigorOf({ vigor, dieback }: Tree, rules: Rules): Vigor {
  const given = vigor ?? 'fair'
  if (dieback !== null && atLeast(dieback, rules.diebackPoor)) return 'poor'
  return dieback !== null && atLeast(dieback, rules.diebackFair) && given === 'good' ? 'fair' : given
}

/** Pruned within the months that the rule gives, with no amount given. */
export function isPrunedLately({ lastPruned, removed }: Tree, rules: Rules, date: string): boolean {
  return lastPruned !== null && removed === null && monthsSince(lastPruned, date) < rules.prunedWithin
}

/** Whole months; of a day that is not known whole, the latest it can be. */
function monthsSince({ year, month, day }: CalendarDate, date: string): number {
  const [y = 0, m = 0, d = 0] = date.split('-').map(Number)
  return (y - year) * 12 + (m - (month ?? 12)) - (d < (day ?? 1) ? 1 : 0)
}

/** A tree at planting counts as young from its second visit. */
export function stageAt(stage: LifeStage, slot: number): LifeStage {
  return stage === 'planting' && slot > 0 ? 'young' : stage
}

export function allowance({
  tree,
  rules,
  now,
  slot,
  vigor,
  prunedLately
}: Pick<TreeNow, 'tree' | 'rules' | 'now' | 'slot' | 'vigor' | 'prunedLately'>): number {
  if (slot === 0 && prunedLately) return 0
  const allowed = Math.min(baseAllowance(rules, now) * vigorFactor(rules, vigor), tree.localLimit ?? 1)
  return Math.max(0, allowed - (slot === 0 ? (tree.removed ?? 0) : 0))
}
