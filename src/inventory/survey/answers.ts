import type { ColumnAnswer, ReadingChoices } from '../inventory'
import { fold } from '../headers/fold'

/**
 * What a person said of the column under a header, by its sheet, its letters and all that its header may be: its name, and
 * its name with the title above it. Undefined where nobody said anything.
 */
export type AnswerFor = (sheet: string, letters: string, ...headers: string[]) => ColumnAnswer | undefined

export const noAnswers: AnswerFor = () => undefined

/** Whether two names are the same but for case, accents and spaces. */
export function sameName(one: string, other: string): boolean {
  const plain = (text: string): string => fold(text).replace(/\s+/g, ' ').trim()
  return plain(one) === plain(other)
}

/** The answers among a person's choices; one that names the column's letters alone goes first, then the earlier one. */
export function answersOf({ answers = [] }: ReadingChoices): AnswerFor {
  if (answers.length === 0) return noAnswers
  return (sheet, letters, ...headers) => {
    const meant = ({ sheet: wanted, header, column }: ColumnAnswer): boolean =>
      (wanted === undefined || sameName(wanted, sheet)) &&
      (column === undefined || column.toUpperCase() === letters) &&
      (header === undefined || headers.some((each) => sameName(header, each)))
    const here = answers.filter((answer) => (answer.column ?? answer.header) !== undefined && meant(answer))
    const [lettersAlone, others] = [
      here.filter(({ header }) => header === undefined),
      here.filter(({ header }) => header !== undefined)
    ]
    const ordered = [...lettersAlone, ...others]
    const field = ordered.find((answer) => answer.field !== undefined)?.field
    // A unit that was told with another meaning is not one of this meaning.
    const unit = ordered.find(
      (answer) => answer.unit !== undefined && (answer.field === undefined || answer.field === field)
    )?.unit
    if (ordered.length === 0) return undefined
    return { ...(field === undefined ? {} : { field }), ...(unit === undefined ? {} : { unit }) }
  }
}
