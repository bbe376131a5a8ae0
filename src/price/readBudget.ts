import { Money } from '../../shared/money'
import { digitsIn, type TwoReadings } from '../../shared/numbers'
import { counted } from '../../shared/words/counts'

/** More than any job costs; above it, minor units would not be exact any more. */
const mostMoney = new Money('1e12')

/**
 * The reading that is an amount of the currency, or what leaves it open. Of "1,450" the lower reading has three
 * decimals: where the currency has fewer it is no amount, and 1450 is meant.
 */
function readingOf(read: string | TwoReadings, minorDigits: number): string | TwoReadings {
  return typeof read === 'string' || minorDigits >= 3 ? read : read.high
}

/** Currencies that a sign may stand for; a dollar is one of many. */
const ofSign: Readonly<Record<string, (currency: string) => boolean>> = {
  $: (currency) => !['EUR', 'GBP', 'JPY', 'CNY', 'CHF'].includes(currency),
  '€': (currency) => currency === 'EUR',
  '£': (currency) => currency.endsWith('P'),
  '¥': (currency) => currency === 'JPY' || currency === 'CNY'
}

/** The text without the code of a currency before or behind it, and that code or sign where it is of another one. */
function withoutCurrency(typed: string, currency: string): { amount: string; other: string | null } {
  const [, before, body = typed, behind] = /^([A-Z]{3})?\s*(.*?)\s*([A-Z]{3})?$/i.exec(typed) ?? []
  const code = (before ?? behind)?.toUpperCase()
  const sign = /[$€£¥]/.exec(body)?.[0]
  const other =
    (code !== undefined && code !== currency ? code : null) ??
    (sign !== undefined && ofSign[sign]?.(currency) === false ? sign : null)
  return { amount: code === undefined ? typed : body, other }
}

/**
 * A budget as a person types it, in the currency whose minor unit has so many digits, or a sentence that says what is
 * wrong. One number has no others beside it that would tell what its comma means; the currency does, or both readings are reported.
 */
export function readBudget(
  text: string,
  { currency, minorDigits }: { currency: string; minorDigits: number }
): Money | string {
  const typed = text.trim()
  if (typed === '') return 'No budget is typed: type an amount, tax included.'
  const { amount, other } = withoutCurrency(typed, currency)
  const read = digitsIn(amount, null, { money: true })
  if (other !== null && (typeof read === 'string' || read.why === 'two-ways'))
    return `“${typed}” is in ${other}, the estimate in ${currency}: type the amount in ${currency}.`
  if (typeof read !== 'string' && read.why !== 'two-ways')
    return `“${typed}” is not an amount: type the number alone, such as 2500.`
  const digits = readingOf(read, minorDigits)
  if (typeof digits !== 'string')
    return `“${typed}” can be ${digits.high} or ${digits.low}: type ${digits.high} without the ${digits.sign}, or “${digits.clear}”.`
  const budget = new Money(digits)
  if (budget.lessThanOrEqualTo(0)) return 'A budget is more than 0: type an amount, tax included.'
  if (budget.greaterThan(mostMoney)) return 'A budget is at most a million million: type less.'
  return budget.decimalPlaces() <= minorDigits ? budget : tooFine(typed, minorDigits)
}

function tooFine(typed: string, minorDigits: number): string {
  const has = minorDigits === 0 ? 'no decimals' : counted(minorDigits, 'decimal')
  return `“${typed}” is not an amount of a currency with ${has}: type an amount that it has, such as 2500.`
}
