import { printMoney, type Money } from '../../shared/money'
import type { Format } from './sheet'

/** The currency's digits, thousands in groups; the currency itself stands in the header. */
export function moneyFormat(minorDigits: number): Format {
  const numberFormat = minorDigits === 0 ? '#,##0' : `#,##0.${'0'.repeat(minorDigits)}`
  return { numberFormat, align: 'right' }
}

/** Printed digits with their thousands in groups, as the cells show them. */
export function grouped(digits: string): string {
  const [whole = '0', minor] = digits.split('.')
  const set = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',')
  return minor === undefined ? set : `${set}.${minor}`
}

/** An amount within a sentence, written as the cells beside it show it: "1,240.50". */
export function showMoney(amount: Money, minorDigits: number): string {
  return grouped(printMoney(amount, minorDigits))
}
