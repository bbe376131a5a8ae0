import type { ColumnAnswer, ColumnMatch } from './inventory'
import { sameName } from './survey/answers'

/** What names a column in an answer, so that it is found again wherever it stands. */
export type Named = Pick<ColumnAnswer, 'header' | 'sheet' | 'column'>

const sameMeaning = (one: ColumnMatch, other: ColumnMatch): boolean =>
  one.field === other.field && one.unit === other.unit

/**
 * A column by its header; with its sheet where the same header means something else on another one, and with its letters
 * too where it does so on its own sheet.
 */
export function namedColumn(match: ColumnMatch, matches: readonly ColumnMatch[]): Named {
  const { header, sheet, letters } = match
  const others = matches.filter((other) => sameName(other.header, header) && !sameMeaning(other, match))
  if (others.some((other) => other.sheet === sheet && other.letters !== letters))
    return { header, sheet, column: letters }
  return others.some((other) => other.sheet !== sheet) ? { header, sheet } : { header }
}

/**
 * Answers as they are kept for the next survey: what a person told of a column by its letters is kept by the header that stands
 * there, as columns move. A column without a header has its letters alone.
 */
export function byHeaders(
  answers: readonly ColumnAnswer[],
  matches: readonly ColumnMatch[]
): readonly ColumnAnswer[] {
  return answers.flatMap((answer) => {
    const { column, header, sheet, ...gives } = answer
    if (column === undefined || header !== undefined) return [answer]
    const meant = matches.filter(
      (match) =>
        match.header !== '' &&
        match.letters === column.toUpperCase() &&
        (sheet === undefined || sameName(sheet, match.sheet))
    )
    return meant.length === 0
      ? [answer]
      : meant.map((match) => ({ ...namedColumn(match, matches), ...gives }))
  })
}
