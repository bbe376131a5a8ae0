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
