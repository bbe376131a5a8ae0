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

/** Digits in a word of a Decimal. */
const word = 7
/** The powers of ten that a number holds exactly. */
const powers = Array.from({ length: 23 }, (_, power) => Number(`1e${String(power)}`))

/**
 * The amount as the nearest number: the same as `toNumber` gives by way of a text, for the thousands of amounts of a sheet.
 * A Decimal of up to 14 digits is two words, which a number holds exactly; dividing by an exact power rounds once.
 */
export function asNumber(amount: Money): number {
  const { d: words, e: exponent, s: sign } = amount
  const power = word * (Math.floor(exponent / word) - (words?.length ?? 0) + 1)
  const scale = powers[Math.abs(power)]
  if (!(words?.length <= 2) || scale === undefined) return amount.toNumber()
  const [high = 0, low] = words
  const digits = low === undefined ? high : high * 1e7 + low
  return sign * (power >= 0 ? digits * scale : digits / scale)
}

/** The exact sum of amounts that are printed, and so rounded to the minor unit: added in whole units. */
export function sumPrinted<T>(lines: readonly T[], of: (line: T) => Money, minorDigits: number): Money {
  const unit = 10 ** minorDigits
  let units = 0
  for (const line of lines) units += Math.round(asNumber(of(line)) * unit)
  return new Money(units).div(unit)
}
