/** A visit that may be bought: a whole number of minor units, and what it is worth in whole units. */
export interface Offered {
  price: number
  worth: number
}

/** A step up the upper hull of a tree's choices. */
interface Step extends Offered {
  tree: number
}

export interface Bounds {
  /** More than the trees from `first` on can be worth within the price left. */
  bounds(first: number, left: number): number
  /** A worth that some choice certainly reaches. */
  atLeast: number
}

/** The steps along the upper hull of price and worth, each less worth for its price than the one before. */
function hullSteps(ladder: readonly Offered[], tree: number): Step[] {
  const hull: Offered[] = []
  for (const point of ladder) {
    if (hull.length > 0 && point.worth <= (hull.at(-1) as Offered).worth) continue
    while (hull.length > 0) {
      const [last, before] = [hull.at(-1) as Offered, hull.at(-2)]
      const same = point.price === last.price
      const bends =
        before !== undefined &&
        (point.worth - last.worth) * (last.price - before.price) >=
          (last.worth - before.worth) * (point.price - last.price)
      if (!same && !bends) break
      hull.pop()
    }
    hull.push(point)
  }
  return hull.slice(1).map((point, index) => {
    const { price, worth } = hull[index] as Offered
    return { price: point.price - price, worth: point.worth - worth, tree }
  })
}

/** What the best steps are worth in a row, the last of them in part. */
function filled(prices: Float64Array, worths: Float64Array, left: number): number {
  let [low, high] = [0, prices.length - 1]
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((prices[middle] ?? 0) <= left) low = middle
    else high = middle - 1
  }
  const [price = 0, worth = 0] = [prices[low], worths[low]]
  if (low === prices.length - 1) return worth
  const part = (left - price) / ((prices[low + 1] ?? 0) - price)
  return worth + part * ((worths[low + 1] ?? 0) - worth)
}

function byWorthForPrice(steps: Step[]): Step[] {
  return steps.sort((a, b) => b.worth * a.price - a.worth * b.price || a.tree - b.tree)
}

/**
 * The trees in the order in which they are best settled: first those with a step whose worth for its price is close to
 * that of the step at which the budget ends.
 */
export function closestFirst(ladders: readonly (readonly Offered[])[], budget: number): number[] {
  const steps = byWorthForPrice(ladders.flatMap(hullSteps))
  let [left, edge] = [budget, 0]
  for (const step of steps) {
    edge = step.worth / step.price
    left -= step.price
    if (left < 0) break
  }
  const far = ladders.map(() => Infinity)
  for (const { tree, worth, price } of steps)
    far[tree] = Math.min(far[tree] ?? Infinity, Math.abs(Math.log(worth / price / edge)))
  const order = ladders.map((_ladder, tree) => tree)
  return order.sort((a, b) => ((far[a] ?? 0) === (far[b] ?? 0) ? a - b : (far[a] ?? 0) - (far[b] ?? 0)))
}

/** Upper bounds by the fractional optimum for the trees from each one on, and a worth that a greedy choice reaches. */
export function boundsBySuffix(ladders: readonly (readonly Offered[])[], budget: number): Bounds {
  const base = ladders.map((ladder) =>
    Math.max(0, ...ladder.filter((p) => p.price === 0).map((p) => p.worth))
  )
  const steps = byWorthForPrice(ladders.flatMap(hullSteps))
  const known = new Map<number, [Float64Array, Float64Array]>()
  const sums = (first: number): [Float64Array, Float64Array] => {
    const found = known.get(first)
    if (found !== undefined) return found
    known.clear()
    const own = steps.filter(({ tree }) => tree >= first)
    const [prices, worths] = [new Float64Array(own.length + 1), new Float64Array(own.length + 1)]
    worths[0] = base.slice(first).reduce((sum, worth) => sum + worth, 0)
    own.forEach(({ price, worth }, index) => {
      prices[index + 1] = (prices[index] ?? 0) + price
      worths[index + 1] = (worths[index] ?? 0) + worth
    })
    known.set(first, [prices, worths])
    return [prices, worths]
  }
  return {
    bounds: (first, left) => Math.floor(filled(...sums(first), left) + 1e-6),
    atLeast: greedy(steps, ladders, base, budget)
  }
}

/** Takes steps by worth for their price as far as the budget goes; a tree whose step was passed over gets no later one. */
function greedy(
  steps: readonly Step[],
  ladders: readonly (readonly Offered[])[],
  base: readonly number[],
  budget: number
): number {
  const over = new Set<number>()
  let left = budget
  let worth = base.reduce((sum, each) => sum + each, 0)
  for (const step of steps) {
    if (over.has(step.tree)) continue
    if (step.price > left) over.add(step.tree)
    else {
      left -= step.price
      worth += step.worth
    }
  }
  const single = ladders.map((ladder) =>
    Math.max(...ladder.filter(({ price }) => price <= budget).map((point) => point.worth))
  )
  return Math.max(worth, ...single)
}
