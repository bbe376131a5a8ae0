/** Visits of one inventory that fall one year apart are moved to the later year (design, section 3, "Later visits"). */
import type { ReferencePlan } from './planReference'

type Later = Pick<ReferencePlan, 'visits'>

/**
 * The years whose later visits move to the next one. The latest pair is looked at first, so that no visit moves by more than
 * a year.
 */
export function yearsThatMove(plans: readonly Later[]): Set<number> {
  const years = [...new Set(plans.flatMap(({ visits }) => visits.slice(1).map(({ year }) => year)))]
  const moved = new Set<number>()
  for (const year of years.sort((a, b) => b - a))
    if (years.includes(year + 1) && !moved.has(year + 1)) moved.add(year)
  return moved
}

/** The plans of one inventory; no visit is moved onto the next one to its own tree. */
export function bundled(plans: readonly ReferencePlan[]): ReferencePlan[] {
  const moved = yearsThatMove(plans)
  return plans.map((plan) => {
    const later = plan.visits.slice(1).map(({ year }) => year)
    const then = (year: number) =>
      later.includes(year) && moved.has(year) && !later.includes(year + 1) ? year + 1 : year
    const { clearance } = plan
    return {
      ...plan,
      visits: plan.visits.map((visit) => ({ ...visit, year: then(visit.year) })),
      outcomes: plan.outcomes.map((end) =>
        end.visit === null || end.year === null ? end : { ...end, year: then(end.year) }
      ),
      clearance:
        clearance === null || clearance.reachedYear === null || clearance.heldBy === 'crown ratio'
          ? clearance
          : { ...clearance, reachedYear: then(clearance.reachedYear) }
    }
  })
}
