/**
 * Shares a whole number of units in proportion to whole weights, so that the shares add up to it exactly: each gets the
 * whole part of its quota, and the units left go one each to the largest remainders, the earlier of two equal ones first.
 * Where all weights are 0, all count the same.
 *
 * Source: the method of largest remainders, a general method of apportionment (from memory).
 */
export function shareOut(units: number, weights: readonly number[]): number[] {
  const counted = weights.some((weight) => weight > 0) ? weights : weights.map(() => 1)
  const total = counted.reduce((sum, weight) => sum + BigInt(weight), 0n)
  const parts = counted.map((weight, index) => {
    const quota = BigInt(units) * BigInt(weight)
    return { index, whole: Number(quota / total), rest: quota % total }
  })
  const shares = parts.map(({ whole }) => whole)
  const left = units - shares.reduce((sum, share) => sum + share, 0)
  parts.sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1))
  for (const { index } of parts.slice(0, left)) shares[index] = (shares[index] ?? 0) + 1
  return shares
}
