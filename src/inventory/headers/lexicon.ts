import { partsOf, slippedParts } from './compounds'
import { fold } from './fold'
import { Slips } from './slips'
import { english } from './words/english'
import { french } from './words/french'
import { german } from './words/german'
import { foreignNotions, type Notion, type Words } from './words/notion'
import { spanish } from './words/spanish'

/** What a word may stand for. */
export type Meaning = Notion | 'noise'

/** How a word was recognized; the further from the word as listed, the less it counts. */
export type Spelling = 'known' | 'abbreviated' | 'slip' | 'unknown'

export interface Recognized {
  readonly meanings: readonly Meaning[]
  readonly spelling: Spelling
}

/** Endings of the regular plurals, cases and genders of each language, and the shortest word that takes them. */
const languages: readonly {
  readonly words: Words
  readonly endings: readonly string[]
  readonly from: number
}[] = [
  { words: english, endings: ['s', 'es'], from: 3 },
  { words: german, endings: ['e', 'en', 'em', 'er', 'es', 's', 'n'], from: 4 },
  { words: french, endings: ['s', 'e', 'es', 'x'], from: 4 },
  { words: spanish, endings: ['s', 'es'], from: 4 }
]

const words = new Map<string, Meaning[]>()
const inflected = new Map<string, Meaning[]>()

function learn(into: Map<string, Meaning[]>, word: string, meaning: Meaning): void {
  const known = into.get(word)
  if (known === undefined) into.set(word, [meaning])
  else if (!known.includes(meaning)) known.push(meaning)
}

/** Articles, which phrases are compared without: "à la hauteur", "leaves the trunk". */
export const articles = new Set('the la le les el los las der das dem den'.split(' '))

function each(list: string, take: (word: string) => void): void {
  for (const word of list.split(/\s+/)) {
    const parts = word === '' ? [] : fold(word).split('.')
    if (parts.length > 0)
      take(parts.length === 1 ? (parts[0] ?? '') : parts.filter((part) => !articles.has(part)).join(' '))
  }
}

for (const { words: list, endings, from } of languages)
  for (const [meaning, text] of Object.entries(list) as [Meaning, string][])
    each(text, (word) => {
      learn(words, word, meaning)
      if (word.length < from || word.includes(' ') || meaning === 'noise') return
      for (const ending of endings) learn(inflected, word + ending, meaning)
    })

const simple = [...words.keys()].filter((word) => !word.includes(' '))
const foreign = new Set<Meaning>([...foreignNotions, 'noise'])
/** A slip is seen through only where it leads to a column of ours. */
const slips = new Slips(
  simple.filter((word) => !(words.get(word) ?? []).some((meaning) => foreign.has(meaning)))
)

/** The most words of the phrases that begin with a word. */
const phrases = new Map<string, number>()
for (const word of words.keys()) {
  const [start = '', ...rest] = word.split(' ')
  if (rest.length > 0) phrases.set(start, Math.max(phrases.get(start) ?? 0, rest.length + 1))
}

/** How many words, from this one on, a phrase may have: 1 where none begins with it. */
export function phraseLength(start: string): number {
  return phrases.get(start) ?? 1
}

/** What a word or a phrase stands for as listed or in a regular form of it, or null. */
export function meaningsOf(word: string): readonly Meaning[] | null {
  return words.get(word) ?? inflected.get(word) ?? null
}

const ofGerman = new Set(Object.values(german).flatMap((list) => list.split(/\s+/)))
function isGerman(word: string): boolean {
  return ofGerman.has(word)
}

/** A part of a compound says something. */
function isPart(word: string): boolean {
  const meanings = words.get(word)
  return meanings !== undefined && !(meanings.length === 1 && meanings[0] === 'noise')
}

function isEnding(word: string): boolean {
  return isPart(word) || (word.length > 3 && inflected.has(word))
}

/** Words by their first three letters, to find what an abbreviation may be short for. */
const byStart = new Map<string, string[]>()
/** Words without their vowels: "trnk", "brnch". */
const bySkeleton = new Map<string, string[]>()
const skeleton = (word: string): string => (word[0] ?? '') + word.slice(1).replace(/[aeiouy]/g, '')
for (const word of simple) {
  if (word.length >= 5) {
    const start = word.slice(0, 3)
    byStart.set(start, [...(byStart.get(start) ?? []), word])
    bySkeleton.set(skeleton(word), [...(bySkeleton.get(skeleton(word)) ?? []), word])
  }
}

function allMeanings(list: readonly string[]): Meaning[] {
  return [...new Set(list.flatMap((word) => words.get(word) ?? []))]
}

/** Words that an abbreviation may be short for, where they all mean the same: "attach.", "circonf", "brnch". */
function abbreviated(token: string, point: boolean): readonly Meaning[] | null {
  const long = (byStart.get(token.slice(0, 3)) ?? []).filter((word) => word.startsWith(token))
  const enough = token.length >= (point ? 3 : 4)
  const whole = /[aeiouy]/.test(token.slice(1)) || token.length < 3 ? [] : (bySkeleton.get(token) ?? [])
  for (const list of [enough ? long : [], whole]) {
    const [first, ...others] = list.map((word) => words.get(word) ?? [])
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
  const mended: Recognized = { meanings: allMeanings(slipped.slip), spelling: 'slip' }
  return slipped.first ? [sound, mended] : [mended, sound]
}
