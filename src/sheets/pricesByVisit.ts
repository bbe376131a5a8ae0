import { sumPrinted, type Money } from '../../shared/money'
import type { Estimate, EstimateLine } from '../price/estimate'

/** What falls on the first, second … visits. */
export interface VisitPrice {
  visit: number
  /** "2026", or "2028–2029": trees of different life stages come to their second visit in different years. */
  years: string
  price: Money
}

function yearsOf(lines: readonly EstimateLine[]): string {
  const years = lines.map(({ year }) => year)
  const [first, last] = [Math.min(...years), Math.max(...years)]
  return first === last ? String(first) : `${String(first)}–${String(last)}`
}

/** The printed prices of these lines by visit, in the order of the visits. */
export function pricesByVisit(
  lines: readonly EstimateLine[],
  { minorDigits }: Pick<Estimate, 'minorDigits'>
): VisitPrice[] {
  const visits = [...new Set(lines.map(({ visit }) => visit))].sort((a, b) => a - b)
  return visits.map((visit) => {
    const own = lines.filter((line) => line.visit === visit)
    return { visit, years: yearsOf(own), price: sumPrinted(own, ({ price }) => price, minorDigits) }
  })
}
