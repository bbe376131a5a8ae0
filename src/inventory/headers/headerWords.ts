import { articles, meaningsOf, phraseLength, type Meaning } from './dictionary'
import { recognize, type Spelling } from './recognize'
import type { Notion } from './words/notion'

/** A word of a header and what it may stand for; nothing where no language here knows it. */
export interface HeaderWord {
  readonly text: string
  readonly meanings: readonly Meaning[]
  /** `mark` is a unit or a sign, no word. */
  readonly spelling: Spelling | 'mark'
}

/** Plurals of what is counted: "number of limbs" is a count, "limb number" is a name. */
const counted = new Set(
  `limbs branches scaffolds stems trunks trees leaders laterals cuts forks cavities
   aste aeste asten aesten stammlinge staemmlinge baume baeume stamme staemme
   arbres tiges troncs charpentieres rameaux coupes ramas arboles troncos tallos ejes cortes brazos ejemplares`.split(
    /\s+/
  )
)

function isCount(meanings: readonly Meaning[], following: readonly string[]): boolean {
  if (!meanings.includes('id') && !meanings.includes('name')) return false
  const next = following.find((token) => !(meaningsOf(token) ?? []).includes('noise'))
  return next !== undefined && counted.has(next)
}

/** Two letters as thumbs type them; they may stand for much else, so that their columns are asked about. */
const shorthand: ReadonlyMap<string, readonly Notion[]> = new Map<string, readonly Notion[]>([
  ['att', ['union']],
  ['vig', ['vigor']],
  ['vit', ['vigor']],
  ['inv', ['tag']],
  ['tr', ['tree']],
  ['st', ['stem']],
  ['cb', ['crown', 'base']],
  ['ld', ['limb', 'diameter']],
  ['sd', ['stem', 'diameter']],
  ['lo', ['limb', 'origin']],
  ['lt', ['limb', 'tip']]
])

/** What two or three letters stand for; those of two words only where nothing but a limb or a number stands beside them. */
function shortFor(text: string, tokens: readonly string[]): HeaderWord[] | null {
  const notions = shorthand.get(text)
  if (notions === undefined) return null
  const others = tokens.filter((token) => token !== text && token !== 'limb' && !/^\d+$/.test(token))
  if (notions.length > 1 && others.length > 0) return null
  return notions.map((notion) => ({ text, meanings: [notion], spelling: 'short' }))
}

/** One word as it is known, part by part; a number says nothing but for a year. */
function wordOf(text: string, point: boolean, following: readonly string[]): HeaderWord[] {
  const found = recognize(text, point)
  if (found !== null)
    return found.map((each) =>
      isCount(each.meanings, following) ? { text, meanings: ['count'], spelling: 'known' } : { text, ...each }
    )
  if (/^(?:19|20)\d{2}$/.test(text)) return [{ text, meanings: ['inYear'], spelling: 'mark' }]
  return /^\d+$/.test(text) || text.length === 1 ? [] : [{ text, meanings: [], spelling: 'unknown' }]
}

/** "Trees on site", "Limbs in crown": what stands first in the plural and in a place is counted. */
function isCountOf(bare: readonly string[]): boolean {
  const next = meaningsOf(bare[1] ?? '') ?? []
  return counted.has(bare[0] ?? '') && next.some((meaning) => meaning === 'on' || meaning === 'quantity')
}

/** What a phrase of two stands for whose first word has two letters exchanged: "lief stage". */
function slippedPhrase(first: string, second: string): readonly Meaning[] | null {
  if (first.length < 4 || meaningsOf(first) !== null) return null
  for (let at = 0; at + 1 < first.length; at++) {
    const exchanged = `${first.slice(0, at)}${first.charAt(at + 1)}${first.charAt(at)}${first.slice(at + 2)}`
    const found = phraseLength(exchanged) > 1 ? meaningsOf(`${exchanged} ${second}`) : null
    if (found !== null) return found
  }
  return null
}

const genitives = new Set(['de', 'du', 'des'])

/** Between two words it is "of" and no beginning: "hauteur du houppier", but "De (m)". */
function between(word: HeaderWord): HeaderWord {
  return genitives.has(word.text)
    ? { ...word, meanings: word.meanings.filter((each) => each !== 'from') }
    : word
}

/** The words of a header, phrases first. */
export function wordsOf(all: readonly string[]): HeaderWord[] {
  const tokens = all.filter((token) => !articles.has(token))
  const bare = tokens.map((token) => token.replace(/\.$/, ''))
  const words: HeaderWord[] = []
  if (isCountOf(bare)) words.push({ text: bare[0] ?? '', meanings: ['count'], spelling: 'known' })
  for (let at = 0; at < bare.length;) {
    let length = Math.min(phraseLength(bare[at] ?? ''), bare.length - at)
    while (length > 1 && meaningsOf(bare.slice(at, at + length).join(' ')) === null) length--
    const text = bare.slice(at, at + length).join(' ')
    const phrase = length > 1 ? meaningsOf(text) : null
    const slipped = phrase === null ? slippedPhrase(text, bare[at + 1] ?? '') : null
    if (slipped !== null) {
      words.push({ text, meanings: slipped, spelling: 'slip' })
      length = 2
    } else if (phrase !== null) words.push({ text, meanings: phrase, spelling: 'known' })
    else
      words.push(
        ...(shortFor(text, bare) ?? wordOf(text, tokens[at]?.endsWith('.') === true, bare.slice(at + 1)))
      )
    at += length
  }
  return words.map((word, at) => (at > 0 && at < words.length - 1 ? between(word) : word))
}
