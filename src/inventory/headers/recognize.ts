import { partsOf, slippedParts } from './compounds'
import {
  foreignMeanings,
  isEnding,
  isGerman,
  isPart,
  meaningsOf,
  simpleWords,
  type Meaning
} from './dictionary'
import { Slips } from './slips'

/** How a word was recognized; the further from the word as listed, the less it counts. */
export type Spelling = 'known' | 'abbreviated' | 'slip' | 'short' | 'unknown'

export interface Recognized {
  readonly meanings: readonly Meaning[]
  readonly spelling: Spelling
}

/** A slip is seen through only where it leads to a column of ours. */
const slips = new Slips(
  [...simpleWords.keys()].filter(
    (word) => !(simpleWords.get(word) ?? []).some((each) => each === 'noise' || foreignMeanings.has(each))
  )
)

/** Words by their first three letters, to find what an abbreviation may be short for. */
const byStart = new Map<string, string[]>()
/** Words without their vowels: "trnk", "brnch". */
const bySkeleton = new Map<string, string[]>()
const skeleton = (word: string): string => (word[0] ?? '') + word.slice(1).replace(/[aeiouy]/g, '')
for (const word of simpleWords.keys()) {
  if (word.length >= 5) {
    const start = word.slice(0, 3)
    byStart.set(start, [...(byStart.get(start) ?? []), word])
    bySkeleton.set(skeleton(word), [...(bySkeleton.get(skeleton(word)) ?? []), word])
  }
}

function allMeanings(list: readonly string[]): Meaning[] {
  return [...new Set(list.flatMap((word) => simpleWords.get(word) ?? []))]
}

/** Words that an abbreviation may be short for, where they all mean the same: "attach.", "circonf", "brnch". */
function abbreviated(token: string, point: boolean): readonly Meaning[] | null {
  const long = (byStart.get(token.slice(0, 3)) ?? []).filter((word) => word.startsWith(token))
  const enough = token.length >= (point ? 3 : 4)
  const whole = /[aeiouy]/.test(token.slice(1)) || token.length < 3 ? [] : (bySkeleton.get(token) ?? [])
  for (const list of [enough ? long : [], whole]) {
    const [first, ...others] = list.map((word) => simpleWords.get(word) ?? [])
    const shared = first?.filter((meaning) => others.every((meanings) => meanings.includes(meaning))) ?? []
    if (shared.length > 0) return shared
  }
  return null
}

/** A German compound of which only the last word is known, which says what the thing is: "Alleebaum" is some tree. */
function headed(token: string): readonly Recognized[] | null {
  for (let at = 3; at <= token.length - 4; at++) {
    const meanings = isGerman(token.slice(at)) ? meaningsOf(token.slice(at)) : null
    if (meanings === null) continue
    return [
      { meanings: [], spelling: 'unknown' },
      { meanings, spelling: 'known' }
    ]
  }
  return null
}

/**
 * What a token of a header stands for: one word, the parts of a compound, what it abbreviates or what it is one slip from.
 * Null where no language here knows it.
 */
export function recognize(token: string, point = false): readonly Recognized[] | null {
  const known = meaningsOf(token)
  if (known !== null) return [{ meanings: known, spelling: 'known' }]
  const parts = partsOf(token, isPart, isEnding, isGerman)
  if (parts !== null) return parts.map((part) => ({ meanings: meaningsOf(part) ?? [], spelling: 'known' }))
  const short = abbreviated(token, point)
  if (short !== null) return [{ meanings: short, spelling: 'abbreviated' }]
  const near = slips.near(token)
  if (near.length > 0) return [{ meanings: allMeanings(near), spelling: 'slip' }]
  const slipped = slippedParts(token, isPart, (part) => slips.near(part))
  if (slipped === null) return headed(token)
  const sound: Recognized = { meanings: meaningsOf(slipped.part) ?? [], spelling: 'known' }
  const corrected: Recognized = { meanings: allMeanings(slipped.slip), spelling: 'slip' }
  return slipped.first ? [sound, corrected] : [corrected, sound]
}
