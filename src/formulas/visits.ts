import type { LifeStage } from '../../shared/choices'
import { refuse, type Refusal } from '../../shared/refusal'
import { defaultRules, visitInterval, type Rules } from '../../shared/rules'
import { dayOf, serialOf } from '../../shared/dates'

/** What floating point may add to a quotient that is a whole number: 0.9 / 0.3 counts as 3. */
const hair = 1e-9

/**
 * Whole visits that a removal takes when each may take no more than the allowance: 42 % at 20 % takes 3. Both are
 * shares of the live foliage; regrowth between visits is left out.
 *
 * Source: arithmetic; spreading a removal over visits as in Gilman, EDIS EP276, UF/IFAS.
 */
export function visitsNeeded(needed: number, allowed: number): number | Refusal {
  if (needed === 0) return 0
  return allowed > 0
    ? Math.ceil(needed / allowed - hair)
    : refuse('Nothing may be removed this season, so no number of visits reaches it: look again next season.')
}

/**
 * The day of the next visit: the last visit's plus the interval of the life stage in years, as date serials. A last
 * visit on 29 February comes round on 28 February.
 *
 * Source: the intervals in the rule book, each with its source.
 */
export function nextVisit(
  lastVisit: number,
  stage: LifeStage,
  rules: Rules = defaultRules
): number | Refusal {
  const { year, month, day } = dayOf(lastVisit)
  const next = year + visitInterval(rules, stage)
  const exact = serialOf(next, month, day)
  const serial = Number.isNaN(exact) && month === 2 && day === 29 ? serialOf(next, 2, 28) : exact
  return Number.isNaN(serial)
    ? refuse('The next visit falls after the last date a spreadsheet knows: check the last visit.')
    : serial
}
