import { readChoice, type ChoiceName } from '../../../shared/choices'
import type { Field } from '../../../shared/columns'
import type { ColumnValues } from './columnValues'
import type { Candidate } from './headedColumn'

/** What a column of words can be told by, whatever its header: words of a choice, some of which mean nothing else. */
const told: readonly { readonly field: Field; readonly choice: ChoiceName; readonly own: RegExp }[] = [
  {
    field: 'bark',
    choice: 'includedBark',
    own: /\bincl|\bbark\b|rinde|eingewachs|\becorce|\bcorteza|\binclus|\binclui/
  },
  {
    field: 'live',
    choice: 'live',
    own: /\bdead|\babgestorben|\btot(?:holz)?\b|\bmorte?s?\b|\bmuert/
  },
  {
    field: 'role',
    choice: 'role',
    own: /codom|\bcompet|\bleader\b|\btemporary\b|leittrieb|konkurr|\bfleche\b|\bconcurrente\b|\bguia\b|\bsubord|\bdominee\b/
  }
]

/** Cells that such words have to fill at least, how many of them, and what a meaning told by them comes to: it is asked. House judgment. */
const filled = 0.7
const fewest = 3
const score = 0.6

/** What the cells say that a column is whose header says nothing: "Rank" above "codominant" and "competing". */
export function namedByValues({ texts, wordy }: ColumnValues): Candidate[] {
  if (texts.length < fewest || wordy < 0.5) return []
  return told.flatMap(({ field, choice, own }) => {
    const read = texts.filter((text) => readChoice(choice, text) !== null).length
    const fits = read >= texts.length * filled && texts.some((text) => own.test(text))
    return fits ? [{ field, score, girth: false }] : []
  })
}
