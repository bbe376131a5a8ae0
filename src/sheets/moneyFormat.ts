import type { Format } from './sheet'

/** The currency's digits, thousands in groups; the currency itself stands in the header. */
export function moneyFormat(minorDigits: number): Format {
  const numberFormat = minorDigits === 0 ? '#,##0' : `#,##0.${'0'.repeat(minorDigits)}`
  return { numberFormat, align: 'right' }
}
