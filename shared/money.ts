import DecimalLibrary from 'decimal.js'

/**
 * The one Decimal of the project: 28 digits, rounded half up, no exponent in print.
 * Never use it to validate what a person typed ("0x10" parses, x/0 is Infinity).
 */
export const Money = DecimalLibrary.clone({
  precision: 28,
  rounding: DecimalLibrary.ROUND_HALF_UP,
  toExpNeg: -20,
  toExpPos: 28
})

export type Money = InstanceType<typeof Money>

/** Half up to the currency's minor unit, once for every printed line. */
export function roundMoney(amount: Money, minorDigits: number): Money {
  return amount.toDecimalPlaces(minorDigits, DecimalLibrary.ROUND_HALF_UP)
}

/** The amount as text with its minor digits: "1240.50". */
export function printMoney(amount: Money, minorDigits: number): string {
  return amount.toFixed(minorDigits, DecimalLibrary.ROUND_HALF_UP)
}
