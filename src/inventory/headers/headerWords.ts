import { articles, meaningsOf, phraseLength, type Meaning } from './dictionary'
import { recognize, type Spelling } from './recognize'

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

/** The words of a header, phrases first. */
export function wordsOf(all: readonly string[]): HeaderWord[] {
  const tokens = all.filter((token) => !articles.has(token))
  const bare = tokens.map((token) => token.replace(/\.$/, ''))
  const words: HeaderWord[] = []
  for (let at = 0; at < bare.length;) {
    let length = Math.min(phraseLength(bare[at] ?? ''), bare.length - at)
    while (length > 1 && meaningsOf(bare.slice(at, at + length).join(' ')) === null) length--
    const text = bare.slice(at, at + length).join(' ')
    const phrase = length > 1 ? meaningsOf(text) : null
    if (phrase !== null) words.push({ text, meanings: phrase, spelling: 'known' })
    else words.push(...wordOf(text, tokens[at]?.endsWith('.') === true, bare.slice(at + 1)))
    at += length
  }
  return words
}
