/** What a number format shows as it stands: quoted text, an escaped sign, a color or locale, room for a sign. */
const literals = /"[^"]*"|\\.|\[[^\]]*\]|[_*]./g

/** Whether a cell of this number format shows its number as a day or a time: "yyyy-mm-dd" does, "#,##0.00" does not. */
export function isDateFormat(format: string): boolean {
  const [positive = ''] = format.replace(literals, '').split(';')
  return /[dmyhs]/i.test(positive) && !/[0#?]/.test(positive.replace(/s\.0+/i, 's'))
}

/** Whether a cell of this number format shows its number as a percentage (ECMA-376 part 1, 18.8.31). */
export function isPercentFormat(format: string): boolean {
  return format.replace(literals, '').includes('%')
}

/** A share as a cell shows it: 0.07 gives "7 %". Null where it has more digits than anybody types. */
export function shownPercent(share: number): string | null {
  const percents = String(Number((share * 100).toPrecision(12)))
  return /^-?\d+(\.\d+)?$/.test(percents) ? `${percents} %` : null
}
