import type { ColumnAnswer, ReadingChoices } from '../inventory'
import { fold } from '../headers/headerText'

/** What a person said of the column under a header, by its sheet and letters; undefined where nobody said anything. */
export type AnswerFor = (sheet: string, letters: string, header: string) => ColumnAnswer | undefined

export const noAnswers: AnswerFor = () => undefined

function same(one: string, other: string): boolean {
  const plain = (text: string): string => fold(text).replace(/\s+/g, ' ').trim()
  return plain(one) === plain(other)
}

/** The answers among a person's choices; one that names the column's letters goes before one that names its header. */
export function answersOf({ answers = [] }: ReadingChoices): AnswerFor {
  if (answers.length === 0) return noAnswers
  return (sheet, letters, header) => {
    const here = answers.filter((answer) => answer.sheet === undefined || same(answer.sheet, sheet))
    return (
      here.find(({ column }) => column?.toUpperCase() === letters) ??
      here.find((answer) => answer.header !== undefined && same(answer.header, header))
    )
  }
}
