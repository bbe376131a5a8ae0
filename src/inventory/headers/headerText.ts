import type { LengthUnit } from '../../../shared/units'
import { longestHeader, tokensOf } from './headerTokens'
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

const said = (text: string, meanings: readonly Meaning[]): HeaderWord => ({
  text,
  meanings,
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

/** Headers that were taken apart: the same few stand on every sheet. The store is emptied before it grows large. */
const known = new Map<string, HeaderText>()
const mostKnown = 5000

/** Takes a header apart; one that was is remembered. */
export function readHeaderText(header: string): HeaderText {
  const before = known.get(header)
  if (before !== undefined) return before
  const text = takenApart(header)
  if (known.size >= mostKnown) known.clear()
  // What is longer is cut off, and no header that comes again.
  if (header.length <= longestHeader) known.set(header, text)
  return text
}

/** A header whose unit stands below it, in a row of units. */
export function withUnitBelow(text: HeaderText, unit: LengthUnit | null): HeaderText {
  if (unit === null || text.unit !== null || text.words.length === 0) return text
  const words = [...text.words, said(unit, sizes[unit])]
  return { ...text, unit, words, notions: notionsOf(words) }
}

function notionsOf(words: readonly HeaderWord[]): ReadonlySet<Notion> {
  return new Set(words.flatMap(({ meanings }) => meanings.filter((each): each is Notion => each !== 'noise')))
}

/**
 * A word may stand for more than one notion ("top", "base"); the reading of a field takes the one
 * it needs, so all are given.
 */
function takenApart(header: string): HeaderText {
  const { tokens, unit, percent, degrees, tick } = tokensOf(header)
  const words = wordsOf(tokens)
  if (percent) words.push(said('%', ['share']))
  if (degrees) words.push(said('°', ['angle']))
  if (unit !== null) words.push(said(unit, sizes[unit]))
  const decoy = words.find(
    ({ meanings }) => meanings.length > 0 && meanings.every((each) => foreignMeanings.has(each))
  )
  return {
    words,
    notions: notionsOf(words),
    unknown: words.filter(({ spelling }) => spelling === 'unknown').map(({ text }) => text),
    decoy: decoy?.text ?? null,
    guessed: words.some(({ spelling }) => spelling === 'slip'),
    unit,
    percent,
    degrees,
    tick
  }
}
