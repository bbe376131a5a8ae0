import { Figure, thousandth, whole } from './figures'
import type { Limit } from './rounding'

/** A share below this is none at all, only what is left over from subtracting shares. */
const nothing = 1e-9

const percents = new Figure(0, 1, false, ' %')

/**
 * A share in percent, the same on every surface: 0.183 gives "18.3 %", 0.2 gives "20 %". One decimal at most, so that an
 * allowance of 12.5 % reads as it is; a share too small for that is "under 0.1 %". `limit` says that it is one.
 */
export function percent(share: number, limit?: Limit): string {
  const text = percents.of(share * 100, limit)
  return text === '0 %' && share > nothing ? 'under 0.1 %' : text
}

/** A ceiling in percent, never rounded above itself: 0.125 gives "12.5 %", 0.1667 gives "16.6 %". */
export function ceilingPercent(share: number): string {
  return percent(share, 'at most')
}

/** A ratio in whole percent, as sentences for a client have it: 0.834 gives "83 %". */
export function wholePercent(ratio: number): string {
  return `${whole(ratio * 100)} %`
}

/** A rate of tax with the digits that it has: 0.0825 gives "8.25 %". */
export function ratePercent(rate: number): string {
  return `${thousandth(rate * 100)} %`
}
