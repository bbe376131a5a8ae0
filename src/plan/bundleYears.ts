import type { Rules } from '../../shared/rules'
import type { TreePlan } from './plan'

/**
 * Visits of one inventory that fall one year apart are moved to the later year, so that a crew comes once. First visits
 * stay where they are, no visit moves by more than a year, and none onto the next visit to its own tree.
 */
export function bundleYears(
  trees: readonly TreePlan[],
  { bundledYears }: Pick<Rules, 'bundledYears'>
): TreePlan[] {
  const moved = bundledYears >= 1 ? movedYears(trees) : new Set<number>()
  return moved.size === 0 ? [...trees] : trees.map((tree) => withMoved(tree, moved))
}

/** The years whose later visits are moved to the next year, the latest looked at first so that none moves twice. */
function movedYears(trees: readonly TreePlan[]): Set<number> {
  const years = new Set<number>()
  for (const { visits } of trees) for (const { visit, year } of visits) if (visit > 1) years.add(year)
  const moved = new Set<number>()
  for (const year of [...years].sort((a, b) => b - a))
    if (years.has(year + 1) && !moved.has(year + 1)) moved.add(year)
  return moved
}

function withMoved(tree: TreePlan, moved: ReadonlySet<number>): TreePlan {
  const [first, ...later] = tree.visits
  if (first === undefined || !later.some(({ year }) => moved.has(year))) return tree
  const own = new Set(tree.visits.map(({ year }) => year))
  const years = new Map<number, number>()
  for (const { year } of later) if (moved.has(year) && !own.has(year + 1)) years.set(year, year + 1)
  const yearOf = (year: number): number => (year === first.year ? year : (years.get(year) ?? year))
  const { outcomes, clearance } = tree
  return {
    ...tree,
    visits: [first, ...later.map((visit) => ({ ...visit, year: yearOf(visit.year) }))],
    outcomes: outcomes.map((each) =>
      each.visit === null || each.year === null || yearOf(each.year) === each.year
        ? each
        : { ...each, year: yearOf(each.year) }
    ),
    clearance:
      clearance === null || clearance.reachedYear === null || clearance.heldBy === 'crown ratio'
        ? clearance
        : { ...clearance, reachedYear: yearOf(clearance.reachedYear) }
  }
}
