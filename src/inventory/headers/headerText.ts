import type { LengthUnit } from '../../../shared/units'
import { tokensOf } from './headerTokens'
import { wordsOf, type HeaderWord } from './headerWords'
import { foreignMeanings, type Meaning } from './dictionary'
import type { Notion } from './words/notion'

export { fold } from './fold'
export { longestHeader } from './headerTokens'
export type { HeaderWord } from './headerWords'

/** A header taken apart: what it speaks of, and the unit it names. */
export interface HeaderText {
  readonly words: readonly HeaderWord[]
  /** Every notion that a word of the header may stand for. */
  readonly notions: ReadonlySet<Notion>
  /** Words that none of the languages here knows, as folded. */
  readonly unknown: readonly string[]
  /** A word that tells the column is about something else, or null. */
  readonly decoy: string | null
  /** Whether a word was taken for one that is spelled nearly like it. */
  readonly guessed: boolean
  readonly unit: LengthUnit | null
  readonly percent: boolean
  readonly degrees: boolean
  /** The header asks for yes or no: "(y/n)", "(x)". */
  readonly tick: boolean
}

const said = (text: string, meaning: Meaning): HeaderWord => ({
  text,
  meanings: [meaning],
  spelling: 'mark'
})

/** What is given in a unit: thick things, tall ones, or either. */
const sizes: Readonly<Record<LengthUnit, readonly Meaning[]>> = {
  in: ['small'],
  mm: ['small', 'tall'],
  cm: ['small', 'tall'],
  m: ['tall'],
  ft: ['tall'],
  yd: ['tall']
}

/**
 * Takes a header apart. A word may stand for more than one notion ("top", "base"); the reading of a field takes the one
 * it needs, so all are given.
 */
export function readHeaderText(header: string): HeaderText {
  const { tokens, unit, percent, degrees, tick } = tokensOf(header)
  const words = wordsOf(tokens)
  if (percent) words.push(said('%', 'share'))
  if (degrees) words.push(said('°', 'angle'))
  if (unit !== null) words.push({ text: unit, meanings: sizes[unit], spelling: 'mark' })
  const decoy = words.find(
    ({ meanings }) => meanings.length > 0 && meanings.every((each) => foreignMeanings.has(each))
  )
  return {
    words,
    notions: new Set(
      words.flatMap(({ meanings }) => meanings.filter((each): each is Notion => each !== 'noise'))
    ),
    unknown: words.filter(({ spelling }) => spelling === 'unknown').map(({ text }) => text),
    decoy: decoy?.text ?? null,
    guessed: words.some(({ spelling }) => spelling === 'slip'),
    unit,
    percent,
    degrees,
    tick
  }
}
