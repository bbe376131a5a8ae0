import type { EstimateLine, PricedWork } from '../../price/estimate'
import { asNumber, sumPrinted, type Money } from '../../../shared/money'

/** Year columns that a page has room for, besides the sum. */
const mostYears = 5

/** One column of the program: a year, or the years from one on. */
export interface YearSpan {
  header: string
  from: number
  /** Last year, both included. */
  to: number
}

export function yearsOf({ lines }: Pick<PricedWork, 'lines'>): number[] {
  return [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b)
}

/** The years of the program side by side; where they are many, the last column holds all that follow. */
export function yearSpans(priced: Pick<PricedWork, 'lines'>): YearSpan[] {
  const years = yearsOf(priced)
  const single = years.length > mostYears ? years.slice(0, mostYears - 1) : years
  const spans = single.map((year): YearSpan => ({ header: String(year), from: year, to: year }))
  const rest = years.slice(single.length)
  const [first] = rest
  if (first !== undefined)
    spans.push({ header: `${String(first)} and later`, from: first, to: rest.at(-1) ?? first })
  return spans
}

/** The printed prices of some lines added up exactly. */
export function priceOf(lines: readonly EstimateLine[], minorDigits: number): Money {
  return sumPrinted(lines, ({ price }) => price, minorDigits)
}

/**
 * What falls in each span and in all, in the order of the columns; null where nothing does. Exact, since printed prices
 * are added in whole smallest units.
 */
export function pricesAcross(
  lines: readonly EstimateLine[],
  spans: readonly YearSpan[],
  minorDigits: number
): (number | null)[] {
  if (lines.length === 0) return [...spans.map(() => null), null]
  const unit = 10 ** minorDigits
  const units: (number | null)[] = spans.map(() => null)
  let all = 0
  for (const { year, price } of lines) {
    const printed = Math.round(asNumber(price) * unit)
    const at = spans.findIndex(({ from, to }) => year >= from && year <= to)
    if (at >= 0) units[at] = (units[at] ?? 0) + printed
    all += printed
  }
  return [...units, all].map((sum) => (sum === null ? null : sum / unit))
}
