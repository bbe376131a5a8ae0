import type { EstimateLine, PricedWork } from '../../price/estimate'
import { sumPrinted, type Money } from '../../../shared/money'

export function yearsOf({ lines }: Pick<PricedWork, 'lines'>): number[] {
  return [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b)
}

/** The printed prices of some lines added up exactly. */
export function priceOf(lines: readonly EstimateLine[], minorDigits: number): Money {
  return sumPrinted(lines, ({ price }) => price, minorDigits)
}
