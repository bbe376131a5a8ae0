/** Exact arithmetic of its own for the checks of money: fractions of whole numbers, with nothing of the project in it. */
export interface Fraction {
  readonly over: bigint
  readonly under: bigint
}

/** "1,234.50", "-3" or "8.25" as a fraction. */
export function exact(text: string): Fraction {
  const found = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text.replaceAll(',', '').trim())
  if (found === null) throw new Error(`“${text}” is no decimal number`)
  const [, sign, whole = '0', decimals = ''] = found
  const over = BigInt(whole + decimals)
  return { over: sign === '-' ? -over : over, under: 10n ** BigInt(decimals.length) }
}

export const whole = (value: number | bigint): Fraction => ({ over: BigInt(value), under: 1n })
export const plus = (a: Fraction, b: Fraction): Fraction => ({
  over: a.over * b.under + b.over * a.under,
  under: a.under * b.under
})
export const times = (a: Fraction, b: Fraction): Fraction => ({
  over: a.over * b.over,
  under: a.under * b.under
})
export const over = (a: Fraction, b: Fraction): Fraction => ({
  over: a.over * b.under * (b.over < 0n ? -1n : 1n),
  under: a.under * (b.over < 0n ? -b.over : b.over)
})
export const minus = (a: Fraction, b: Fraction): Fraction => plus(a, { over: -b.over, under: b.under })
export const more = (a: Fraction, b: Fraction): boolean => a.over * b.under > b.over * a.under
export const most = (a: Fraction, b: Fraction): Fraction => (more(a, b) ? a : b)

const floor = (a: bigint, b: bigint): bigint => (a >= 0n || a % b === 0n ? a / b : a / b - 1n)

/** Whole units of 10^-digits, half up, as amounts that are never negative are printed. */
export const unitsOf = (value: Fraction, digits: number): bigint =>
  floor(2n * value.over * 10n ** BigInt(digits) + value.under, 2n * value.under)

export const ofUnits = (units: bigint, digits: number): Fraction => ({
  over: units,
  under: 10n ** BigInt(digits)
})

/** Whole ones upward. */
export const upward = (value: Fraction): bigint => -floor(-value.over, value.under)

/** Units in proportion to weights by largest remainders, earlier ones first; all alike where no weight is above 0. */
export function shared(units: bigint, weights: readonly bigint[]): bigint[] {
  const sum = weights.reduce((a, b) => a + b, 0n)
  const parts = sum > 0n ? weights : weights.map(() => 1n)
  const all = sum > 0n ? sum : BigInt(weights.length)
  const shares = parts.map((part) => (units * part) / all)
  const rests = parts.map((part, at) => ({ at, rest: (units * part) % all }))
  rests.sort((a, b) => (a.rest === b.rest ? a.at - b.at : a.rest > b.rest ? -1 : 1))
  const left = Number(units - shares.reduce((a, b) => a + b, 0n))
  for (const { at } of rests.slice(0, left)) shares[at]! += 1n
  return shares
}
