import { percent } from './percent'

const parts: Readonly<Record<number, string>> = {
  1: 'an eighth',
  2: 'a quarter',
  3: 'three-eighths',
  4: 'half',
  5: 'five-eighths',
  6: 'three-quarters',
  7: 'seven-eighths'
}

/** A share of a limb's foliage as the trade says it: 0.25 gives "a quarter", what is no whole eighth "31 %". */
export function foliagePart(share: number): string {
  const eighths = Math.round(share * 8)
  return (Math.abs(share * 8 - eighths) < 1e-9 ? parts[eighths] : undefined) ?? percent(share)
}
