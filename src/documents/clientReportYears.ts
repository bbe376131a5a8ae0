import type { Estimate, EstimateLine } from '../arbor/price/estimate'
import { Money } from '../../shared/money'

/** Year columns that a page has room for, besides the sum. */
const mostYears = 5

/** One column of the programme: a year, or the years from one on. */
export interface YearSpan {
  header: string
  from: number
  /** Last year, both included. */
  to: number
}

export function yearsOf(estimate: Estimate): number[] {
  return [...new Set(estimate.lines.map(({ year }) => year))].sort((a, b) => a - b)
}

/** The years of the programme side by side; where they are many, the last column holds all that follow. */
export function yearSpans(estimate: Estimate): YearSpan[] {
  const years = yearsOf(estimate)
  const single = years.length > mostYears ? years.slice(0, mostYears - 1) : years
  const spans = single.map((year): YearSpan => ({ header: String(year), from: year, to: year }))
  const rest = years.slice(single.length)
  const [first] = rest
  if (first !== undefined)
    spans.push({ header: `${String(first)} and later`, from: first, to: rest.at(-1) ?? first })
  return spans
}

/** The printed prices of some lines added up exactly. */
export function priceOf(lines: readonly EstimateLine[]): Money {
  const [first, ...rest] = lines
  return rest.reduce((sum, { price }) => sum.plus(price), first?.price ?? new Money(0))
}

/** What falls in each span and in all, in the order of the columns; null where nothing does. */
export function pricesAcross(lines: readonly EstimateLine[], spans: readonly YearSpan[]): (number | null)[] {
  const sums: (Money | null)[] = spans.map(() => null)
  let all: Money | null = null
  for (const { year, price } of lines) {
    const at = spans.findIndex(({ from, to }) => year >= from && year <= to)
    const before = sums[at]
    if (before !== undefined) sums[at] = before === null ? price : before.plus(price)
  }
  for (const sum of sums) if (sum !== null) all = all === null ? sum : all.plus(sum)
  return [...sums, all].map((sum) => sum?.toNumber() ?? null)
}
