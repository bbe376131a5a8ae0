import { boundsBySuffix, closestFirst, type Offered } from './budgetBounds'

/** A partial choice: the visits taken of the trees so far, kept as a chain. */
interface State {
  price: number
  worth: number
  taken: number
  before: State | null
}

/**
 * How many visits of each tree to buy so that the worth is greatest within a budget; the visits of a tree are bought in
 * order, so that its choice is the first k of them. All numbers are whole, prices and worths not negative. Exact. Of
 * equal worths the lower price wins, and of those the choice that takes more of the earlier trees.
 *
 * Method: multiple-choice knapsack by dominance; partial choices are left out where even the fractional optimum of what
 * remains falls short of the best known (Sinha & Zoltners 1979 for the bound, from memory). Trees that are neither clearly
 * worth their price nor clearly not are settled first, so that few partial choices survive.
 */
export function chooseWithin(trees: readonly (readonly Offered[])[], budget: number): number[] {
  if (!(budget >= 0)) return trees.map(() => 0)
  const all = trees.map(ladderOf)
  const order = closestFirst(all, budget)
  const ladders = order.map((tree) => all[tree] ?? [])
  const { bounds, atLeast } = boundsBySuffix(ladders, budget)
  let states: State[] = [{ price: 0, worth: 0, taken: 0, before: null }]
  ladders.forEach((ladder, index) => {
    const next: State[] = []
    for (const state of states)
      for (let taken = 0; taken < ladder.length; taken++) {
        const step = ladder[taken] as Offered
        const price = state.price + step.price
        if (price > budget) break
        const worth = state.worth + step.worth
        if (worth + bounds(index + 1, budget - price) >= atLeast)
          next.push({ price, worth, taken, before: state })
      }
    states = undominated(next, order, index)
  })
  const best = states.at(-1)
  return choiceOf(best, order)
}

/** Price and worth of the first k visits, for k from 0 on. */
function ladderOf(visits: readonly Offered[]): Offered[] {
  const ladder: Offered[] = [{ price: 0, worth: 0 }]
  for (const { price, worth } of visits) {
    const last = ladder.at(-1) as Offered
    ladder.push({ price: last.price + price, worth: last.worth + worth })
  }
  return ladder
}

/** Without those that another beats in price or worth and does not fall behind in the other; by price, worth rising. */
function undominated(states: State[], order: readonly number[], stage: number): State[] {
  states.sort((a, b) => a.price - b.price || b.worth - a.worth || compareChoices(a, b, order, stage))
  const kept: State[] = []
  for (const state of states) if (state.worth > (kept.at(-1)?.worth ?? -1)) kept.push(state)
  return kept
}

/** What was taken of each tree, in the order the trees were given. */
function choiceOf(state: State | undefined, order: readonly number[]): number[] {
  const choice = order.map(() => 0)
  let stage = order.length - 1
  for (let at = state; at !== undefined && at.before !== null; at = at.before) {
    choice[order[stage] ?? 0] = at.taken
    stage -= 1
  }
  return choice
}

/** The choice that takes more of the earlier trees, in the order they were given, comes first. */
function compareChoices(a: State, b: State, order: readonly number[], last: number): number {
  let [one, two, stage, earliest, sign]: [State, State, number, number, number] = [a, b, last, Infinity, 0]
  while (one !== two && one.before !== null && two.before !== null) {
    const tree = order[stage] ?? Infinity
    if (one.taken !== two.taken && tree < earliest) [earliest, sign] = [tree, two.taken - one.taken]
    ;[one, two, stage] = [one.before, two.before, stage - 1]
  }
  return sign
}
