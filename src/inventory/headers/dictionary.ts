import { fold } from './fold'
import { english } from './words/english'
import { french } from './words/french'
import { german } from './words/german'
import { foreignNotions, type Notion, type Words } from './words/notion'
import { spanish } from './words/spanish'

/** What a word may stand for. */
export type Meaning = Notion | 'noise'

/** What is about something else than trees and limbs: kerbs, prices, people. */
export const foreignMeanings: ReadonlySet<Meaning> = new Set(foreignNotions)

/** Whether a word may stand for something else than trees and limbs. */
export function mayBeForeign({ meanings }: { readonly meanings: readonly Meaning[] }): boolean {
  return meanings.some((each) => foreignMeanings.has(each))
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

/** Every word of the lists that is no phrase, with what it may stand for. */
export const simpleWords: ReadonlyMap<string, readonly Meaning[]> = new Map(
  [...words].filter(([word]) => !word.includes(' '))
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
export function isGerman(word: string): boolean {
  return ofGerman.has(word)
}

/** Short for a word, and never joined to another. */
const alone = new Set(['vig', 'att'])

/** A part of a compound says something. */
export function isPart(word: string): boolean {
  const meanings = alone.has(word) ? undefined : words.get(word)
  return meanings !== undefined && !(meanings.length === 1 && meanings[0] === 'noise')
}

export function isEnding(word: string): boolean {
  return isPart(word) || (word.length > 3 && inflected.has(word))
}
