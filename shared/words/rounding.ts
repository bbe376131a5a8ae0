/**
 * The one rule of rounding for whatever is read by a person:
 *
 * - A number is rounded half up to the digits it is shown with.
 * - A limit is never passed by its own text: what may be taken at most (allowed removal, the height all ends are kept
 *   below) is never rounded up, what there must be at least (the lateral left, a clearance) never down.
 * - Parts shown beside their sum add up to the sum shown, as the lines of an estimate do.
 */

/** What a number stands for, where it is a limit: the most that may be, or the least that must be. */
export type Limit = 'at most' | 'at least'

/** What a length may lose in a conversion of units; a value that lies on a digit counts as that digit. */
const slack = 1e-6

/** How many times 1/`perWhole` a value is, rounded by the rule: (0.125, 1000) gives 125. NaN stays NaN. */
export function wholeUnits(value: number, perWhole: number, limit?: Limit): number {
  const units = value * perWhole
  if (limit === 'at most') return Math.floor(units + slack)
  if (limit === 'at least') return Math.ceil(units - slack)
  return Math.floor(units + 0.5 + 1e-9)
}

/** A value rounded by the rule to so many decimals. */
export function rounded(value: number, decimals: number, limit?: Limit): number {
  const perWhole = 10 ** decimals
  return wholeUnits(value, perWhole, limit) / perWhole
}

/** Parts in whole units, and their sum. */
export interface ShownParts {
  readonly parts: readonly number[]
  readonly sum: number
}

/**
 * Parts as they are shown, in whole units of 1/`perWhole`: each is rounded, and the sum shown is the sum of what is shown.
 * Where that would pass `most` (whole units, a ceiling that the exact sum keeps), the parts are rounded down and what is
 * left up to the ceiling is given to the largest remainders, earlier parts first.
 */
export function shownParts(parts: readonly number[], perWhole: number, most = Infinity): ShownParts {
  const nearest = parts.map((part) => wholeUnits(part, perWhole))
  const sum = nearest.reduce((all, part) => all + part, 0)
  if (!(sum > most)) return { parts: nearest, sum }
  const down = parts.map((part) => wholeUnits(part, perWhole, 'at most'))
  const left = most - down.reduce((all, part) => all + part, 0)
  const rest = (index: number) => (parts[index] ?? 0) * perWhole - (down[index] ?? 0)
  const order = down.map((_part, index) => index).sort((a, b) => rest(b) - rest(a) || a - b)
  for (const index of order.slice(0, Math.max(0, left))) down[index] = (down[index] ?? 0) + 1
  return { parts: down, sum: down.reduce((all, part) => all + part, 0) }
}
