import { atLeast, atMost } from '../formulas/boundary'
import { firstYearOf, type Plan, type TreePlan } from '../plan/plan'
import { kilogramsPerPound } from '../../shared/units'
import { Money } from '../../shared/money'
import type { BudgetFigure, EstimateLine } from './estimate'
import { effortOf, kilogramsPer, type Effort } from './lineWork'
import { ownCosts, priceOf } from './priceLines'
import type { Rates } from './rates'

/**
 * Minutes of pruning and of stacking per inch of trunk, and brush per minute of pruning. The slopes are taken through
 * zero, and the minutes as those of one person: the abstract says neither. As minutes of a crew of three they would be
 * about three times what the same trees take by their cuts (docs/estimate.md).
 */
export const publishedSlopes = {
  source: 'Churack, Miller, Ottman & Koval 1994, J. Arboric. 20(4):231-236',
  pruningPerInch: 6,
  stackingPerInch: 1.5,
  /** Trunks that the slopes were found on, inches. */
  smallest: 4,
  largest: 16,
  poundsPerMinute: 3
} as const

/** What a tree of a trunk takes by the published slopes, in inches. */
export function effortByTrunk(inches: number, { tree }: Pick<TreePlan, 'tree'>, rates: Rates): Effort {
  const access = tree.access ?? 'open'
  const { pruningPerInch, stackingPerInch, poundsPerMinute } = publishedSlopes
  const pruning = pruningPerInch * inches
  const pounds = pruning * poundsPerMinute
  const weight = Math.round((pounds * kilogramsPerPound) / kilogramsPer(rates))
  const minutes = {
    setUp: rates.setUpMinutes[access] + rates.betweenTrees,
    cutting: pruning / rates.crewPersons,
    brush: (stackingPerInch * inches) / rates.crewPersons
  }
  return effortOf({ minutes, weight, byPole: false }, rates.accessFactor[access], rates)
}

function figureOf(plan: TreePlan, year: number, rates: Rates): BudgetFigure[] {
  const { trunk, id, limbs, unplannable } = plan.tree
  if (limbs.length > 0 || trunk === null) return []
  if (atMost(plan.allowedRemoval, 0) && unplannable === null) return []
  const inches = trunk / 25.4
  const effort = effortByTrunk(inches, plan, rates)
  const { crew, disposal } = ownCosts(effort, rates)
  const outside = !atLeast(inches, publishedSlopes.smallest) || !atMost(inches, publishedSlopes.largest)
  const cost = crew.plus(disposal)
  const price = priceOf(cost, rates)
  const nothing = new Money(0)
  const basis = `no limbs listed: by trunk size, ${publishedSlopes.source}${outside ? '; this trunk is outside its range' : ''}`
  const work: EstimateLine = {
    ...{ tree: id, visit: 0, year, cuts: 0, relief: 0, basis },
    ...effort,
    money: { crew, disposal, shared: nothing, cost, charged: price, topUp: nothing },
    price
  }
  return [{ tree: id, trunk: inches, outside, price, work }]
}

/** A figure for each tree without limbs that may be pruned and whose trunk is known, in the inventory's order. */
export function budgetFiguresOf(
  plan: Pick<Plan, 'trees' | 'date' | 'firstYear'>,
  rates: Rates
): BudgetFigure[] {
  const year = firstYearOf(plan)
  return plan.trees.flatMap((tree) => figureOf(tree, year, rates))
}
