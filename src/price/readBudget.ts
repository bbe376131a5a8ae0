import { Money } from '../../shared/money'
import { digitsIn } from '../../shared/numbers'

/** More than any job costs; above it, minor units would not be exact any more. */
const mostMoney = new Money('1e12')

/**
 * A budget as a person types it, cut to the currency's minor unit, or a sentence that says what is wrong. One number has
 * no others beside it that would tell what its comma means, so "1,450" is refused with both readings.
 */
export function readBudget(text: string, minorDigits: number): Money | string {
  if (text.trim() === '') return 'No budget is typed: type an amount, tax included.'
  const digits = digitsIn(text, null, { money: true })
  if (typeof digits !== 'string')
    return digits.why === 'two-ways'
      ? `“${text.trim()}” can be ${digits.high} or ${digits.low}: type ${digits.high} without the ${digits.sign}, or “${digits.clear}”.`
      : `“${text.trim()}” is not an amount: type the number alone, such as 2500.`
  const budget = new Money(digits).toDecimalPlaces(minorDigits, Money.ROUND_DOWN)
  if (budget.lessThanOrEqualTo(0)) return 'A budget is more than 0: type an amount, tax included.'
  return budget.greaterThan(mostMoney) ? 'A budget is at most a million million: type less.' : budget
}
