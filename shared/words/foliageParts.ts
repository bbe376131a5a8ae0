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

const signs: Readonly<Record<number, string>> = { 1: '⅛', 2: '¼', 3: '⅜', 4: '½', 5: '⅝', 6: '¾', 7: '⅞' }

function inEighths(share: number, of: Readonly<Record<number, string>>): string {
  const eighths = Math.round(share * 8)
  return (Math.abs(share * 8 - eighths) < 1e-9 ? of[eighths] : undefined) ?? percent(share)
}

/** A share of a limb's foliage as the trade says it: 0.25 gives "a quarter", what is no whole eighth "31 %". */
export function foliagePart(share: number): string {
  return inEighths(share, parts)
}

/** The same where there is room for a sign only: "¼". */
export function foliageSign(share: number): string {
  return inEighths(share, signs)
}
