import { printMoney } from '../../shared/money'
import type { ChosenOffer } from '../price/offers'

/**
 * The condition of a formula: the total of the Estimate that was written with a document is still what was written. `digits`
 * is how it is rounded, by a name of the Estimate unless given.
 */
export function totalStands(
  { total, minorDigits }: Pick<ChosenOffer, 'total' | 'minorDigits'>,
  digits = 'Money_digits'
): string {
  return `ROUND(Offer_total-${printMoney(total, minorDigits)},${digits})=0`
}
