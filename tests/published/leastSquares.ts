/** Coefficients of the least-squares fit of y on the columns of x, by the normal equations. For a few columns only. */
export function leastSquares(x: readonly (readonly number[])[], y: readonly number[]): number[] {
  const columns = x[0]!.length
  const system = Array.from({ length: columns }, (_, i) => [
    ...Array.from({ length: columns }, (_, j) => x.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
    x.reduce((sum, row, at) => sum + row[i]! * y[at]!, 0)
  ])
  for (let pivot = 0; pivot < columns; pivot++)
    for (let row = 0; row < columns; row++) {
      if (row === pivot) continue
      const times = system[row]![pivot]! / system[pivot]![pivot]!
      system[row] = system[row]!.map((value, at) => value - times * system[pivot]![at]!)
    }
  return system.map((row, at) => row[columns]! / row[at]!)
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

/** Standard deviation of a sample, n − 1. */
export function deviation(values: readonly number[]): number {
  const middle = mean(values)
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1))
}
