import type { Vigor } from '../../shared/choices'
import type { CalendarDate } from '../../shared/dates'
import type { Rules } from '../../shared/rules'
import { atLeast } from '../formulas/boundary'
import type { Tree } from '../inventory/inventory'

/** Vigor with the dieback that was seen: a quarter of the crown counts as poor, a tenth as fair at best (house rules). */
export function vigorWithDieback(vigor: Vigor, dieback: number | null, rules: Rules): Vigor {
  if (dieback === null || vigor === 'poor') return vigor
  if (atLeast(dieback, rules.diebackPoor)) return 'poor'
  return atLeast(dieback, rules.diebackFair) ? 'fair' : vigor
}

/** Last day of what is known of a date: a year alone, or a month, may mean any of its days. */
function lastDayOf({ year, month, day }: CalendarDate): { months: number; day: number } {
  return { months: year * 12 + (month ?? 12), day: day ?? 31 }
}

/**
 * Pruned less than 12 months before the plan, with no amount given: nothing live is cut this season (house rule). Of a
 * date only partly known the last possible day counts.
 */
export function wasJustPruned({ lastPruned, removed }: Tree, isoDate: string, rules: Rules): boolean {
  if (lastPruned === null || removed !== null) return false
  const [year = 0, month = 1, day = 1] = isoDate.split('-').map(Number)
  const last = lastDayOf(lastPruned)
  const months = year * 12 + month - last.months
  return months < rules.prunedWithin || (months === rules.prunedWithin && day < last.day)
}
