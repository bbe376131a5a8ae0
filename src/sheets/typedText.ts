/** The most characters that a spreadsheet cell holds (Excel specifications and limits, Microsoft). */
export const longestCellText = 32767

/** A text that starts a formula in a spreadsheet, or in a file of comma-separated values opened in one. */
export function startsFormula(text: string): boolean {
  return /^\s*[=+\-@]/.test(text)
}

/** A text cut to what a cell holds, its end marked. */
export function fitCell(text: string): string {
  return text.length > longestCellText ? `${text.slice(0, longestCellText - 1)}…` : text
}

/**
 * A text as it has to be typed so that the spreadsheet keeps it as text: with an apostrophe before it wherever it
 * could be taken as a formula, number, date, truth value or error. "=A1" gives "'=A1", "3-2" gives "'3-2".
 */
export function typedText(text: string): string {
  const kept = fitCell(text)
  const plain = /^\p{L}[^\d]*$/u.test(kept) && !/^(true|false)$/i.test(kept.trim())
  return kept === '' || plain ? kept : `'${kept.slice(0, longestCellText - 1)}`
}
