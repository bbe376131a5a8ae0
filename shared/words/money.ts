import { printMoney, type Money } from '../money'
import { locale } from './locale'

const formats: Intl.NumberFormat[] = []

function formatOf(minorDigits: number): Intl.NumberFormat {
  return (formats[minorDigits] ??= new Intl.NumberFormat(locale, {
    minimumFractionDigits: minorDigits,
    maximumFractionDigits: minorDigits
  }))
}

/** An amount as every surface writes it, half up to the minor unit, thousands set apart: "1,240.50". */
export function showMoney(amount: Money, minorDigits: number): string {
  // Engines take the digits of a text as they are; the type of `format` does not know it yet.
  const digits: unknown = printMoney(amount, minorDigits)
  return formatOf(minorDigits).format(digits as number)
}

/** Decimals that a currency has by ISO 4217, as the engine's tables know it; null for a code that is no currency. */
export function currencyDecimals(currency: string): number | null {
  // A code that is no currency gets two decimals: only one with a name of its own is known.
  const name = new Intl.DisplayNames(locale, { type: 'currency', fallback: 'none' }).of(currency)
  if (name === undefined) return null
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency })
  return format.resolvedOptions().maximumFractionDigits ?? null
}
