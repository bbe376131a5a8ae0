/** The most characters that a spreadsheet cell holds (Excel specifications and limits, Microsoft). */
export const longestCellText = 32767

/** A text that starts a formula in a spreadsheet, or in a file of comma-separated values opened in one. */
export function startsFormula(text: string): boolean {
  return /^\s*[=+\-@]/.test(text)
}

/** The most characters of the words for a picture: more than anyone listens to, and no file has room for any length. */
export const longestAltText = 1500

function fit(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text
}

/** A text cut to what a cell holds, its end marked. */
export function fitCell(text: string): string {
  return fit(text, longestCellText)
}

/** The words for a picture or chart, cut where they run on, their end marked. */
export function fitAltText(text: string): string {
  return fit(text, longestAltText)
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
